import type { Result } from '../foundation/index.js';
import {
  type ConstructionFault,
  PRIOR_SEAT,
  type SeatModel,
  type StringBody,
  stringBody,
} from '../string/index.js';
import type { Recipe } from './recipe.js';

/** The string that a recipe makes: mass, size, stiffness and strength by this seat model (the prior where none is given). */
export const recipeBody = (
  recipe: Recipe,
  seat: SeatModel = PRIOR_SEAT,
): Result<StringBody, ConstructionFault> => stringBody(recipe.construction, seat);
