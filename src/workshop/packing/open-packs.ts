import { openPacks as definition } from '../../contract/index.js';
import { succeed } from '../../core/foundation/index.js';
import { ORDER_LIFE } from '../../core/stock/index.js';
import { recordAsSeen, stepRecord } from '../record-change.js';
import { refuse } from '../refusal.js';
import { useCase, type Work } from '../use-case.js';
import {
  type Copy,
  copiesWithoutPack,
  type Order,
  type Pack,
  packLabelCode,
  packsOf,
} from './packs-of-order.js';

/** A pack for each set that has none: all of them at first, later those whose pack was given up. */
export const openPacks = useCase(definition, async (work, { orderId, expectedVersion }) => {
  const { tx } = work;
  const seen = await recordAsSeen(tx, 'order', { id: orderId, expectedVersion });
  const order =
    seen.state === 'packing'
      ? seen
      : await stepRecord(work, 'order', { record: seen, life: ORDER_LIFE, step: 'pack' });
  const standing = await packsOf(tx, orderId);
  const missing = copiesWithoutPack(order, standing);
  if (missing.length === 0) refuse({ code: 'order.packs-all-open', orderId, packs: standing.length });
  const opened: Pack[] = [];
  for (const copy of missing) opened.push(await openPack(work, order, copy));
  return succeed({ order, packs: [...standing, ...opened] });
});

const openPack = ({ tx, newId, now }: Work, order: Order, copy: Copy): Promise<Pack> =>
  tx.records.insert('pack', {
    id: newId(),
    state: 'open',
    at: now,
    body: {
      orderId: order.id,
      lineNumber: copy.line.lineNumber,
      copy: copy.copy,
      labelCode: packLabelCode(order, copy),
      setName: copy.line.setName,
      wanted: copy.line.strings,
      picked: [],
    },
  });
