import type { BodyOf, StoredRecord } from '../../contract/index.js';
import { readStringKey } from '../../core/sets/index.js';
import type { StringStock } from '../../core/stock/index.js';
import type { ReadTransaction } from '../../store/index.js';

type Bins = readonly StoredRecord<BodyOf<'bin'>>[];
type Lot = StoredRecord<BodyOf<'string-lot'>>;

/** Strings that lie in the bins, lot by lot, and the bins of a kind that hold none of it. Released lots only. */
export async function shelf(tx: ReadTransaction, bins: Bins): Promise<readonly StringStock[]> {
  const lying = await stringsInBins(tx, bins, { isWanted: ({ state }) => state === 'released' });
  const filled = new Set(lying.map(({ bin, lot }) => `${bin.id} ${lot.body.stringKey}`));
  return [
    ...lying.map(({ bin, lot, count }) => ({
      spec: lot.body.spec,
      count,
      binId: bin.body.name,
      lot: lot.body.name,
      reorderLevel: reorderLevel(bin, lot.body.stringKey),
    })),
    ...bins.filter(({ id, body }) => !filled.has(`${id} ${body.stringKey}`)).flatMap(emptyBin),
  ];
}

export interface LyingStrings {
  readonly bin: Bins[number];
  readonly lot: Lot;
  readonly count: number;
}

/** What lies in bins of the lots that are wanted; of one kind of string where its item is given. */
export async function stringsInBins(
  tx: ReadTransaction,
  bins: Bins,
  { isWanted, item: only }: { readonly isWanted: (lot: Lot) => boolean; readonly item?: string },
): Promise<readonly LyingStrings[]> {
  const binById = new Map(bins.map((bin) => [bin.id, bin]));
  const lots = new Map<string, Lot | undefined>();
  const lying: LyingStrings[] = [];
  const balances = await tx.ledger.balances({
    accountPrefix: 'bin/',
    ...(only === undefined ? {} : { item: only }),
  });
  for (const { account, item, lot: lotId, quantity } of balances) {
    if (!item.startsWith('string/')) continue;
    if (!lots.has(lotId)) lots.set(lotId, await tx.records.get('string-lot', lotId));
    const bin = binById.get(account.slice('bin/'.length));
    const lot = lots.get(lotId);
    if (bin && lot && isWanted(lot)) lying.push({ bin, lot, count: quantity });
  }
  return lying;
}

/** A bin is kept filled with the one kind of string that it is for. */
export const reorderLevel = ({ body }: Bins[number], stringKey: string): number =>
  body.stringKey === stringKey ? body.reorderLevel : 0;

/** A bin without strings of its kind still asks for them. */
function emptyBin({ body }: Bins[number]): readonly StringStock[] {
  const spec = body.stringKey === undefined ? undefined : readStringKey(body.stringKey);
  if (!spec || body.reorderLevel === 0) return [];
  return [{ spec, count: 0, binId: body.name, lot: '', reorderLevel: body.reorderLevel }];
}
