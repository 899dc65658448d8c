export type { GaugeThou, Recipe, RecipeState, StringMaterial } from './recipe.js';
