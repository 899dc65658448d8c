import type { SeatModel } from '../string/index.js';
import type { OwnSpread, PastRun } from '../winding/index.js';
import type { Shop } from './shop.js';

/** What a shop has learned that a set-up leans on: how wrap sits, past runs, the lots of wire that will
 * be taken, and how far its strings differ. */
export function whatIsKnown({
  seat,
  record,
  spread,
  spools,
}: Pick<Shop, 'seat' | 'record' | 'spread' | 'spools'>): {
  readonly seat?: SeatModel;
  readonly record?: readonly PastRun[];
  readonly lots?: Readonly<Record<string, string>>;
  readonly ownSpread?: OwnSpread;
} {
  return {
    ...(seat ? { seat } : {}),
    ...(record ? { record, lots: onlyLots(spools) } : {}),
    ...(spread ? { ownSpread: spread } : {}),
  };
}

/** Where all spools of a wire are of one lot, that will be taken; where not, nobody knows before one is mounted. */
function onlyLots(spools: Shop['spools']): Readonly<Record<string, string>> {
  const lots = new Map<string, string | undefined>();
  for (const { wireId, lot } of spools) {
    const known = lots.has(wireId) ? lots.get(wireId) : lot;
    lots.set(wireId, known === lot ? lot : undefined);
  }
  return Object.fromEntries([...lots].flatMap(([wireId, lot]) => (lot === undefined ? [] : [[wireId, lot]])));
}
