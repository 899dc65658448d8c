import type { ReadingAnswer } from '../../contract/index.js';
import type { ReadTransaction } from '../../store/index.js';
import { type Pack, packsOf } from '../packing/packs-of-order.js';
import { lyingStrings } from './strings-lying.js';

/** All that packing goes by, of one moment: orders that are open with their packs, the bins, and what lies in them, held lots too. */
export async function packingSeen(tx: ReadTransaction): Promise<Unwritable<ReadingAnswer<'packing-roll'>>> {
  const received = await tx.records.all('order', { state: 'received' });
  const packing = await tx.records.all('order', { state: 'packing' });
  const packs: Pack[] = [];
  for (const { id } of packing) packs.push(...(await packsOf(tx, id)));
  const bins = await tx.records.all('bin');
  return {
    orders: [...packing, ...received],
    packs,
    bins: bins.map(({ id, body: { name, walkOrder, stringKey } }) => ({
      id,
      name,
      walkOrder,
      ...(stringKey === undefined ? {} : { stringKey }),
    })),
    lying: await lyingStrings(tx, bins),
  };
}

type Unwritable<Value> = Value extends object
  ? { readonly [Field in keyof Value]: Unwritable<Value[Field]> }
  : Value;
