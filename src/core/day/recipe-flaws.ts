import type { Recipe } from '../recipes/index.js';
import type { Wire } from '../stock/index.js';
import type { Shop } from './shop.js';
import type { ShopFlaw, WirePart } from './shop-flaw.js';

/** Recipes that do not agree with the wires that they name. */
export function recipeFlaws({ recipes, wires }: Pick<Shop, 'recipes' | 'wires'>): readonly ShopFlaw[] {
  const wireOf = new Map(wires.map((wire) => [wire.id, wire]));
  return recipes.flatMap((recipe): readonly ShopFlaw[] => {
    const made = wiresMade(recipe);
    const named = [recipe.coreWireId, ...recipe.wrapWireIds];
    if (named.length !== made.length)
      return [
        {
          kind: 'wraps-miscounted',
          recipeId: recipe.id,
          layers: made.length - 1,
          wires: recipe.wrapWireIds.length,
        },
      ];
    return named.flatMap((wireId, at) => {
      const wire = wireOf.get(wireId);
      const part = wire && partThatDiffers(made[at]!, wire);
      return part ? [{ kind: 'wire-differs', recipeId: recipe.id, wireId, part }] : [];
    });
  });
}

type MadeOf = Pick<Wire, 'use' | 'shape' | 'sizeM' | 'alloy'>;

/** The wires that a recipe's string is made of, core first. */
function wiresMade({ construction }: Recipe): readonly MadeOf[] {
  if (construction.kind === 'plain') return [{ ...construction.wire, use: 'core' }];
  const { core, layers } = construction;
  return [
    { ...core, use: 'core' },
    ...layers.map(
      ({ wireDiameterM, alloy }): MadeOf => ({
        use: 'wrap',
        shape: 'round',
        sizeM: wireDiameterM,
        alloy,
      }),
    ),
  ];
}

/** Sizes that agree to a part in a million are one size written twice. */
const SIZE_ROUNDING = 1e-6;

function partThatDiffers(made: MadeOf, wire: Wire): WirePart | undefined {
  if (made.use !== wire.use) return 'use';
  if (made.shape !== wire.shape) return 'shape';
  if (made.alloy !== wire.alloy) return 'alloy';
  return Math.abs(made.sizeM - wire.sizeM) > SIZE_ROUNDING * wire.sizeM ? 'size' : undefined;
}
