import { fail, type Result, succeed } from '../foundation/index.js';
import { type DialFault, dialForPitch } from './dial-for-pitch.js';
import type { WindingMachine } from './machine.js';

/** What to type in or to set, and the wrap pitch that comes of it. */
export type DriveSetting =
  | { readonly kind: 'servo'; readonly pitchM: number }
  | { readonly kind: 'gear'; readonly dial: number; readonly pitchM: number; readonly gap: number };

export interface WantedPitch {
  /** The recipe's: touching pitch times one plus its gap. */
  readonly pitchM: number;
  /** Pitch at which turns touch; a smaller one would make them climb. */
  readonly touchingPitchM: number;
}

/**
 * How this machine is brought to a wrap pitch. A servo's is rounded UP to its step, for the same reason that
 * a gear machine's dial never goes below touching turns. Metres; `gap` is the share by which the pitch really
 * given exceeds the touching pitch.
 */
export function driveForPitch(machine: WindingMachine, wanted: WantedPitch): Result<DriveSetting, DialFault> {
  if (machine.drive === 'gear') {
    const dial = dialForPitch(machine, wanted);
    if (!dial.ok) return dial;
    const gap = Math.max(0, dial.value.pitchM / wanted.touchingPitchM - 1);
    return succeed({ kind: 'gear', ...dial.value, gap });
  }
  const { least: leastM, most: mostM } = machine.pitchM;
  const pitchM = roundedUp(wanted.pitchM, machine.pitchStepM);
  if (pitchM < leastM || pitchM > mostM) {
    const nearestM = roundedUp(Math.max(leastM, wanted.touchingPitchM), machine.pitchStepM);
    const reachableM = pitchM > mostM ? roundedDown(mostM, machine.pitchStepM) : nearestM;
    return fail({
      code: 'winding.pitch-outside-range',
      wantedM: wanted.pitchM,
      leastM,
      mostM,
      ...(reachableM >= wanted.touchingPitchM && { nearestM: reachableM }),
    });
  }
  return succeed({ kind: 'servo', pitchM });
}

/** A pitch that is a whole number of steps already, but for rounding, keeps it. */
const STEP_ROUNDING = 1e-9;

const roundedUp = (pitchM: number, stepM: number): number =>
  tidy(Math.ceil(pitchM / stepM - STEP_ROUNDING) * stepM);
const roundedDown = (pitchM: number, stepM: number): number =>
  tidy(Math.floor(pitchM / stepM + STEP_ROUNDING) * stepM);
const tidy = (metres: number): number => Number(metres.toPrecision(12));
