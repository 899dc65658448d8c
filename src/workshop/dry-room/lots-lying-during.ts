import type { ReadingAnswer } from '../../contract/index.js';
import { byText, grouped } from '../../core/foundation/index.js';
import type { ReadTransaction } from '../../store/index.js';

/**
 * String lots that lay in a bin at some moment of a time, by the movements in and out of bins. The records do not say in which
 * room a bin stands, and a count that was off before somebody counted is off here too.
 */
export async function lotsLyingDuring(
  { ledger, records }: ReadTransaction,
  { from, to }: { readonly from: string; readonly to: string },
): Promise<ReadingAnswer<'lots-lying-during'>> {
  const lying = await ledger.lyingDuring({ accountPrefix: 'bin/', from, to });
  const names = new Map((await records.all('bin')).map(({ id, body }) => [id, body.name]));
  const items: ReadingAnswer<'lots-lying-during'>['items'] = [];
  for (const [lotId, own] of grouped(lying, ({ lot }) => lot)) {
    const lot = await records.get('string-lot', lotId);
    if (!lot) continue;
    const sum = (of: 'atFirst' | 'cameIn') => own.reduce((total, each) => total + Math.max(0, each[of]), 0);
    items.push({
      lotId,
      lot: lot.body.name,
      state: lot.state,
      stringKey: lot.body.stringKey,
      bins: own.map(({ account }) => names.get(account.slice('bin/'.length)) ?? account),
      atFirst: sum('atFirst'),
      cameIn: sum('cameIn'),
    });
  }
  return { items: items.sort((a, b) => byText(a.stringKey, b.stringKey) || byText(a.lot, b.lot)) };
}
