import { USUAL_TOLERANCE_M } from '../recipes/index.js';
import type { Construction } from '../string/index.js';
import { type Knob, nearestSetting } from './dial-in/knob.js';
import type { WindingMachine } from './machine.js';
import { wrapBound } from './strength-bound.js';

/** What a winder turns on a machine to move the diameter, for one string. */
export interface MachineKnob {
  readonly knob: Knob;
  /** `N`, or empty where the knob counts in numbers. */
  readonly unit: string;
  /** Where the error is reckoned to be nought, as long as nobody has measured: the middle of the range. */
  readonly reckonedSetting: number;
  /** Whether the machine's record says how its knob behaves; else starting values stand here. */
  readonly isOnRecord: boolean;
}

/** Share of the pull that breaks the softest wrap wire, beyond which no advice goes. Our own choice, no source. */
const MOST_SHARE_OF_BREAKING = 0.65;
/** Where no strength is in print: a round workshop figure, N. */
const MOST_UNKNOWN_N = 60;
/** The whole range of an unknown knob moves the diameter by so many tolerances. A workshop figure, no source. */
const RANGE_IN_TOLERANCES = 4;
const STEPS_OF_RANGE = 200;
/** Below this share of the most pull the wrap lies loose. A workshop figure, no source. */
const LEAST_SHARE = 0.1;

/**
 * The knob of a machine as its record has it; without a record the tension of the outermost wrap in newtons, with
 * starting values that the first strings soon correct. A pull is held below what the wire bears, whatever the record
 * says.
 */
export function machineKnob(machine: WindingMachine, construction: Construction): MachineKnob {
  const recorded = machine.knob;
  const most = mostPullN(construction);
  if (!recorded) return usualKnob(machine, most ?? MOST_UNKNOWN_N);
  const { unit, ...ends } = recorded;
  const knob = unit === 'N' && most !== undefined ? { ...ends, most: heldBelow(ends, most) } : ends;
  return { knob, unit, reckonedSetting: middleOf(knob), isOnRecord: true };
}

function mostPullN(construction: Construction): number | undefined {
  const layer = construction.kind === 'wound' ? construction.layers.at(-1) : undefined;
  const bound = layer && wrapBound(layer);
  return bound && MOST_SHARE_OF_BREAKING * bound.upperN;
}

/** At least one step is left, so that there is something to turn. */
const heldBelow = ({ least, most, step }: Knob, mostN: number): number =>
  Math.max(least + step, Math.min(most, mostN));

function usualKnob({ drive }: WindingMachine, mostN: number): MachineKnob {
  const step = roundStep(mostN / STEPS_OF_RANGE);
  const isOld = drive === 'gear';
  const most = Math.floor(mostN / step + 1e-9) * step;
  const least = Math.round((LEAST_SHARE * most) / step) * step;
  const knob: Knob = {
    least,
    most,
    step,
    deadBand: isOld ? 2 * step : 0,
    backlash: isOld ? 4 * step : 0,
    responseMPerUnit: (-RANGE_IN_TOLERANCES * USUAL_TOLERANCE_M) / (most - least),
    roughness: isOld ? 0.1 : 0.03,
  };
  return { knob, unit: 'N', reckonedSetting: middleOf(knob), isOnRecord: false };
}

/** The next step of 1, 2, 5 times a power of ten. */
function roundStep(about: number): number {
  const ten = 10 ** Math.floor(Math.log10(about));
  const times = [1, 2, 5, 10].find((each) => each * ten >= about * (1 - 1e-9)) ?? 10;
  return Number((times * ten).toPrecision(3));
}

const middleOf = (knob: Knob): number => nearestSetting(knob, (knob.least + knob.most) / 2);
