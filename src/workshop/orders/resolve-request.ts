import type { InputOf } from '../../contract/index.js';
import { resolveRequest as definition } from '../../contract/index.js';
import { calendarDate, invariant, succeed } from '../../core/foundation/index.js';
import { type ResolvedOrder, resolver } from '../../core/orders/index.js';
import { REQUEST_LIFE } from '../../core/stock/index.js';
import { recordAsSeen, stepRecord } from '../record-change.js';
import { refuse } from '../refusal.js';
import { type ShopBook, shopBook } from '../shop/shop-book.js';
import { useCase, type Work } from '../use-case.js';
import { keptStrings, lineToResolve } from './order-lines.js';

type Asked = InputOf<typeof definition>;

/** A request with the best set that the shop can make of it now. Asked anew, the answer may be another. */
export const resolveRequest = useCase(definition, async (work, input) => {
  const { id, expectedVersion, player, letter, quantity, request } = input;
  const before =
    expectedVersion === undefined
      ? undefined
      : await recordAsSeen(work.tx, 'request', { id, expectedVersion });
  const book = await shopBook(work.tx);
  const body = { player, letter, quantity, request, answer: answerOf(bestSet(work, input, book), book) };
  if (before)
    return succeed(
      await stepRecord(work, 'request', { record: before, life: REQUEST_LIFE, step: 'answer', body }),
    );
  return succeed(
    await work.tx.records.insert('request', { id, state: REQUEST_LIFE.steps.answer.to, body, at: work.now }),
  );
});

function bestSet({ now }: Work, { player, quantity, request }: Asked, { shop }: ShopBook): ResolvedOrder {
  const due = calendarDate(now.slice(0, 10));
  invariant(due, 'the moment of a use case has a day');
  const place = { line: 1, orderId: '', player, due, note: '' };
  const answer = resolver(shop)(lineToResolve(place, { quantity, wanted: { kind: 'request', request } }));
  if (answer.ok) return answer.value;
  return refuse({ code: 'request.unanswerable', faults: answer.fault });
}

const answerOf = ({ setName, strings }: ResolvedOrder, book: ShopBook) => ({
  setName,
  strings: keptStrings(strings, book),
  totalTensionN: strings.reduce((sum, { sounding }) => sum + (sounding?.tensionN ?? 0), 0),
});
