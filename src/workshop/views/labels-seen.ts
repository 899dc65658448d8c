import type { BodyOf } from '../../contract/index.js';
import type { CalendarDate } from '../../core/foundation/index.js';
import type { ReadTransaction } from '../../store/index.js';
import { localClock } from '../local-clock.js';
import { type Pack, packsOf } from '../packing/packs-of-order.js';
import { needRecord } from '../record-change.js';

/** What the labels of packs tell. */
export interface LabelsSeen {
  readonly shop: { readonly name: string; readonly invented: boolean };
  readonly date: CalendarDate;
  readonly packs: readonly {
    readonly pack: BodyOf<'pack'>;
    readonly order: BodyOf<'order'>;
    readonly lots: readonly string[];
  }[];
}

/** The label of one pack. Refuses where there is no such pack. */
export const labelOfPack = async (tx: ReadTransaction, packId: string, now: string): Promise<LabelsSeen> =>
  labelsSeen(tx, [await needRecord(tx, 'pack', packId)], now);

/** The labels of all packs of an order but those that were given up. Refuses where there is no such order. */
export async function labelsOfOrder(tx: ReadTransaction, orderId: string, now: string): Promise<LabelsSeen> {
  await needRecord(tx, 'order', orderId);
  return labelsSeen(tx, await packsOf(tx, orderId), now);
}

async function labelsSeen(tx: ReadTransaction, packs: readonly Pack[], now: string): Promise<LabelsSeen> {
  const [settings] = await tx.records.all('settings');
  const told: LabelsSeen['packs'][number][] = [];
  for (const { body } of packs) {
    const order = await needRecord(tx, 'order', body.orderId);
    const lotIds = [...new Set(body.picked.map(({ lotId }) => lotId))];
    const lots: string[] = [];
    for (const lotId of lotIds) lots.push((await needRecord(tx, 'string-lot', lotId)).body.name);
    told.push({ pack: body, order: order.body, lots: lots.sort() });
  }
  return {
    shop: { name: settings?.body.name ?? '', invented: settings?.body.invented ?? false },
    date: localClock(now).date,
    packs: told,
  };
}
