import { fail, type Result, succeed } from '../foundation/index.js';
import { ALLOYS } from '../materials/index.js';
import type { Recipe } from '../recipes/index.js';
import type { StringBody, WoundLayer, WrapLayer } from '../string/index.js';
import type { DriveSetting } from './drive-for-pitch.js';
import type { WindingMachine } from './machine.js';
import { nearMean, nearSpindleRpm, nearWrapTensions, type RunAhead } from './near-runs.js';
import type { PastRun } from './past-run.js';
import type { WindingPractice } from './practice.js';
import { pulledWire } from './pulled-wire.js';
import { type SetPoint, setPoint } from './set-point.js';
import type { LayerSetUp } from './set-up-sheet.js';
import { spindleSpeed } from './spindle-speed.js';
import { wrapBound, wrapSectionM2 } from './strength-bound.js';
import type { UnableReason } from './unable.js';
import {
  type AssumedTension,
  fastestClearRpm,
  type WhirlCheck,
  type WhirlingSpan,
  whirlCheck,
} from './whirl-check.js';
import { woundLengthM, wrapUses } from './wire-per-string.js';

/** What all layers of a string on a machine have in common. */
export interface WindingFrame {
  readonly machine: WindingMachine;
  readonly recipe: Recipe;
  readonly lengthM: number;
  /** With the pitches that the machine gives. */
  readonly body: StringBody;
  readonly coreTension: SetPoint;
  readonly practice: WindingPractice;
  readonly record: readonly PastRun[];
  /** Lots of the wires that will be taken, by the wire, as far as they are known. */
  readonly lots: Readonly<Record<string, string>>;
}

/** One layer: its wire, its speed, and how near the core comes to whirling while it is laid on. */
export function windLayer(
  frame: WindingFrame,
  layer: WrapLayer,
  index: number,
  drive: DriveSetting,
): Result<{ readonly setUp: LayerSetUp; readonly whirl: WhirlCheck }, UnableReason> {
  const { machine, practice, record } = frame;
  const geometry = frame.body.layers[index]!;
  const span = whirlingSpan(frame, index);
  const tension = tensionForWhirl(frame.coreTension);
  const ahead = aheadOf(frame, frame.recipe.wrapWireIds[index]);
  const recordRpm = nearMean(nearSpindleRpm(record, ahead, { layer, index }));
  const speed = spindleSpeed({
    machineRpm: machine.spindleRpm,
    wireSpeedLimitMPerS: machine.wireSpeedLimitMPerS,
    wirePerTurnM: geometry.wireLengthPerLength * geometry.wrapPitchM,
    ...(tension && { whirlRpm: fastestClearRpm(span, tension.valueN) }),
    ...(recordRpm !== undefined && { recordRpm }),
    stepRpm: practice.spindleStepRpm,
  });
  if (!speed.ok) return fail({ ...speed.fault, layer: index });
  const spindleRpm = speed.value.rpm;
  return succeed({
    setUp: {
      ...wireAndTension(frame, layer, index),
      ...turning(geometry, span.woundLengthM, spindleRpm),
      rpmLimitedBy: speed.value.limitedBy,
      drive,
    },
    whirl: whirlCheck(span, { layer: index, spindleRpm, ...(tension && { tension }) }),
  });
}

/** The run to be set up, as past ones are near to it, for one of its wires. */
export function aheadOf(
  {
    machine,
    recipe,
    lots,
  }: Pick<WindingFrame, 'recipe' | 'lots'> & { readonly machine: { readonly id: string } },
  wireId: string | undefined,
): RunAhead {
  const lot = wireId === undefined ? undefined : lots[wireId];
  return { machineId: machine.id, recipeId: recipe.id, ...(lot === undefined ? {} : { lot }) };
}

/** Turns N = L_w / p, traverse speed v = n p, time N / n. */
function turning(geometry: WoundLayer, lengthM: number, spindleRpm: number) {
  const { wrapPitchM, leadAngleRad } = geometry;
  const turns = lengthM / wrapPitchM;
  return {
    woundLengthM: lengthM,
    wrapPitchM,
    leadAngleRad,
    turns,
    spindleRpm,
    traverseMPerS: (spindleRpm / 60) * wrapPitchM,
    windSeconds: (60 * turns) / spindleRpm,
  };
}

function wireAndTension(frame: WindingFrame, layer: WrapLayer, index: number) {
  const { recipe, body, lengthM, practice, record, machine } = frame;
  const wire = wrapUses(recipe, body, { lengthM, practice })[index]!;
  const ahead = aheadOf(frame, recipe.wrapWireIds[index]);
  const near = nearWrapTensions(record, ahead, { layer, index });
  const wrapTension = setPoint(near, wrapBound(layer), machine.pullTable);
  return {
    wireId: wire.wireId,
    wireDiameterM: layer.wireDiameterM,
    wirePerStringM: wire.metres,
    wirePerStringKg: wire.kg,
    wrapTension,
    ...wrapStrain(layer, wrapTension),
  };
}

/** Before its layer is wound the span carries core and the layers below; afterwards this one too. */
function whirlingSpan({ machine, body, practice, lengthM }: WindingFrame, index: number): WhirlingSpan {
  const below = body.layers.slice(0, index).reduce((sum, { massKgPerM }) => sum + massKgPerM, 0);
  const bareKgPerM = body.coreMassKgPerM + below;
  return {
    freeSpanM: machine.freeSpanM,
    dampersAtM: machine.dampersAtM ?? [],
    woundLengthM: woundLengthM(lengthM, practice),
    bareKgPerM,
    woundKgPerM: bareKgPerM + body.layers[index]!.massKgPerM,
    keepOutShare: practice.whirlKeepOutShare,
  };
}

/** The record's tension; where there is none, the most that strength allows, which bounds the speed from above. */
function tensionForWhirl(
  coreTension: SetPoint,
): { readonly valueN: number; readonly assumed: Exclude<AssumedTension, 'least-needed'> } | undefined {
  if (coreTension.kind === 'from-record') return { valueN: coreTension.value, assumed: 'record' };
  if (coreTension.kind === 'no-record') return { valueN: coreTension.upper, assumed: 'strength-bound' };
  return undefined;
}

function wrapStrain(layer: WrapLayer, tension: SetPoint): { readonly wrapStrain?: number } {
  if (tension.kind === 'unknown') return {};
  const pulled = pulledWire({
    pullN: tension.kind === 'from-record' ? tension.value : tension.upper,
    areaM2: wrapSectionM2(layer),
    youngsModulusPa: ALLOYS[layer.alloy].youngsModulusPa.value,
  });
  return { wrapStrain: pulled.strain };
}
