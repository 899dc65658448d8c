import { NEW_STRINGS_BIN } from '../../core/day/index.js';
import type { StringStock } from '../../core/stock/index.js';
import type { ReadTransaction } from '../../store/index.js';
import type { LyingStrings } from '../shop/shelf.js';
import { stringsInBins } from '../shop/shelf.js';

type Bin = LyingStrings['bin'];

/**
 * Strings that will be on the shelf without anything more being planned: lots that wait to be released, and what
 * runs that are planned or under way are to make. Without them a plan would make them twice.
 */
export async function comingStrings(tx: ReadTransaction): Promise<readonly StringStock[]> {
  const bins = await tx.records.all('bin');
  const inCheck = await stringsInBins(tx, bins, { isWanted: ({ state }) => state === 'in-check' });
  const runs = [
    ...(await tx.records.all('run', { state: 'planned' })),
    ...(await tx.records.all('run', { state: 'running' })),
    ...(await tx.records.all('run', { state: 'paused' })),
  ];
  return [
    ...inCheck.map(({ bin, lot, count }) => ({
      spec: lot.body.spec,
      count,
      lot: lot.body.name,
      ...inBin(bin, lot.body.stringKey),
    })),
    ...runs.map(({ body: { spec, quantity, name, stringKey } }) => ({
      spec,
      count: quantity,
      lot: name,
      ...inBin(
        bins.find((bin) => bin.body.stringKey === stringKey),
        stringKey,
      ),
    })),
  ];
}

/** They count towards the level of the bin that is kept filled with their kind. */
const inBin = (bin: Bin | undefined, stringKey: string): Pick<StringStock, 'binId' | 'reorderLevel'> => ({
  binId: bin?.body.name ?? NEW_STRINGS_BIN,
  reorderLevel: bin?.body.stringKey === stringKey ? bin.body.reorderLevel : 0,
});
