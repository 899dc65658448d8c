import { cancelOrder as definition } from '../../contract/index.js';
import { succeed } from '../../core/foundation/index.js';
import { ORDER_LIFE, PACK_LIFE } from '../../core/stock/index.js';
import { packsOf } from '../packing/packs-of-order.js';
import { recordAsSeen, stepRecord } from '../record-change.js';
import { refuse } from '../refusal.js';
import { useCase } from '../use-case.js';

/** What is shipped stays shipped; strings in packs go back to their bins by hand first, so that someone carries them. */
export const cancelOrder = useCase(definition, async (work, { orderId, expectedVersion }) => {
  const order = await recordAsSeen(work.tx, 'order', { id: orderId, expectedVersion });
  const cancelled = await stepRecord(work, 'order', { record: order, life: ORDER_LIFE, step: 'cancel' });
  const packs = (await packsOf(work.tx, orderId)).filter(({ state }) => state !== 'shipped');
  const holding = packs.filter(({ body }) => body.picked.length > 0);
  if (holding.length > 0)
    refuse({
      code: 'order.packs-hold-strings',
      orderId,
      packs: holding.map(({ id, body }) => ({
        packId: id,
        labelCode: body.labelCode,
        strings: body.picked.length,
      })),
    });
  for (const record of packs) await stepRecord(work, 'pack', { record, life: PACK_LIFE, step: 'void' });
  return succeed(cancelled);
});
