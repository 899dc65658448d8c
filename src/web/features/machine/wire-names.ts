import type { ShopView } from '../../../contract/index.js';
import type { Recipe } from '../../../core/recipes/index.js';

/** Names of wires by the ids of their records. */
export function wireNamesOf({ ids }: ShopView): (wireId: string) => string {
  const names = new Map(Object.entries(ids.wires).map(([name, id]) => [id, name]));
  return (wireId) => names.get(wireId) ?? wireId;
}

/** A wire that a run takes, and what for. */
export interface WireOfRun {
  readonly wireId: string;
  readonly use: 'core' | 'wrap' | 'plain';
}

/** What the recipe of a run takes, core first; nothing where the shop no longer has the recipe. */
export function wiresOfRun(recipeId: string, { shop, ids }: ShopView): readonly WireOfRun[] {
  const recipe = shop.recipes.find(({ id }) => ids.recipes[id] === recipeId);
  if (!recipe) return [];
  const wires = [...new Set([recipe.coreWireId, ...recipe.wrapWireIds])];
  return wires.flatMap((name) => {
    const wireId = ids.wires[name];
    return wireId === undefined ? [] : { wireId, use: purposeOf(name, recipe) };
  });
}

function purposeOf(name: string, { coreWireId, construction }: Recipe): WireOfRun['use'] {
  if (construction.kind === 'plain') return 'plain';
  return name === coreWireId ? 'core' : 'wrap';
}
