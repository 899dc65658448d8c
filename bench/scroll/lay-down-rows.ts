import Database from 'better-sqlite3';
import type { Shop } from '../../src/core/day/index.js';
import { uuidSql } from '../ledger-history/lay-down.js';
import { layDownOrders } from '../ten-years/lay-down.js';

export const BINS = 100_000;
const BIN = 40;

/** Lays rows down in the file of an empty shop: bins, of which the page has the list whole, and ten years of orders, which come by pages. */
export function layDownRows(file: string, shop: Shop): void {
  const database = new Database(file);
  try {
    database.pragma('foreign_keys = OFF');
    database.transaction(() => {
      database.exec(BIN_ROWS);
      layDownOrders(database, shop);
    })();
  } finally {
    database.close();
  }
}

const BIN_ROWS = `
  with recursive counted(i) as (select 1 union all select i + 1 from counted where i < ${BINS})
  insert into bins (id, version, state, created_at, updated_at, search_text, name, body)
  select ${uuidSql(BIN, 'i')}, 1, '', '2027-01-04T08:00:00.000Z', '2027-01-04T08:00:00.000Z', 'hall bin ' || i,
    'hall bin ' || i, json_object('name', 'hall bin ' || i, 'walkOrder', 1000 + i, 'reorderLevel', 0)
  from counted`;
