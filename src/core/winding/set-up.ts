import { fail, invariant, type Result, succeed } from '../foundation/index.js';
import type { Recipe } from '../recipes/index.js';
import { type StringSpec, stringKey } from '../sets/index.js';
import {
  PRIOR_SEAT,
  type SeatModel,
  type Sounding,
  seatOnMachine,
  stringEstimates,
} from '../string/index.js';
import { cautionsFor } from './cautions.js';
import { changeOver } from './change-over.js';
import type { EndPull } from './ends/end-pull.js';
import { endSheet } from './ends/end-sheet.js';
import { firstOffPlan } from './first-off.js';
import type { OwnSpread } from './first-off-spreads.js';
import { STARTING_PRACTICE, type WindingPractice } from './practice.js';
import { runMinutes } from './run-minutes.js';
import type { SetUpSheet } from './set-up-sheet.js';
import { type SetUpTraits, traitsOf } from './set-up-traits.js';
import { type StringJob, type StringWork, stringWork } from './string-work.js';
import { tailSpeedMPerS } from './tail-speed.js';
import type { UnableReason } from './unable.js';
import { cutLengthM, woundLengthM } from './wire-per-string.js';

/** A run to be set up. */
export interface SetUpTask extends Omit<StringJob, 'lengthM' | 'end'> {
  readonly lotId: string;
  /** The string to be made: its end, its length over all, its name. */
  readonly spec: StringSpec;
  /** Good strings wanted. */
  readonly quantity: number;
  /** How far the shop's own strings differ; usual figures where it has not measured enough. */
  readonly ownSpread?: OwnSpread;
  /** What stands on the machine; left out where nothing does. */
  readonly from?: SetUpTraits;
  /** Ends of its core wire, or of the plain wire, that were pulled before, the latest last. */
  readonly endPulls?: readonly EndPull[];
}

export interface SetUpFault {
  readonly code: 'winding.machine-unable';
  readonly machineId: string;
  readonly recipeId: string;
  readonly reasons: readonly UnableReason[];
}

/**
 * The set-up sheet of a run on a winder, or of a cutting job on a bench: what geometry, strength and the
 * shop's own record decide, and openly nothing where they do not. Expected sizes and weight are of the string
 * as this machine winds it, with standard uncertainties. Cautions come with it. It drives no machine.
 */
export function setUp(task: SetUpTask): Result<SetUpSheet, SetUpFault> {
  const { machine, recipe, spec, quantity, seat = PRIOR_SEAT, practice = STARTING_PRACTICE } = task;
  const made = stringWork({ ...task, lengthM: spec.lengthM, end: spec.end });
  if (!made.ok) {
    return fail({
      code: 'winding.machine-unable',
      machineId: machine.id,
      recipeId: recipe.id,
      reasons: made.fault,
    });
  }
  const work = made.value;
  const change = changeOver(machine, task.from, traitsOf(recipe, spec.lengthM));
  const wire = coreWireOf(recipe);
  return succeed({
    kind: recipe.construction.kind === 'wound' ? 'wind' : 'cut',
    lotId: task.lotId,
    machineId: machine.id,
    machineName: machine.name,
    recipeId: recipe.id,
    stringKey: stringKey(spec),
    gaugeThou: recipe.gaugeThou,
    positions: machine.positions,
    quantity,
    core: {
      wireId: recipe.coreWireId,
      shape: wire.shape,
      sizeM: wire.sizeM,
      cutLengthM: cutLengthM({ lengthM: spec.lengthM, end: spec.end, practice }),
      end: spec.end,
    },
    ends: endSheet({
      ...{ recipe, body: work.body, spec, quantity, practice },
      ...(task.endPulls && { pulls: task.endPulls }),
    }),
    layers: work.layers,
    ...expectedString(work, seatOnMachine(seat, machine.id)),
    ...(work.whirl && { whirl: work.whirl }),
    ...(work.coreTension && { coreTension: work.coreTension }),
    cycleSeconds: work.cycleSeconds,
    runMinutes: runMinutes(work, quantity),
    setUpMinutes: change.minutes,
    expectedScrap: change.scrapStrings,
    firstOff: firstOffFor(task, practice),
    cautions: cautionsFor(recipe.construction),
    ...looseTail(work, practice),
  });
}

const coreWireOf = ({ construction }: Recipe) =>
  construction.kind === 'plain' ? construction.wire : construction.core;

/** Size and weight depend on no tuning; the reckoning of all a string's figures wants one all the same. */
const ANY_SOUNDING: Sounding = { speakingLengthM: 0.65, frequencyHz: 100 };

function expectedString(
  work: StringWork,
  seat: SeatModel,
): Pick<SetUpSheet, 'meanDiameterM' | 'caliperDiameterM' | 'unitWeightKgPerM'> {
  const expected = stringEstimates(work.construction, ANY_SOUNDING, seat);
  invariant(expected.ok, 'what can be wound has a size and a weight');
  const { meanDiameterM, caliperDiameterM, linearDensityKgPerM } = expected.value;
  return { meanDiameterM, caliperDiameterM, unitWeightKgPerM: linearDensityKgPerM };
}

function firstOffFor({ recipe, spec, machine, ownSpread }: SetUpTask, practice: WindingPractice) {
  const wound = recipe.construction.kind === 'wound';
  return firstOffPlan({
    construction: recipe.construction,
    positions: machine.positions,
    ...(ownSpread ? { ownSpread } : {}),
    fromM: wound ? practice.bareAtEndM : 0,
    lengthM: wound ? woundLengthM(spec.lengthM, practice) : spec.lengthM,
    measureFromEndsM: practice.measureFromEndsM,
  });
}

/** The longest wire end that may hang loose, at the fastest that the spindle turns. */
function looseTail(work: StringWork, practice: WindingPractice): Pick<SetUpSheet, 'looseTail'> {
  if (work.layers.length === 0) return {};
  const tailM = Math.max(practice.coreTailM, practice.wrapStartTailM, practice.wrapFinishTailM);
  const spindleRpm = Math.max(...work.layers.map((layer) => layer.spindleRpm));
  return { looseTail: { tailM, speedMPerS: tailSpeedMPerS(tailM, spindleRpm) } };
}
