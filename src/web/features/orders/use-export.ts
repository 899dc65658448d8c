import { useState } from 'react';
import { client, orRefused } from '../../api/client.js';
import { useTell } from '../../parts/notices.js';
import { useWords } from '../../words/language.js';
import { ORDERS_WORDS } from '../../words/orders.js';
import { csvOf } from './orders-csv.js';
import { type OrderPromise, promiseInWords } from './promise.js';
import type { OrderList, OrderRecord } from './use-listed-orders.js';

interface Export {
  readonly list: OrderList;
  readonly text: string;
  readonly promiseOf: (order: OrderRecord) => OrderPromise;
  readonly today: string | undefined;
}

/** Writes the whole list, as it is narrowed, to a file; also what is not on the screen yet. Days are written as the shop keeps them. */
export function useExport({ list, text, promiseOf, today }: Export) {
  const words = useWords(ORDERS_WORDS);
  const tell = useTell();
  const [busy, setBusy] = useState(false);
  const exportList = async () => {
    setBusy(true);
    try {
      const orders = await ordersOf(list, text.trim());
      const { columns } = words;
      const head = [
        columns.number,
        columns.player,
        columns.due,
        columns.sets,
        columns.state,
        columns.promise,
      ];
      const rows = orders.map((order) => [
        order.body.number,
        order.body.player,
        order.body.due,
        order.body.lines.reduce((sum, { quantity }) => sum + quantity, 0),
        words.states[order.state] ?? order.state,
        promiseInWords(promiseOf(order), today, words, String),
      ]);
      save(words.fileName, csvOf([head, ...rows]));
      tell({ text: words.exported(orders.length) });
    } catch (thrown) {
      tell({ text: (thrown as Error).message, kind: 'care' });
    } finally {
      setBusy(false);
    }
  };
  return { exportList, busy };
}

async function ordersOf(list: OrderList, search: string): Promise<readonly OrderRecord[]> {
  const states = list === 'open' ? ['received', 'packing'] : [list === 'all' ? undefined : list];
  const orders: OrderRecord[] = [];
  for (const state of states) {
    let after: string | undefined;
    do {
      const query = { limit: 500, after, state, search: search === '' ? undefined : search };
      const page: Awaited<ReturnType<typeof onePage>> = await onePage(query);
      orders.push(...page.items);
      after = page.next;
    } while (after !== undefined);
  }
  return list === 'open' ? orders.sort((a, b) => (a.body.due < b.body.due ? -1 : 1)) : orders;
}

const onePage = (query: Parameters<typeof client.list>[1]) => orRefused(client.list('order', query));

/** A byte order mark lets spreadsheets know that it is UTF-8. */
function save(name: string, text: string): void {
  const address = URL.createObjectURL(new Blob(['\uFEFF', text], { type: 'text/csv;charset=utf-8' }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  URL.revokeObjectURL(address);
}
