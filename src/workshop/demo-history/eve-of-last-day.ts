import { ORDERS_BY_HAND, type OrderByHand, STANDSTILL } from '../../../demo/index.js';
import { addDays, byText } from '../../core/foundation/index.js';
import { stringKey } from '../../core/sets/index.js';
import { mgFromKg } from '../../core/stock/index.js';
import { saveOrder } from '../orders/save-order.js';
import { quarantineSpool } from '../stock/quarantine-spool.js';
import { weighSpool } from '../stock/weigh-spool.js';
import type { Act, HistoryDay, InHand } from './act.js';
import { demandOf } from './choose-runs.js';
import { type HistoryBook, onHand, type ShopSpool } from './history-book.js';
import { answer, order, writeDown } from './requests.js';

/** No order of the telephone is for more sets. */
const MOST_SETS = 96;
/** Sets beyond those for which the shelf suffices. */
const MORE_SETS = 4;
/** What is left of the wire that runs short. */
const LEFT_KG = 0.08;

/** What of the afternoon before makes the last day as it is: orders by telephone, letters, a wire that runs short. */
export const actsOnEve = (day: HistoryDay): readonly Act[] => [
  ...ORDERS_BY_HAND.map(
    (wanted, at): Act => ({ minute: 840 + 4 * at, by: 'adviser', work: (shop) => byHand(shop, day, wanted) }),
  ),
  { minute: 870, by: 'adviser', work: (shop) => lettersOfTheAfternoon(shop, day) },
  { minute: 1012, by: 'servoWinder', work: (shop) => findRust(shop, day) },
];

async function byHand({ ask }: InHand, { book, date }: HistoryDay, wanted: OrderByHand): Promise<void> {
  const { player, note, set, dueInDays } = wanted;
  const made = await ask(saveOrder, {
    id: book.newId(),
    number: `H-${++book.count.ordersByHand}`,
    player,
    due: addDays(date, dueInDays),
    note,
    lines: [{ quantity: setsOf(book, wanted), wanted: { kind: 'stock', setName: set } }],
  });
  book.orders.push(made);
  book.orders.sort((a, b) => byText(a.body.due, b.body.due) || byText(a.body.number, b.body.number));
}

/** As many sets as let that share of their strings run short. */
function setsOf(book: HistoryBook, { set: name, sets }: OrderByHand): number {
  if (typeof sets === 'number') return sets;
  const strings = book.shop.sets.find((set) => set.name === name)?.strings ?? [];
  const demand = demandOf(book);
  const enoughFor = strings
    .map(stringKey)
    .map((key) => onHand(book, key) - (demand.get(key) ?? 0))
    .sort((a, b) => a - b);
  const last = enoughFor[Math.ceil(sets.shareShort * enoughFor.length) - 1] ?? 0;
  return Math.min(MOST_SETS, Math.max(0, last) + MORE_SETS);
}

/** Two letters: one is answered and the player thinks about it, the other is ordered by telephone. */
async function lettersOfTheAfternoon(shop: InHand, day: HistoryDay): Promise<void> {
  await answer(shop, day, await writeDown(shop, day));
  const taken = await writeDown(shop, day);
  await answer(shop, day, taken);
  await order(shop, day, taken);
}

/**
 * Of the wrap wire whose lightest spool would last the shortest all others are found rusty, and that one is lighter than the
 * books say: what is left will not go far.
 */
async function findRust({ ask, tx }: InHand, { book }: HistoryDay): Promise<void> {
  const rest = soonestUsedUp(book);
  const restRecord = rest && (await tx.records.get('spool', rest.id));
  if (!rest || !restRecord) return;
  const grossKg = Number((rest.tareKg + LEFT_KG).toFixed(3));
  const weighed = { spoolId: rest.id, expectedVersion: restRecord.version, grossKg };
  await ask(weighSpool, { ...weighed, reason: STANDSTILL.lighterThanBooked });
  rest.grossKg = grossKg;
  rest.trueMg = mgFromKg(LEFT_KG);
  rest.bookMg = rest.trueMg;
  const rusty = book.spools.filter(({ id, wire }) => wire === rest.wire && id !== rest.id);
  for (const { id: spoolId } of rusty) {
    const record = await tx.records.get('spool', spoolId);
    if (!record) continue;
    const seen = { spoolId, expectedVersion: record.version };
    await ask(quarantineSpool, { ...seen, reason: STANDSTILL.spoolInQuarantine });
  }
  for (const spool of rusty) book.spools.splice(book.spools.indexOf(spool), 1);
}

/** The spool of a wrap wire that would be empty first, if nothing but it were used, at the use of the history. */
function soonestUsedUp({ shop, spools, usedMg }: HistoryBook): ShopSpool | undefined {
  const wraps = new Set(shop.wires.filter(({ use }) => use === 'wrap').map(({ id }) => id));
  const lasts = ({ wire, bookMg }: ShopSpool): number => bookMg / (usedMg.get(wire) ?? 0);
  const [first] = spools
    .filter(({ wire, bookMg }) => wraps.has(wire) && usedMg.has(wire) && bookMg > mgFromKg(LEFT_KG))
    .sort((a, b) => lasts(a) - lasts(b));
  return first;
}
