import type { ReadTransaction } from '../../store/index.js';
import { needRecord } from '../record-change.js';
import type { RunRecord } from '../stock/live-runs.js';
import type { RecipeRecord } from './recipe-in-core.js';

/** The recipe as the run was set up by it, though it may have been edited or retired since. */
export async function recipeOfRun(
  tx: Pick<ReadTransaction, 'records'>,
  { body: { recipeId, recipeVersion } }: RunRecord,
): Promise<RecipeRecord> {
  const recipe = await needRecord(tx, 'recipe', recipeId);
  if (recipe.version === recipeVersion) return recipe;
  const versions = await tx.records.versions('recipe', recipeId);
  return versions.find(({ version }) => version === recipeVersion) ?? recipe;
}
