import { shipOrder as definition } from '../../contract/index.js';
import { succeed, takeStep } from '../../core/foundation/index.js';
import { ORDER_LIFE, PACK_LIFE, shipPack } from '../../core/stock/index.js';
import { recordAsSeen, stepRecord } from '../record-change.js';
import { refuse } from '../refusal.js';
import { post } from '../stock/post.js';
import { useCase, type Work } from '../use-case.js';
import { lotsNotReleased } from './lots-not-released.js';
import { copiesWithoutPack, type Order, type Pack, packsOf } from './packs-of-order.js';

/** The sealed packs of an order go to the player: all of it, or what is ready where that was asked for. */
export const shipOrder = useCase(definition, async (work, { orderId, expectedVersion, partial }) => {
  const { tx } = work;
  const order = await recordAsSeen(tx, 'order', { id: orderId, expectedVersion });
  const step = takeStep(ORDER_LIFE, order.state, 'ship');
  if (!step.ok) refuse({ ...step.fault, id: orderId });
  const packs = await packsOf(tx, orderId);
  const sealed = packs.filter(({ state }) => state === 'sealed');
  const unready = unreadySets(order, packs);
  if (sealed.length === 0) refuse({ code: 'order.nothing-to-ship', orderId, unready });
  if (unready.length > 0 && !partial) refuse({ code: 'order.not-all-sealed', orderId, unready });
  const held = await lotsNotReleased(tx, sealed);
  if (held.length > 0) refuse({ code: 'order.lots-not-released', orderId, lots: held });
  const after =
    unready.length > 0
      ? await stillPacking(work, order)
      : await stepRecord(work, 'order', { record: order, life: ORDER_LIFE, step: 'ship' });
  const shipped: Pack[] = [];
  for (const pack of sealed) shipped.push(await ship(work, pack));
  return succeed({ order: after, shipped });
});

/** Sets that are not yet in a sealed pack, and were not sent before. */
const unreadySets = (order: Order, packs: readonly Pack[]) => [
  ...packs
    .filter(({ state }) => state === 'open')
    .map(({ body: { lineNumber, copy, setName } }) => ({ lineNumber, copy, setName })),
  ...copiesWithoutPack(order, packs).map(({ line, copy }) => ({
    lineNumber: line.lineNumber,
    copy,
    setName: line.setName,
  })),
];

/** The next version of the order, so that whoever has it before them sees that some of it went. */
async function stillPacking({ tx, now }: Work, order: Order): Promise<Order> {
  const { id, version: expectedVersion, state, body } = order;
  return tx.records.update('order', { id, expectedVersion, state, body, at: now });
}

async function ship(work: Work, pack: Pack): Promise<Pack> {
  const holds = await work.tx.ledger.balances({ account: `pack/${pack.id}` });
  await post(work, shipPack({ packId: pack.id, holds }));
  const body = { ...pack.body, shippedAt: work.now };
  return stepRecord(work, 'pack', { record: pack, life: PACK_LIFE, step: 'ship', body });
}
