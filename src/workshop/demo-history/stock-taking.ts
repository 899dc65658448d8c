import { weekday } from '../../core/foundation/index.js';
import { mgFromKg } from '../../core/stock/index.js';
import { countStrings } from '../stock/count-strings.js';
import { weighSpool } from '../stock/weigh-spool.js';
import type { Act, HistoryDay, InHand } from './act.js';
import { allLots } from './history-book.js';
import { onTheScaleKg } from './spools-of-run.js';

const FRIDAY = 5;
const SPOOLS_A_WEEK = 3;
const BINS_A_MONTH = 5;
/** A string is missing from so many of the lots that are counted. Invented. */
const MISSING_SHARE = 0.1;

/** On Fridays some spools go on the scale; on the first Friday of a month some bins are counted. */
export function actsOfStockTaking(day: HistoryDay): readonly Act[] {
  if (weekday(day.date) !== FRIDAY) return [];
  const isFirst = Number(day.date.slice(8)) <= 7;
  return [
    { minute: 1000, by: 'servoWinder', work: (shop) => weighSome(shop, day) },
    ...(isFirst ? [{ minute: 1010, by: 'packer', work: (shop) => countSome(shop, day) } satisfies Act] : []),
  ];
}

async function weighSome({ ask, tx }: InHand, { book }: HistoryDay): Promise<void> {
  for (let time = 0; time < SPOOLS_A_WEEK; time++) {
    const spool = book.chance.pick(book.spools);
    const record = await tx.records.get('spool', spool.id);
    const grossKg = onTheScaleKg(spool);
    if (!record || grossKg <= 0) continue;
    await ask(weighSpool, { spoolId: spool.id, expectedVersion: record.version, grossKg });
    spool.grossKg = grossKg;
    spool.bookMg = mgFromKg(grossKg - spool.tareKg);
    if (spool.bookMg === 0) book.spools.splice(book.spools.indexOf(spool), 1);
  }
}

async function countSome({ ask }: InHand, { book }: HistoryDay): Promise<void> {
  const { chance } = book;
  for (let time = 0; time < BINS_A_MONTH; time++) {
    const lot = chance.pick(allLots(book).filter(({ state, left }) => state === 'released' && left > 1));
    const counted = chance.next() < MISSING_SHARE ? lot.left - 1 : lot.left;
    await ask(countStrings, { binId: lot.binId, lotId: lot.id, counted, reason: 'monthly count' });
    lot.left = counted;
    lot.faulty = Math.min(lot.faulty, counted);
  }
}
