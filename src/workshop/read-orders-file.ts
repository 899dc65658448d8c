import type { OrdersFileFault } from '../contract/index.js';
import type { Shop } from '../core/day/index.js';
import { fail, type Result, succeed } from '../core/foundation/index.js';
import { type ReadOrders, readOrders } from '../core/orders/index.js';
import { readTable } from './read-table.js';

/** Reads a file of orders against a shop: rows that cannot be taken apart stand among the faults of the rest. */
export function readOrdersFile(bytes: Uint8Array, shop: Shop): Result<ReadOrders, OrdersFileFault> {
  const table = readTable(bytes);
  if (!table.ok) return table;
  const { headings, rows, faults } = table.value;
  const read = readOrders(headings, rows, shop);
  if (Object.keys(read.columns.headingOf).length === 0)
    return fail({ code: 'file.no-known-headings', headings });
  return succeed({ ...read, faults: [...faults, ...read.faults].sort((a, b) => a.line - b.line) });
}
