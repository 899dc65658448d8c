import { invariant, type Result, succeed } from '../foundation/index.js';
import { ALLOYS, type AlloyId } from '../materials/index.js';
import type { Recipe } from '../recipes/index.js';
import type { StringEnd } from '../sets/index.js';
import {
  type ConstructionFault,
  PRIOR_SEAT,
  type SeatModel,
  type StringBody,
  stringBody,
} from '../string/index.js';
import { STARTING_PRACTICE, type WindingPractice } from './practice.js';
import { wrapSectionM2 } from './strength-bound.js';

/** Wire that one string takes off its spool, what is cut off afterwards included. */
export interface WireUse {
  readonly wireId: string;
  readonly alloy: AlloyId;
  readonly metres: number;
  readonly kg: number;
}

export interface WireUseOptions {
  /** A ball end where not told. */
  readonly end?: StringEnd;
  readonly seat?: SeatModel;
  readonly practice?: WindingPractice;
}

/**
 * Wire for one string of this length over all, per wire, core first: core = length + twist round its end +
 * tail; each wrap = lambda L_w + its two tails. At the recipe's own pitch; a machine's nearest dial step may
 * take a little less (see `stringWork`).
 */
export function wirePerString(
  recipe: Recipe,
  lengthM: number,
  options: WireUseOptions = {},
): Result<readonly WireUse[], ConstructionFault> {
  const body = stringBody(recipe.construction, options.seat ?? PRIOR_SEAT);
  if (!body.ok) return body;
  const string = { lengthM, end: options.end ?? 'ball' } as const;
  return succeed(wireOf(recipe, body.value, { ...string, practice: options.practice ?? STARTING_PRACTICE }));
}

interface StringToMake {
  readonly lengthM: number;
  readonly end: StringEnd;
  readonly practice: WindingPractice;
}

/** Wire of one string whose body is known; wires used twice (two layers of one wrap) are added up. */
export function wireOf(recipe: Recipe, body: StringBody, string: StringToMake): readonly WireUse[] {
  const uses = [coreUse(recipe, body, string), ...wrapUses(recipe, body, string)];
  const byWire = new Map<string, WireUse>();
  for (const use of uses) {
    const before = byWire.get(use.wireId);
    byWire.set(
      use.wireId,
      before ? { ...before, metres: before.metres + use.metres, kg: before.kg + use.kg } : use,
    );
  }
  return [...byWire.values()];
}

/** Core (or plain wire) to cut for one string: its length, the twist round its end, the tail that is cut off. */
export const cutLengthM = ({ lengthM, end, practice }: StringToMake): number =>
  lengthM + practice.twistTakesM[end] + practice.coreTailM;

/** How much of the string is wound. */
export const woundLengthM = (lengthM: number, practice: WindingPractice): number =>
  lengthM - practice.bareAtEndM - practice.bareAtTailM;

/** The wraps alone, one for each layer, from the core outwards. */
export function wrapUses(
  recipe: Recipe,
  body: StringBody,
  string: Pick<StringToMake, 'lengthM' | 'practice'>,
): readonly WireUse[] {
  if (recipe.construction.kind === 'plain') return [];
  const { practice } = string;
  const tailsM = practice.wrapStartTailM + practice.wrapFinishTailM;
  return recipe.construction.layers.map((layer, index) => {
    const wireId = recipe.wrapWireIds[index];
    invariant(wireId !== undefined, `recipe ${recipe.id} names no wire for layer ${index}`);
    const { wireLengthPerLength } = body.layers[index]!;
    const metres = wireLengthPerLength * woundLengthM(string.lengthM, practice) + tailsM;
    const kg = metres * wrapSectionM2(layer) * ALLOYS[layer.alloy].densityKgPerM3.value;
    return { wireId, alloy: layer.alloy, metres, kg };
  });
}

function coreUse(recipe: Recipe, body: StringBody, string: StringToMake): WireUse {
  const { construction } = recipe;
  const { alloy } = construction.kind === 'plain' ? construction.wire : construction.core;
  const metres = cutLengthM(string);
  return { wireId: recipe.coreWireId, alloy, metres, kg: metres * body.coreMassKgPerM };
}
