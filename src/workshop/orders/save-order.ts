import { saveOrder as definition } from '../../contract/index.js';
import { succeed } from '../../core/foundation/index.js';
import { type OrderFault, resolver } from '../../core/orders/index.js';
import { ORDER_LIFE } from '../../core/stock/index.js';
import { recordAsSeen, saveRecord } from '../record-change.js';
import { refuse } from '../refusal.js';
import { shopBook } from '../shop/shop-book.js';
import { useCase, type Work } from '../use-case.js';
import { type KeptLine, keptLine, lineToResolve, needDay } from './order-lines.js';

/** An order by hand. It may be changed until its first pack is opened. */
export const saveOrder = useCase(definition, async (work, input) => {
  const { id, expectedVersion, number, player, due, note, lines } = input;
  const before = await orderBefore(work, id, expectedVersion);
  const book = await shopBook(work.tx);
  const resolve = resolver(book.shop);
  const place = { orderId: number, player, due: needDay(due), note };
  const kept: KeptLine[] = [];
  const faults: OrderFault[] = [];
  for (const [at, line] of lines.entries()) {
    const resolution = resolve(lineToResolve({ ...place, line: at + 1 }, line));
    if (resolution.ok) kept.push(keptLine(resolution.value, at + 1, book));
    else faults.push(...resolution.fault);
  }
  if (faults.length > 0) refuse({ code: 'order.lines-unresolved', number, faults });
  const imported = before?.body.imported;
  const body = { number, player, due, note, lines: kept, ...(imported ? { imported } : {}) };
  return succeed(await saveRecord(work, 'order', { id, expectedVersion, state: ORDER_LIFE.initial, body }));
});

async function orderBefore({ tx }: Work, id: string, expectedVersion: number | undefined) {
  if (expectedVersion === undefined) return undefined;
  const before = await recordAsSeen(tx, 'order', { id, expectedVersion });
  if (before.state !== ORDER_LIFE.initial)
    refuse({ code: 'order.under-way', orderId: id, number: before.body.number, state: before.state });
  return before;
}
