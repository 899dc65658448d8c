import { stepRecipe as definition } from '../../contract/index.js';
import { succeed } from '../../core/foundation/index.js';
import { RECIPE_LIFE } from '../../core/stock/index.js';
import { recordAsSeen, stepRecord } from '../record-change.js';
import { useCase } from '../use-case.js';

/** Takes a recipe a step through its life. Runs that are begun go on by the recipe that they were begun with. */
export const stepRecipe = useCase(definition, async (work, { id, expectedVersion, step, note }) => {
  const record = await recordAsSeen(work.tx, 'recipe', { id, expectedVersion });
  const body = note.trim() === '' ? record.body : { ...record.body, note };
  return succeed(await stepRecord(work, 'recipe', { record, life: RECIPE_LIFE, step, body }));
});
