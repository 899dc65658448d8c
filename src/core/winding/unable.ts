import type { Recipe } from '../recipes/index.js';
import type { StringEnd } from '../sets/index.js';
import type { ConstructionFault } from '../string/index.js';
import type { DialFault } from './dial-for-pitch.js';
import { makesEnd } from './ends/end-making.js';
import { twistsWanted } from './ends/twists-wanted.js';
import type { CuttingBench, Machine, WindingMachine } from './machine.js';
import type { WindingPractice } from './practice.js';
import type { SpindleFault } from './spindle-speed.js';
import { cutLengthM } from './wire-per-string.js';

/** Why a machine cannot make a string, with what it could. Lengths in m, gauges in thousandths of an inch. */
export type UnableReason =
  | { readonly code: 'winding.wrong-station'; readonly needs: 'winder' | 'bench' }
  | { readonly code: 'winding.string-too-long'; readonly lengthM: number; readonly mostM: number }
  | { readonly code: 'winding.string-too-short'; readonly lengthM: number; readonly leastM: number }
  | {
      readonly code: 'winding.gauge-out-of-range';
      readonly gaugeThou: number;
      readonly leastThou: number;
      readonly mostThou: number;
    }
  | {
      readonly code: 'winding.core-size-out-of-range';
      readonly sizeM: number;
      readonly leastM: number;
      readonly mostM: number;
    }
  | { readonly code: 'winding.core-shape-not-possible'; readonly shape: 'round' | 'hex' }
  | {
      readonly code: 'winding.wrap-out-of-range';
      /** Counted from 0 at the core. */
      readonly layer: number;
      readonly diameterM: number;
      readonly leastM: number;
      readonly mostM: number;
    }
  | { readonly code: 'winding.too-many-layers'; readonly layers: number; readonly most: number }
  | { readonly code: 'winding.end-not-possible'; readonly end: StringEnd }
  | {
      readonly code: 'winding.twists-out-of-range';
      readonly twists: number;
      readonly least: number;
      readonly most: number;
    }
  | {
      readonly code: 'winding.cut-out-of-range';
      readonly cutM: number;
      readonly leastM: number;
      readonly mostM: number;
    }
  | { readonly code: 'winding.construction-unsound'; readonly fault: ConstructionFault }
  | (DialFault & { readonly layer: number })
  | (SpindleFault & { readonly layer: number });

/** All that the machine's own limits say against the recipe at this length; empty where nothing does. */
export function standingReasons(machine: Machine, recipe: Recipe, lengthM: number): readonly UnableReason[] {
  const wound = recipe.construction.kind === 'wound';
  if (wound !== (machine.kind === 'winder')) {
    return [{ code: 'winding.wrong-station', needs: wound ? 'winder' : 'bench' }];
  }
  return [
    ...stationReasons(machine, recipe, lengthM),
    ...(machine.kind === 'winder' ? winderReasons(machine, recipe) : []),
  ];
}

function stationReasons(machine: Machine, recipe: Recipe, lengthM: number): readonly UnableReason[] {
  const { least: leastThou, most: mostThou } = machine.gaugesThou;
  const { gaugeThou } = recipe;
  const reasons: UnableReason[] = [];
  if (lengthM > machine.longestStringM) {
    reasons.push({ code: 'winding.string-too-long', lengthM, mostM: machine.longestStringM });
  }
  if (gaugeThou < leastThou || gaugeThou > mostThou) {
    reasons.push({ code: 'winding.gauge-out-of-range', gaugeThou, leastThou, mostThou });
  }
  return reasons;
}

function winderReasons(machine: WindingMachine, { construction }: Recipe): readonly UnableReason[] {
  if (construction.kind === 'plain') return [];
  const { core, layers } = construction;
  const reasons: UnableReason[] = [];
  if (outside(core.sizeM, machine.coreSizeM)) {
    const { least: leastM, most: mostM } = machine.coreSizeM;
    reasons.push({ code: 'winding.core-size-out-of-range', sizeM: core.sizeM, leastM, mostM });
  }
  if (!(core.shape === 'hex' ? machine.hexCore : machine.roundCore)) {
    reasons.push({ code: 'winding.core-shape-not-possible', shape: core.shape });
  }
  for (const [layer, { wireDiameterM: diameterM }] of layers.entries()) {
    const { least: leastM, most: mostM } = machine.wrapDiameterM;
    if (outside(diameterM, machine.wrapDiameterM)) {
      reasons.push({ code: 'winding.wrap-out-of-range', layer, diameterM, leastM, mostM });
    }
  }
  if (layers.length > machine.maxLayers) {
    reasons.push({ code: 'winding.too-many-layers', layers: layers.length, most: machine.maxLayers });
  }
  return reasons;
}

interface EndedString {
  readonly lengthM: number;
  readonly end: StringEnd;
  readonly practice: WindingPractice;
}

/** All that a bench's core-end machine says against these ends; empty where nothing does, or nothing is written of it. */
export function endReasons(
  { ends }: CuttingBench,
  { construction }: Recipe,
  string: EndedString,
): readonly UnableReason[] {
  if (!ends) return [];
  const { sizeM } = construction.kind === 'plain' ? construction.wire : construction.core;
  const { wanted } = twistsWanted(sizeM);
  const cutM = cutLengthM(string);
  const reasons: UnableReason[] = [];
  if (!makesEnd(ends, string.end)) reasons.push({ code: 'winding.end-not-possible', end: string.end });
  if (wanted < ends.twists.least || wanted > ends.twists.most) {
    reasons.push({ code: 'winding.twists-out-of-range', twists: wanted, ...ends.twists });
  }
  if (outside(cutM, ends.cutM)) {
    const { least: leastM, most: mostM } = ends.cutM;
    reasons.push({ code: 'winding.cut-out-of-range', cutM, leastM, mostM });
  }
  return reasons;
}

/** A size that equals a limit but for rounding is within it. */
const SIZE_ROUNDING = 1e-9;

const outside = (sizeM: number, range: { readonly least: number; readonly most: number }): boolean =>
  sizeM < range.least * (1 - SIZE_ROUNDING) || sizeM > range.most * (1 + SIZE_ROUNDING);
