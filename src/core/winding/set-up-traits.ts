import type { Recipe } from '../recipes/index.js';

/** What stands on the machine for a run. What must be changed between two runs is read off the difference. */
export interface SetUpTraits {
  readonly coreWireId: string;
  readonly wrapWireIds: readonly string[];
  /** Alloys of the wraps from inside outwards, joined by a blank; of a plain string, its wire's alloy. */
  readonly wrapAlloy: string;
  readonly lengthM: number;
}

/** What a run of this recipe at this length over all has standing on its machine. */
export const traitsOf = (recipe: Recipe, lengthM: number): SetUpTraits => ({
  coreWireId: recipe.coreWireId,
  wrapWireIds: recipe.wrapWireIds,
  wrapAlloy:
    recipe.construction.kind === 'plain'
      ? recipe.construction.wire.alloy
      : recipe.construction.layers.map(({ alloy }) => alloy).join(' '),
  lengthM,
});
