import type { StringStock } from '../../core/stock/index.js';
import type { ReadTransaction } from '../../store/index.js';
import { reorderLevel, stringsInBins } from '../shop/shelf.js';

/** Strings that lie in their bins and wait to be released: without them a plan would make them twice. */
export async function stringsInCheck(tx: ReadTransaction): Promise<readonly StringStock[]> {
  const bins = await tx.records.all('bin');
  const lying = await stringsInBins(tx, bins, { isWanted: ({ state }) => state === 'in-check' });
  return lying.map(({ bin, lot, count }) => ({
    spec: lot.body.spec,
    count,
    lot: lot.body.name,
    binId: bin.body.name,
    reorderLevel: reorderLevel(bin, lot.body.stringKey),
  }));
}
