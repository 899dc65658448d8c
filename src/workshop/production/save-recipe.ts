import { saveRecipe as definition, type InputOf } from '../../contract/index.js';
import { succeed } from '../../core/foundation/index.js';
import { foldName } from '../../core/orders/index.js';
import { RECIPE_LIFE } from '../../core/stock/index.js';
import { stringBody } from '../../core/string/index.js';
import type { ReadTransaction } from '../../store/index.js';
import { recordAsSeen, saveRecord, stepRecord } from '../record-change.js';
import { refuse } from '../refusal.js';
import { useCase } from '../use-case.js';
import { refuseOtherWire } from './wire-of-recipe.js';

/** Writes a recipe. What was tried and calibrated was the old one, so an edited recipe is a prediction again. */
export const saveRecipe = useCase(definition, async (work, { id, expectedVersion, body }) => {
  const { tx } = work;
  const seen =
    expectedVersion === undefined ? undefined : await recordAsSeen(tx, 'recipe', { id, expectedVersion });
  await refuseNamesake(tx, { id, body });
  const sound = stringBody(body.construction);
  if (!sound.ok) refuse({ code: 'recipe.unsound', recipeName: body.name, fault: sound.fault });
  await refuseOtherWire(tx, body);
  return succeed(
    seen
      ? await stepRecord(work, 'recipe', { record: seen, life: RECIPE_LIFE, step: 'edit', body })
      : await saveRecord(work, 'recipe', { id, state: RECIPE_LIFE.initial, body }),
  );
});

async function refuseNamesake(
  { records }: ReadTransaction,
  { id, body }: Pick<InputOf<typeof definition>, 'id' | 'body'>,
): Promise<void> {
  const folded = foldName(body.name);
  const namesake = (await records.all('recipe')).find(
    (other) => other.id !== id && foldName(other.body.name) === folded,
  );
  if (namesake) refuse({ code: 'taken', kind: 'recipe', key: 'name', value: namesake.body.name });
}
