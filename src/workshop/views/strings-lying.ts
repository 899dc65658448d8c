import type { BodyOf, LyingStrings, StoredRecord } from '../../contract/index.js';
import type { ReadTransaction } from '../../store/index.js';
import { stringsInBins } from '../shop/shelf.js';

/** What lies in the bins, lot by lot, whether it may be packed or not. */
export async function lyingStrings(
  tx: ReadTransaction,
  bins: readonly StoredRecord<BodyOf<'bin'>>[],
): Promise<LyingStrings[]> {
  const lying = await stringsInBins(tx, bins, { isWanted: () => true });
  return lying.map(({ bin, lot, count }) => ({
    binId: bin.id,
    lotId: lot.id,
    lot: lot.body.name,
    state: lot.state,
    stringKey: lot.body.stringKey,
    count,
    ...(lot.body.holdReason === undefined ? {} : { holdReason: lot.body.holdReason }),
  }));
}

/** The same of all bins. */
export const stringsLying = async (tx: ReadTransaction): Promise<LyingStrings[]> =>
  lyingStrings(tx, await tx.records.all('bin'));
