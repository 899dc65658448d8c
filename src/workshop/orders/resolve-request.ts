import { resolveRequest as definition } from '../../contract/index.js';
import { succeed } from '../../core/foundation/index.js';
import { type AnswerQuestion, type GivenAnswer, giveAnswer } from '../../core/orders/index.js';
import { REQUEST_LIFE } from '../../core/stock/index.js';
import { recordAsSeen, stepRecord } from '../record-change.js';
import { refuse } from '../refusal.js';
import { type ShopBook, shopBook } from '../shop/shop-book.js';
import { useCase } from '../use-case.js';
import { keptStrings } from './order-lines.js';

/** A request with the set that was taken of those that answer it, or the best that the shop can make of it now. Asked anew,
 * the answer may be another. */
export const resolveRequest = useCase(definition, async (work, input) => {
  const { id, expectedVersion, player, letter, quantity, request, chosen } = input;
  const before =
    expectedVersion === undefined
      ? undefined
      : await recordAsSeen(work.tx, 'request', { id, expectedVersion });
  const book = await shopBook(work.tx);
  const answer = keptAnswer(answerOf({ request, quantity, ...(chosen ? { chosen } : {}) }, book), book);
  const body = { player, letter, quantity, request, answer };
  if (before)
    return succeed(
      await stepRecord(work, 'request', { record: before, life: REQUEST_LIFE, step: 'answer', body }),
    );
  return succeed(
    await work.tx.records.insert('request', { id, state: REQUEST_LIFE.steps.answer.to, body, at: work.now }),
  );
});

function answerOf(question: AnswerQuestion, { shop }: ShopBook): GivenAnswer {
  const answer = giveAnswer(question, shop);
  if (answer.ok) return answer.value;
  if (answer.fault.kind === 'not-offered') return refuse({ code: 'request.set-not-offered' });
  return refuse({ code: 'request.unanswerable', faults: [answer.fault.fault] });
}

/** Figures and warnings are kept as they were told: a later recipe must not change what a player was promised. */
const keptAnswer = ({ strings, ...answer }: GivenAnswer, book: ShopBook) => ({
  ...answer,
  strings: keptStrings(strings, book),
  figures: [...answer.figures],
  warnings: [...answer.warnings],
});
