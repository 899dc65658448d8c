import { type Kysely, sql } from 'kysely';
import type { Dialect } from './dialect.js';

/** The ledger's three tables, as rows. */
export interface LedgerTables {
  readonly movements: MovementRow;
  readonly movement_entries: EntryRow;
  readonly balances: BalanceRow;
}

export interface MovementRow {
  /** Counts up with every movement: lists and their cursors go by it. */
  number: number;
  id: string;
  at: string;
  by: string;
  what: string;
  reason: string;
  of_kind: string;
  of_id: string;
}

export interface EntryRow {
  movement_number: number;
  /** Place within the movement, from 1. */
  line: number;
  account: string;
  item: string;
  lot: string;
  unit: string;
  quantity: number;
}

export interface BalanceRow {
  account: string;
  item: string;
  lot: string;
  unit: string;
  /** Never 0: what is used up has no row. */
  quantity: number;
}

/**
 * Creates the tables and indexes of the stock ledger. Entries are many and small, so they are clustered by
 * movement (SQLite) and each list that people ask for has its own index, walked newest first. Balances hold
 * only what is not 0: years of emptied orders and packs cost nothing.
 */
export async function createLedgerTables(db: Kysely<unknown>, dialect: Dialect): Promise<void> {
  const { whole, text, tableEnd } = dialect;
  const clustered = dialect.engine === 'sqlite' ? sql`strict, without rowid` : tableEnd;
  await db.schema
    .createTable('movements')
    .addColumn('number', whole, (column) => column.primaryKey())
    .addColumn('id', text, (column) => column.notNull().unique())
    .addColumn('at', text, (column) => column.notNull())
    .addColumn('by', text, (column) => column.notNull())
    .addColumn('what', text, (column) => column.notNull())
    .addColumn('reason', text, (column) => column.notNull())
    .addColumn('of_kind', text, (column) => column.notNull())
    .addColumn('of_id', text, (column) => column.notNull())
    .modifyEnd(tableEnd)
    .execute();
  await db.schema
    .createTable('movement_entries')
    .addColumn('movement_number', whole, (column) => column.notNull().references('movements.number'))
    .addColumn('line', whole, (column) => column.notNull())
    .addColumn('account', text, (column) => column.notNull())
    .addColumn('item', text, (column) => column.notNull())
    .addColumn('lot', text, (column) => column.notNull())
    .addColumn('unit', text, (column) => column.notNull())
    .addColumn('quantity', whole, (column) => column.notNull().check(sql`quantity <> 0`))
    .addPrimaryKeyConstraint('movement_entries_key', ['movement_number', 'line'])
    .modifyEnd(clustered)
    .execute();
  await db.schema
    .createTable('balances')
    .addColumn('account', text, (column) => column.notNull())
    .addColumn('item', text, (column) => column.notNull())
    .addColumn('lot', text, (column) => column.notNull())
    .addColumn('unit', text, (column) => column.notNull())
    .addColumn('quantity', whole, (column) => column.notNull())
    .addPrimaryKeyConstraint('balances_key', ['account', 'item', 'lot', 'unit'])
    .modifyEnd(clustered)
    .execute();
  await createLedgerIndexes(db);
}

/** Each way to narrow a list has its index, already in the list's order. */
async function createLedgerIndexes(db: Kysely<unknown>): Promise<void> {
  const index = (table: string, name: string, columns: string[]) =>
    db.schema.createIndex(`${table}_${name}`).on(table).columns(columns).execute();
  await index('movement_entries', 'account', ['account', 'movement_number']);
  await index('movement_entries', 'item', ['item', 'movement_number']);
  await index('movement_entries', 'lot', ['lot', 'movement_number']);
  await index('balances', 'item', ['item', 'lot']);
  await index('balances', 'lot', ['lot']);
}
