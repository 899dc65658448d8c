import { useMemo } from 'react';
import type { ShopView } from '../../../contract/index.js';
import { whatIsKnown } from '../../../core/day/index.js';
import { type SetUpSheet, setUp, traitsOf, type UnableReason } from '../../../core/winding/index.js';
import type { RecordOf } from '../../api/use-records.js';

/** The set-up sheet of a run, or why there is none. */
export type RunSheet =
  | { readonly kind: 'sheet'; readonly sheet: SetUpSheet; readonly recipeVersion: number }
  | { readonly kind: 'unable'; readonly reasons: readonly UnableReason[] }
  | { readonly kind: 'no-recipe' };

/** Works the sheet out here, from the shop as the page has it: with no line too. */
export function useRunSheet(run: RecordOf<'run'>, { shop, ids }: ShopView): RunSheet {
  const { recipeId, machineId, spec, quantity, name } = run.body;
  const hasStarted = run.state !== 'planned';
  return useMemo(() => {
    const recipe = shop.recipes.find(({ id }) => ids.recipes[id] === recipeId);
    const machine = shop.machines.find(({ id }) => ids.machines[id] === machineId);
    if (!recipe || !machine) return { kind: 'no-recipe' };
    const standing = shop.setUpNow.find((each) => each.machineId === machine.id);
    const before = standing && shop.recipes.find(({ id }) => id === standing.recipeId);
    // Of a run under way the machine stands as the run wants it; what it was changed from is past.
    const from = standing && before && !hasStarted ? { from: traitsOf(before, standing.lengthM) } : {};
    const made = setUp({
      lotId: name,
      machine,
      recipe,
      spec,
      quantity,
      ...from,
      ...whatIsKnown(shop),
    });
    return made.ok
      ? { kind: 'sheet', sheet: made.value, recipeVersion: recipe.version }
      : { kind: 'unable', reasons: made.fault.reasons };
  }, [shop, ids, recipeId, machineId, spec, quantity, name, hasStarted]);
}
