import { RecipesRoom } from '../features/recipes/recipes-room.js';

/** All recipes of the shop, to be narrowed by gauge, material, state and words. */
export const RecipesPage = () => <RecipesRoom />;
