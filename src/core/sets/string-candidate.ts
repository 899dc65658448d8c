import { byText } from '../foundation/index.js';
import type { GaugeThou, Recipe, StringMaterial } from '../recipes/index.js';
import type { StringBody } from '../string/index.js';

/** A string that could stand in a set: on the shelf, in the recipe book, or only makeable. */
export interface StringCandidate {
  readonly id: string;
  readonly gaugeThou: GaugeThou;
  readonly kind: 'plain' | 'wound';
  readonly material: StringMaterial;
  readonly recipeId: string;
  readonly linearDensityKgPerM: number;
  readonly axialStiffnessN: number;
  /** Undefined where the core's strength is not known: such a string is not chosen unless it is pinned. */
  readonly breakingLoadN: number | undefined;
  /** Finished strings lying in bins. */
  readonly onShelf: number;
  /** Not in the shop's recipe book yet. */
  readonly newRecipe?: boolean;
  /** How many wires it needs that the shop does not stock. */
  readonly extraWires?: number;
}

/** What the shop has of a recipe, beside the recipe itself. */
export interface CandidateStanding {
  readonly onShelf: number;
  readonly newRecipe?: boolean;
  readonly extraWires?: number;
}

/** A recipe and the string it makes as a candidate; its id is the recipe's. */
export const candidateOf = (
  recipe: Recipe,
  body: StringBody,
  standing: CandidateStanding,
): StringCandidate => ({
  id: recipe.id,
  gaugeThou: recipe.gaugeThou,
  kind: body.kind,
  material: recipe.material,
  recipeId: recipe.id,
  linearDensityKgPerM: body.linearDensityKgPerM,
  axialStiffnessN: body.axialStiffnessN,
  breakingLoadN: body.breakingLoadN,
  ...standing,
});

/** Gauge ascending, then kind, material and id: the order in which equally good answers stand. */
export function inOrder(candidates: readonly StringCandidate[]): StringCandidate[] {
  return candidates.toSorted(
    (a, b) =>
      a.gaugeThou - b.gaugeThou ||
      byText(a.kind, b.kind) ||
      byText(a.material, b.material) ||
      byText(a.id, b.id),
  );
}

/** Whether two candidates are the same string to a player, whatever recipe makes them. */
export const looksLike = (a: StringCandidate, b: StringCandidate): boolean =>
  a.gaugeThou === b.gaugeThou && a.kind === b.kind && a.material === b.material;
