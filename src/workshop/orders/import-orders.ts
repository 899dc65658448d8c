import { importOrders as definition } from '../../contract/index.js';
import { succeed } from '../../core/foundation/index.js';
import { ORDER_LIFE } from '../../core/stock/index.js';
import { refuse } from '../refusal.js';
import { shopBook } from '../shop/shop-book.js';
import { useCase, type Work } from '../use-case.js';
import { type ComparedOrder, compareOrders } from './compare-orders.js';
import { readImport } from './read-import.js';

/**
 * A file of orders, all of it or nothing. An order whose rows are those that it was read from before is left
 * alone, whatever became of it since: so the same file may come as often as it likes.
 */
export const importOrders = useCase(definition, async (work, { source, csv, mapping, commit }) => {
  const { tx } = work;
  const book = await shopBook(tx);
  const file = readImport({ csv, shop: book.shop, mapping, remembered: await tx.mappings.get(source) });
  const compared = await compareOrders({ tx, book, file, source });
  const preview = {
    headings: file.headings.map(({ heading, samples }) => ({ heading, samples: [...samples] })),
    columns: file.columns.headingOf,
    ignored: [...file.columns.ignored, ...file.columns.doubled.flatMap(({ headings }) => headings.slice(1))],
    orders: compared.orders.map(({ shown }) => shown),
    faults: compared.faults,
  };
  if (!commit) return succeed({ preview, committed: false });
  if (preview.faults.length > 0) refuse({ code: 'import.has-faults', source, preview });
  for (const order of compared.orders) await keep(work, order);
  if (mapping) await tx.mappings.put(source, mapping);
  return succeed({ preview, committed: true });
});

async function keep({ tx, newId, now }: Work, { before, body }: ComparedOrder): Promise<void> {
  if (!body) return;
  if (before)
    await tx.records.update('order', { id: before.id, expectedVersion: before.version, body, at: now });
  else await tx.records.insert('order', { id: newId(), state: ORDER_LIFE.initial, body, at: now });
}
