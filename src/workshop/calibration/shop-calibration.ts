import {
  type Calibration,
  calibrate,
  type MeasuredString,
  type RecipeAsked,
} from '../../core/recipes/index.js';
import { coreSize, wrapSize } from '../../core/string/index.js';
import type { ReadTransaction } from '../../store/index.js';
import type { RecipeRecord } from '../production/recipe-in-core.js';
import { measuredStrings } from './measured-strings.js';

/** What all measured strings of the shop teach, reckoned anew from them: of a year some tenths of a second. */
export interface ShopCalibration {
  readonly recipes: readonly RecipeRecord[];
  readonly strings: readonly MeasuredString[];
  readonly calibration: Calibration;
}

export async function shopCalibration(tx: ReadTransaction): Promise<ShopCalibration> {
  const recipes = (await tx.records.all('recipe')) satisfies readonly RecipeRecord[];
  const strings = await measuredStrings(tx, recipes);
  return { recipes, strings, calibration: calibrate(strings) };
}

/** A recipe as one asks what the next strings by it will be: from wire as its record states it. */
export function asked({ id, body: { construction } }: RecipeRecord): RecipeAsked {
  const core = construction.kind === 'plain' ? construction.wire : construction.core;
  const layers = construction.kind === 'plain' ? [] : construction.layers;
  const sizes = [coreSize(core), ...layers.map(({ wireDiameterM }) => wrapSize(wireDiameterM))];
  return { recipeId: id, construction, wires: sizes.map(({ u }) => ({ sizeUM: u })) };
}
