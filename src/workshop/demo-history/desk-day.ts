import { delivery, demoOrders, dryRoomClimate } from '../../../demo/index.js';
import { addDays, byText, type CalendarDate, daysBetween, weekday } from '../../core/foundation/index.js';
import { mgFromKg } from '../../core/stock/index.js';
import { answerComplaint, closeComplaint, registerComplaint } from '../orders/complaints.js';
import { importOrders } from '../orders/import-orders.js';
import { receiveSpool } from '../stock/receive-spool.js';
import { recordDryRoom } from '../stock/record-dry-room.js';
import type { Act, HistoryDay, InHand } from './act.js';
import type { HistoryBook, OpenComplaint } from './history-book.js';

const MONDAY = 1;
const TUESDAY = 2;
const THURSDAY = 4;

/** What comes to the desk: the climate of the dry room, wire, orders, letters. Minutes of the day. */
export function actsAtDesk(day: HistoryDay): readonly Act[] {
  const { date } = day;
  const orders: Act = { minute: 480, by: 'adviser', work: (shop) => takeInOrders(shop, day) };
  return [
    { minute: 440, by: 'coiler', work: (shop) => readClimate(shop, day, false) },
    { minute: 930, by: 'secondCoiler', work: (shop) => readClimate(shop, day, true) },
    { minute: 445, by: 'servoWinder', work: (shop) => receive(shop, day) },
    ...([MONDAY, THURSDAY].includes(weekday(date)) ? [orders] : []),
    { minute: 550, by: 'adviser', work: (shop) => readLetters(shop, day) },
  ];
}

async function readClimate({ ask }: InHand, { book, date }: HistoryDay, isAfternoon: boolean): Promise<void> {
  await ask(recordDryRoom, { id: book.newId(), ...dryRoomClimate(date, isAfternoon, book.chance) });
}

/** The post's orders come in two small files a week. */
const ORDERS_A_FILE = { least: 7, most: 11 } as const;
const QUANTITIES = [1, 1, 1, 1, 1, 2, 2, 2, 3] as const;

/** A file of the post's orders is taken in. */
export async function takeInOrders({ ask, tx }: InHand, { book, date }: HistoryDay): Promise<void> {
  const { chance, shop, count } = book;
  const orders = chance.whole(ORDERS_A_FILE.least, ORDERS_A_FILE.most);
  const csv = demoOrders(shop, {
    from: date,
    days: 18,
    count: orders,
    seed: chance.whole(0, 0xffffffff),
    customShare: 0.12,
    requestShare: 0.04,
    firstNumber: count.orders,
    quantities: QUANTITIES,
  });
  count.orders += orders;
  await ask(importOrders, { source: 'post', csv, commit: true });
  const known = new Set(book.orders.map(({ id }) => id));
  const received = await tx.records.all('order', { state: 'received' });
  book.orders.push(...received.filter(({ id }) => !known.has(id)));
  book.orders.sort((a, b) => byText(a.body.due, b.body.due) || byText(a.body.number, b.body.number));
}

/** Every other week the carrier brings what runs short, and something more. */
const BETWEEN_DELIVERIES_DAYS = 14;
const SHORT_MG = 2_200_000;
const MOST_SPOOLS = 5;
const A_TUESDAY = '2026-03-03' as CalendarDate;

/** What the carrier brought. */
export async function receive({ ask }: InHand, { book, date }: HistoryDay): Promise<void> {
  const isDue = weekday(date) === TUESDAY && daysBetween(A_TUESDAY, date) % BETWEEN_DELIVERIES_DAYS === 0;
  const { shop, chance, causes, count, ids } = book;
  const wish = {
    date,
    wires: shop.wires,
    wanted: isDue ? [...shortWires(book), chance.pick(shop.wires).id] : [],
    number: () => ++count.spools,
  };
  for (const { wire, name, lot, netKg, tareKg, certificate } of delivery(wish, causes, chance)) {
    const id = book.newId();
    const grossKg = Number((netKg + tareKg).toFixed(3));
    await ask(receiveSpool, { id, wireId: ids.wire(wire), name, lot, grossKg, tareKg, certificate });
    const mg = mgFromKg(grossKg - tareKg);
    book.spools.push({ id, wire, lot, tareKg, bookMg: mg, trueMg: mg, grossKg, machine: undefined });
  }
}

function shortWires({ shop, spools }: HistoryBook): readonly string[] {
  const onHandMg = new Map<string, number>(shop.wires.map(({ id }) => [id, 0]));
  for (const { wire, bookMg } of spools) onHandMg.set(wire, (onHandMg.get(wire) ?? 0) + bookMg);
  return [...onHandMg]
    .filter(([, mg]) => mg < SHORT_MG)
    .sort(([, a], [, b]) => a - b)
    .slice(0, MOST_SPOOLS)
    .map(([wire]) => wire);
}

/** Letters that came are written down, answered a day later and closed after that. */
async function readLetters({ ask }: InHand, { book, date }: HistoryDay): Promise<void> {
  for (const complaint of [...book.complaints]) {
    if (complaint.next > date) continue;
    const seen = { complaintId: complaint.id, expectedVersion: complaint.version };
    if (complaint.state === 'open') {
      const answer = 'We are sorry: a new string is on its way, and we look into how the old one was made.';
      const { version } = await ask(answerComplaint, { ...seen, answer });
      Object.assign(complaint, {
        version,
        state: 'answered',
        next: addDays(date, 7),
      } satisfies Partial<OpenComplaint>);
    } else {
      await ask(closeComplaint, seen);
      book.complaints.splice(book.complaints.indexOf(complaint), 1);
    }
  }
  for (const letter of book.letters.filter((each) => each.date <= date)) {
    book.letters.splice(book.letters.indexOf(letter), 1);
    const { date: _, ...body } = letter;
    const id = book.newId();
    const { version } = await ask(registerComplaint, { id, ...body });
    book.complaints.push({ id, version, state: 'open', next: addDays(date, 1) });
  }
}
