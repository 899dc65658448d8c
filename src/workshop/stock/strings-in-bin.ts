import type { BodyOf, StoredRecord } from '../../contract/index.js';
import type { ReadTransaction } from '../../store/index.js';
import { refuse } from '../refusal.js';

export type LotRecord = StoredRecord<BodyOf<'string-lot'>>;
export type BinRecord = StoredRecord<BodyOf<'bin'>>;

/** How many strings of a lot lie in a bin. */
export const stringsInBin = (
  { ledger }: Pick<ReadTransaction, 'ledger'>,
  { binId, lot }: { readonly binId: string; readonly lot: LotRecord },
): Promise<number> => ledger.balance(`bin/${binId}`, `string/${lot.body.stringKey}`, lot.id);

/** Refuses to lay strings into a bin that is for strings of another kind. */
export function refuseOtherKind(bin: BinRecord, stringKey: string): void {
  if (bin.body.stringKey === undefined || bin.body.stringKey === stringKey) return;
  refuse({
    code: 'bin.for-other-strings',
    binId: bin.id,
    binName: bin.body.name,
    holds: bin.body.stringKey,
    stringKey,
  });
}

/** Refuses to take more strings of a lot from a bin than lie there. */
export async function refuseTooMany(
  tx: Pick<ReadTransaction, 'ledger'>,
  taken: { readonly bin: BinRecord; readonly lot: LotRecord; readonly count: number },
): Promise<void> {
  const { bin, lot, count } = taken;
  const there = await stringsInBin(tx, { binId: bin.id, lot });
  if (count > there) {
    refuse({
      code: 'bin.too-few',
      binId: bin.id,
      binName: bin.body.name,
      lotId: lot.id,
      lotName: lot.body.name,
      there,
      wanted: count,
    });
  }
}
