import { fail, invariant, type Result, succeed } from '../foundation/index.js';
import type { Recipe } from '../recipes/index.js';
import {
  type SeatModel,
  type StringBody,
  stringBody,
  type WoundConstruction,
  type WrapLayer,
} from '../string/index.js';
import { type DriveSetting, driveForPitch } from './drive-for-pitch.js';
import type { Machine, WindingMachine } from './machine.js';
import { nearCoreTensions } from './near-runs.js';
import type { PastRun } from './past-run.js';
import type { WindingPractice } from './practice.js';
import { type SetPoint, setPoint } from './set-point.js';
import type { LayerSetUp } from './set-up-sheet.js';
import { coreBound } from './strength-bound.js';
import type { UnableReason } from './unable.js';
import type { WhirlCheck } from './whirl-check.js';
import { aheadOf, windLayer } from './wind-layer.js';

interface WindingTask {
  readonly machine: Machine;
  readonly recipe: Recipe;
  readonly lengthM: number;
  /** At the recipe's own pitch. */
  readonly body: StringBody;
  readonly seat: SeatModel;
  readonly practice: WindingPractice;
  readonly record: readonly PastRun[];
  readonly lots: Readonly<Record<string, string>>;
}

interface WoundString {
  readonly construction: Recipe['construction'];
  readonly body: StringBody;
  readonly layers: readonly LayerSetUp[];
  readonly coreTension?: SetPoint;
  readonly whirl?: WhirlCheck;
}

/** The set-up of every layer on this machine, from the core outwards; a plain string has none. */
export function windLayers(task: WindingTask): Result<WoundString, readonly UnableReason[]> {
  const { machine, recipe, body } = task;
  const { construction } = recipe;
  if (machine.kind === 'bench' || construction.kind === 'plain')
    return succeed({ construction, body, layers: [] });
  const drives = drivesFor(machine, body);
  if (!drives.ok) return drives;
  const asWound = withGivenPitches(construction, body, drives.value);
  const woundBody = stringBody(asWound, task.seat);
  invariant(woundBody.ok, 'a sound string stays sound when its turns move apart');
  const coreTension = setPoint(
    nearCoreTensions(task.record, aheadOf({ ...task, machine }, recipe.coreWireId), construction.core),
    coreBound(woundBody.value),
  );
  const frame = { ...task, machine, body: woundBody.value, coreTension };
  const layers = asWound.layers.map((layer, index) => windLayer(frame, layer, index, drives.value[index]!));
  const reasons = layers.flatMap((layer) => (layer.ok ? [] : [layer.fault]));
  if (reasons.length > 0) return fail(reasons);
  const wound = layers.flatMap((layer) => (layer.ok ? [layer.value] : []));
  return succeed({
    construction: asWound,
    body: woundBody.value,
    layers: wound.map(({ setUp }) => setUp),
    coreTension,
    whirl: wound.map(({ whirl }) => whirl).reduce(nearerToWhirl),
  });
}

function drivesFor(
  machine: WindingMachine,
  body: StringBody,
): Result<readonly DriveSetting[], readonly UnableReason[]> {
  const drives = body.layers.map(({ wrapPitchM, touchingPitchM }) =>
    driveForPitch(machine, { pitchM: wrapPitchM, touchingPitchM }),
  );
  const reasons = drives.flatMap((drive, layer) => (drive.ok ? [] : [{ ...drive.fault, layer }]));
  return reasons.length > 0
    ? fail(reasons)
    : succeed(drives.flatMap((drive) => (drive.ok ? [drive.value] : [])));
}

/** The construction with each layer's gap as the machine really gives it. */
function withGivenPitches(
  construction: WoundConstruction,
  body: StringBody,
  drives: readonly DriveSetting[],
): WoundConstruction {
  const given = (layer: WrapLayer, index: number): WrapLayer => ({
    ...layer,
    gap: Math.max(0, drives[index]!.pitchM / body.layers[index]!.touchingPitchM - 1),
  });
  const [first, second] = construction.layers;
  return { ...construction, layers: second ? [given(first, 0), given(second, 1)] : [given(first, 0)] };
}

const nearerToWhirl = (one: WhirlCheck, other: WhirlCheck): WhirlCheck =>
  other.leastCoreTensionN > one.leastCoreTensionN ? other : one;
