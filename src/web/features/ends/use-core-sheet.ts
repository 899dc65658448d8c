import { useMemo } from 'react';
import type { ShopView } from '../../../contract/index.js';
import { coreEndSheet, type EndSheet, type UnableReason } from '../../../core/winding/index.js';
import type { RecordOf } from '../../api/use-records.js';

/** The sheet by which a bench ends the cores of a run, or why there is none. */
export type CoreSheet =
  | { readonly kind: 'sheet'; readonly ends: EndSheet }
  | { readonly kind: 'unable'; readonly reasons: readonly UnableReason[] }
  | { readonly kind: 'no-recipe' };

/** Worked out here, from the shop as the page has it: with no line too. */
export function useCoreSheet(
  { body: { recipeId, spec, quantity } }: RecordOf<'run'>,
  benchId: string,
  { shop, ids }: ShopView,
): CoreSheet {
  return useMemo(() => {
    const recipe = shop.recipes.find(({ id }) => ids.recipes[id] === recipeId);
    const bench = shop.machines.find(({ id }) => ids.machines[id] === benchId);
    if (!recipe || bench?.kind !== 'bench') return { kind: 'no-recipe' };
    const made = coreEndSheet({ bench, recipe, spec, quantity });
    return made.ok ? { kind: 'sheet', ends: made.value } : { kind: 'unable', reasons: made.fault };
  }, [shop, ids, recipeId, benchId, spec, quantity]);
}
