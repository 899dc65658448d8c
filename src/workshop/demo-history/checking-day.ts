import { countOf } from '../../../demo/index.js';
import { addDays } from '../../core/foundation/index.js';
import { holdLot, releaseLot, scrapLot } from '../production/judge-lot.js';
import { recordTally } from '../production/record-tally.js';
import { scrapStrings } from '../stock/scrap-strings.js';
import type { Act, HistoryDay, InHand } from './act.js';
import { allLots, type ShopLot } from './history-book.js';

const FIRST_LOT = 510;
const A_LOT = 7;
const HELD_DAYS = 4;
/** Of lots that were held, so many are found to be good after all. Invented. */
const GOOD_AFTER_ALL = 0.6;

/** The coilers look through what was wound the day before; the owner decides of what was held some days ago. */
export function actsOfChecking(day: HistoryDay): readonly Act[] {
  const due = allLots(day.book).filter(({ lookAgain }) => lookAgain <= day.date);
  const inCheck = due.filter(({ state }) => state === 'in-check');
  const onHold = due.filter(({ state }) => state === 'on-hold');
  return [
    ...inCheck.map(
      (lot, at): Act => ({
        minute: FIRST_LOT + A_LOT * at,
        by: at % 2 === 0 ? 'coiler' : 'secondCoiler',
        work: (shop) => lookThrough(shop, day, lot),
      }),
    ),
    ...onHold.map(
      (lot, at): Act => ({ minute: 840 + at, by: 'owner', work: (shop) => decide(shop, day, lot) }),
    ),
  ];
}

/** A coiler goes through a lot, and lets it be packed or holds it. */
export async function lookThrough({ ask }: InHand, { book, date }: HistoryDay, lot: ShopLot): Promise<void> {
  const { id: lotId, binId } = lot;
  const found = countOf(lot.toFind);
  const of = { lotId, station: 'coiler' } as const;
  if (lot.left > found)
    await ask(recordTally, { id: book.newId(), ...of, outcome: 'good', reason: '', count: lot.left - found });
  for (const { reason, count } of lot.toFind) {
    await ask(recordTally, { id: book.newId(), ...of, outcome: 'scrap', reason, count });
    await ask(scrapStrings, { lotId, binId, count, reason });
  }
  lot.left -= found;
  lot.faulty -= found;
  const doubt = lot.doubt ?? (found * 5 > lot.left ? 'too many faults at coiling' : undefined);
  const seen = { lotId, expectedVersion: lot.version };
  const judged =
    doubt === undefined
      ? await ask(releaseLot, { ...seen, reason: 'looked through' })
      : await ask(holdLot, { ...seen, reason: doubt });
  lot.version = judged.version;
  lot.state = doubt === undefined ? 'released' : 'on-hold';
  lot.lookAgain = addDays(date, HELD_DAYS);
}

async function decide({ ask }: InHand, { book }: HistoryDay, lot: ShopLot): Promise<void> {
  const seen = { lotId: lot.id, expectedVersion: lot.version };
  if (book.chance.next() < GOOD_AFTER_ALL) {
    const { version } = await ask(releaseLot, { ...seen, reason: 'measured again and found good' });
    lot.version = version;
    lot.state = 'released';
    return;
  }
  await ask(scrapLot, { ...seen, reason: lot.doubt ?? 'too many faults at coiling' });
  lot.state = 'scrapped';
  lot.left = 0;
}
