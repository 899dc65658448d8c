import { orderRequest as definition } from '../../contract/index.js';
import { succeed } from '../../core/foundation/index.js';
import { ORDER_LIFE, REQUEST_LIFE } from '../../core/stock/index.js';
import type { ReadTransaction } from '../../store/index.js';
import { recordAsSeen, stepRecord } from '../record-change.js';
import { refuse } from '../refusal.js';
import { useCase } from '../use-case.js';
import { type KeptLine, needDay } from './order-lines.js';

/** The answer that a player was given becomes an order, as it was given. */
export const orderRequest = useCase(
  definition,
  async (work, { requestId, expectedVersion, orderId, number, due }) => {
    const { tx, now } = work;
    const seen = await recordAsSeen(tx, 'request', { id: requestId, expectedVersion });
    const request = await stepRecord(work, 'request', {
      record: seen,
      life: REQUEST_LIFE,
      step: 'order',
      body: { ...seen.body, orderId },
    });
    const { player, quantity, answer } = seen.body;
    if (!answer) return refuse({ code: 'request.without-answer', requestId });
    await needRecipes(tx, requestId, answer.strings);
    const { setName, strings } = answer;
    const order = await tx.records.insert('order', {
      id: orderId,
      state: ORDER_LIFE.initial,
      at: now,
      body: {
        number,
        player,
        due: needDay(due),
        note: '',
        lines: [{ lineNumber: 1, kind: 'request', setName, quantity, strings }],
      },
    });
    return succeed({ request, order });
  },
);

/** A recipe may have been retired since the answer was given. */
async function needRecipes(
  tx: ReadTransaction,
  requestId: string,
  strings: KeptLine['strings'],
): Promise<void> {
  for (const { position, recipeId, stringKey } of strings) {
    const recipe = await tx.records.get('recipe', recipeId);
    if (!recipe || recipe.state === 'retired')
      refuse({ code: 'request.recipe-retired', requestId, position, stringKey });
  }
}
