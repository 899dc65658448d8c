import { useMemo } from 'react';
import { type Recipe, recipeBody } from '../../../core/recipes/index.js';
import type { StringBody } from '../../../core/string/index.js';
import { useShop } from '../../api/use-shop.js';

/** The recipe that a sheet winds and the string it makes; undefined until the shop is here, or where it lacks the recipe. */
export function useMadeString(
  recipeId: string,
): { readonly recipe: Recipe; readonly body: StringBody } | undefined {
  const shop = useShop().data;
  return useMemo(() => {
    const recipe = shop?.recipes.find(({ id }) => id === recipeId);
    const body = recipe && recipeBody(recipe, shop?.seat);
    return recipe && body?.ok ? { recipe, body: body.value } : undefined;
  }, [shop, recipeId]);
}
