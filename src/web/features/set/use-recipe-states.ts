import { useCallback } from 'react';
import type { RecipeState } from '../../../core/recipes/index.js';
import { useShop } from '../../api/use-shop.js';

/** Whether a recipe's figures are predicted or calibrated, by its name. One that is not known is taken as predicted. */
export function useRecipeStates(): (recipeId: string) => RecipeState {
  const { data: shop } = useShop();
  return useCallback(
    (recipeId) => shop?.recipes.find(({ id }) => id === recipeId)?.state ?? 'predicted',
    [shop],
  );
}
