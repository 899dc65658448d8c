import { REQUEST_LETTERS, type RequestLetter } from '../../../demo/index.js';
import {
  addDays,
  byText,
  type CalendarDate,
  daysBetween,
  invariant,
  weekday,
} from '../../core/foundation/index.js';
import { type PlayerRequest, readOrders } from '../../core/orders/index.js';
import { declineRequest } from '../orders/decline-request.js';
import { orderRequest } from '../orders/order-request.js';
import { receiveRequest } from '../orders/receive-request.js';
import { resolveRequest } from '../orders/resolve-request.js';
import type { Act, HistoryDay, InHand } from './act.js';
import type { HistoryBook, OpenRequest } from './history-book.js';

const WEDNESDAY = 3;
const A_WEDNESDAY = '2026-03-04' as CalendarDate;
const BETWEEN_LETTERS_DAYS = 14;
const THINKS_DAYS = 2;
/** Of players who were answered, so many want no set after all. Invented. */
const DECLINED_SHARE = 0.15;

/** A player asks for something of their own every other week; what was answered is ordered a few days later, or not. */
export function actsOfRequests(day: HistoryDay): readonly Act[] {
  const { date, book } = day;
  const isDue = weekday(date) === WEDNESDAY && daysBetween(A_WEDNESDAY, date) % BETWEEN_LETTERS_DAYS === 0;
  const settle = book.requests.filter(({ next }) => next <= date);
  return [
    ...settle.map(
      (request, at): Act => ({
        minute: 545 + at,
        by: 'adviser',
        work: (shop) => settled(shop, day, request),
      }),
    ),
    ...(isDue
      ? [{ minute: 560, by: 'adviser', work: (shop) => writeAndAnswer(shop, day) } satisfies Act]
      : []),
  ];
}

/** The next letter is written down, and waits. */
export async function writeDown({ ask }: InHand, { book, date }: HistoryDay): Promise<OpenRequest> {
  const letter = REQUEST_LETTERS[book.count.requests++ % REQUEST_LETTERS.length];
  invariant(letter, 'there are letters');
  const asked = { player: letter.player, letter: letter.letter, quantity: Number(letter.quantity) };
  const request = requestOf(book, letter);
  const id = book.newId();
  const { version } = await ask(receiveRequest, { id, ...asked, request: request as never });
  return { id, asked, request, version, next: addDays(date, THINKS_DAYS) };
}

/** The set that the shop can make of it is written beside the letter. */
export async function answer({ ask }: InHand, { book }: HistoryDay, request: OpenRequest): Promise<void> {
  const answered = await ask(resolveRequest, {
    id: request.id,
    expectedVersion: request.version,
    ...request.asked,
    request: request.request as never,
  });
  request.version = answered.version;
  book.requests.push(request);
}

/** The player takes the set that was answered. */
export async function order(
  { ask }: InHand,
  { book, date }: HistoryDay,
  request: OpenRequest,
): Promise<void> {
  book.requests.splice(book.requests.indexOf(request), 1);
  const { order: made } = await ask(orderRequest, {
    requestId: request.id,
    expectedVersion: request.version,
    orderId: book.newId(),
    number: `Q-${++book.count.ordersOfRequests}`,
    due: addDays(date, 12),
  });
  book.orders.push(made);
  book.orders.sort((a, b) => byText(a.body.due, b.body.due) || byText(a.body.number, b.body.number));
}

async function writeAndAnswer(shop: InHand, day: HistoryDay): Promise<void> {
  await answer(shop, day, await writeDown(shop, day));
}

async function settled(shop: InHand, day: HistoryDay, request: OpenRequest): Promise<void> {
  const { book } = day;
  if (book.chance.next() >= DECLINED_SHARE) return order(shop, day, request);
  book.requests.splice(book.requests.indexOf(request), 1);
  const { id: requestId, version: expectedVersion } = request;
  await shop.ask(declineRequest, { requestId, expectedVersion, reason: 'the player keeps the old strings' });
}

/** What the adviser reads out of a letter, by the same words that an orders file has. */
function requestOf({ shop }: HistoryBook, { wanted, player, quantity }: RequestLetter): PlayerRequest {
  const cells = { order: 'letter', player, quantity, due: A_WEDNESDAY, ...wanted };
  const { lines, faults } = readOrders(Object.keys(cells), [{ line: 2, cells }], shop);
  const asked = lines[0]?.wanted;
  if (asked?.kind !== 'request') throw new Error(`${player}'s letter is none: ${JSON.stringify(faults)}`);
  const { reference } = asked.request;
  if (!reference) return asked.request;
  const strings = reference.strings.map(({ gaugeThou, kind }) => ({ gaugeThou, ...(kind ? { kind } : {}) }));
  return { ...asked.request, reference: { ...reference, strings } };
}
