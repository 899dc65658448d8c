import { type CalendarDate, daysBetween, weekday } from '../../core/foundation/index.js';
import { moveStrings } from '../stock/move-strings.js';
import type { Act, HistoryDay, InHand } from './act.js';
import { allLots } from './history-book.js';

const WEDNESDAY = 3;
const A_WEDNESDAY = '2026-03-11' as CalendarDate;
const LOTS_A_TIME = 2;
const WORTH_MOVING = 4;

/** Every other Wednesday the packer makes room: some lots go to the upper shelf, those that lie there come back. */
export function actsOfMoving(day: HistoryDay): readonly Act[] {
  const isDue = weekday(day.date) === WEDNESDAY && daysBetween(A_WEDNESDAY, day.date) % 14 === 0;
  return isDue ? [{ minute: 990, by: 'packer', work: (shop) => makeRoom(shop, day) }] : [];
}

async function makeRoom({ ask }: InHand, { book }: HistoryDay): Promise<void> {
  const { chance, upperShelf } = book;
  const there = allLots(book).filter(({ state, left }) => state === 'released' && left > 0);
  const move = async (lot: (typeof there)[number], toBinId: string) => {
    await ask(moveStrings, { lotId: lot.id, fromBinId: lot.binId, toBinId, count: lot.left });
    lot.binId = toBinId;
  };
  const above = there.filter(({ binId }) => binId === upperShelf);
  for (const lot of above) await move(lot, book.binOf(lot.stringKey));
  const below = there.filter((lot) => !above.includes(lot) && lot.left >= WORTH_MOVING);
  for (let time = 0; time < LOTS_A_TIME && below.length > 0; time++) {
    const lot = chance.pick(below);
    below.splice(below.indexOf(lot), 1);
    await move(lot, upperShelf);
  }
}
