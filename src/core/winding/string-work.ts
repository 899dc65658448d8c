import { fail, type Result, succeed } from '../foundation/index.js';
import type { Recipe } from '../recipes/index.js';
import type { StringEnd } from '../sets/index.js';
import { PRIOR_SEAT, type SeatModel, type StringBody, seatOnMachine, stringBody } from '../string/index.js';
import type { Machine } from './machine.js';
import type { PastRun } from './past-run.js';
import { STARTING_PRACTICE, type WindingPractice } from './practice.js';
import type { SetPoint } from './set-point.js';
import type { LayerSetUp } from './set-up-sheet.js';
import { endReasons, standingReasons, type UnableReason } from './unable.js';
import type { WhirlCheck } from './whirl-check.js';
import { windLayers } from './wind-layers.js';
import { type WireUse, wireOf, woundLengthM } from './wire-per-string.js';

/** One kind of string to be made on one machine, or cut at one bench. */
export interface StringJob {
  readonly machine: Machine;
  readonly recipe: Recipe;
  /** Length over all, end to tail. */
  readonly lengthM: number;
  /** A ball end where not told. */
  readonly end?: StringEnd;
  /** The prior where the shop has not measured its own strings. */
  readonly seat?: SeatModel;
  /** What the shop's machines were set to before; nothing where not told. */
  readonly record?: readonly PastRun[];
  /** Lots of the wires that will be taken, by the wire, as far as they are known. */
  readonly lots?: Readonly<Record<string, string>>;
  readonly practice?: WindingPractice;
}

/** What making one string takes: the string as this machine really winds it, its wire, and a cycle's time. */
export interface StringWork {
  /** With the wrap pitch that the machine gives, which may be a little wider than the recipe's. */
  readonly construction: Recipe['construction'];
  readonly body: StringBody;
  /** Empty for a plain string, as are tension and whirl. */
  readonly layers: readonly LayerSetUp[];
  readonly coreTension?: SetPoint;
  readonly whirl?: WhirlCheck;
  readonly wire: readonly WireUse[];
  /** One cycle makes `positions` strings side by side. */
  readonly cycleSeconds: number;
  readonly positions: 1 | 2;
}

/**
 * What making this string on this machine takes, or every reason why the machine cannot make it. Cycle time
 * = load + turns / n of each layer + unload; loading and unloading are hand time for all positions together.
 */
export function stringWork(job: StringJob): Result<StringWork, readonly UnableReason[]> {
  const { machine, recipe, lengthM, practice = STARTING_PRACTICE } = job;
  const seat = seatOnMachine(job.seat ?? PRIOR_SEAT, machine.id);
  const standing = standingReasons(machine, recipe, lengthM);
  const short = tooShort(job, practice);
  const ends =
    machine.kind === 'bench' && recipe.construction.kind === 'plain'
      ? endReasons(machine, recipe, { lengthM, end: job.end ?? 'ball', practice })
      : [];
  const reasons = [...standing, ...ends, ...(short ? [short] : [])];
  if (reasons.length > 0) return fail(reasons);
  const body = stringBody(recipe.construction, seat);
  if (!body.ok) return fail([{ code: 'winding.construction-unsound', fault: body.fault }]);
  const wound = windLayers({
    machine,
    recipe,
    lengthM,
    body: body.value,
    seat,
    practice,
    record: job.record ?? [],
    lots: job.lots ?? {},
  });
  if (!wound.ok) return wound;
  const handSeconds = machine.loadSeconds + machine.unloadSeconds;
  return succeed({
    ...wound.value,
    wire: wireOf(recipe, wound.value.body, { lengthM, end: job.end ?? 'ball', practice }),
    cycleSeconds: wound.value.layers.reduce((sum, { windSeconds }) => sum + windSeconds, handSeconds),
    positions: machine.positions,
  });
}

function tooShort({ recipe, lengthM }: StringJob, practice: WindingPractice): UnableReason | undefined {
  const leastM = lengthM - woundLengthM(lengthM, practice);
  const isLongEnough = recipe.construction.kind === 'plain' ? lengthM > 0 : lengthM > leastM;
  return isLongEnough ? undefined : { code: 'winding.string-too-short', lengthM, leastM };
}
