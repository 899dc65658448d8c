import { sql } from 'kysely';
import { RECORD_KINDS, type RecordKind } from '../contract/index.js';
import { invariant } from '../core/foundation/index.js';
import { behind, inOrder, pageOf, rowsToFetch, type Walk } from './cursor.js';
import { workOutSums } from './quality-sums.js';
import { recordTable } from './record-tables.js';
import type { TableRow, TableWriter } from './store.js';
import type { Sql } from './tables.js';

/**
 * Tables with their primary keys, what is referred to first. All but `migrations`, which each database has of its own, and
 * `run_facts` and `string_sums`, which follow from the rest.
 */
const PRIMARY_KEYS: readonly (readonly [table: string, key: readonly string[]])[] = [
  ...(Object.keys(RECORD_KINDS) as RecordKind[]).map((kind) => [recordTable(kind).table, ['id']] as const),
  ['record_versions', ['kind', 'record_id', 'version']],
  ['trial_strings', ['id']],
  ['measurements', ['id']],
  ['end_checks', ['id']],
  ['tallies', ['id']],
  ['voided_entries', ['id']],
  ['caution_readings', ['id']],
  ['movements', ['number']],
  ['movement_entries', ['movement_number', 'line']],
  ['balances', ['account', 'item', 'lot', 'unit']],
  ['journal', ['id']],
  ['journal_touched', ['record_id', 'at', 'journal_id']],
  ['events', ['number']],
  ['credentials', ['person_id', 'kind']],
  ['devices', ['id']],
  ['sessions', ['id']],
  ['tokens', ['id']],
  ['attempts', ['subject']],
  ['repeats', ['request_id']],
  ['column_mappings', ['source']],
];

/** The tables as they lie in the database, within one transaction. */
export function createWholeTables(trx: Sql): TableWriter {
  return {
    names: PRIMARY_KEYS.map(([table]) => table),
    rows: async (table, { after, limit }) => {
      const walk: Walk = { by: keyOf(table), order: 'oldest', after, limit };
      const rows = await trx
        .selectFrom(table as 'any_records')
        .selectAll()
        .where(behind(walk))
        .orderBy(inOrder(walk))
        .limit(rowsToFetch(walk))
        .execute();
      return pageOf(rows, walk, (row) => row as unknown as TableRow);
    },
    fill: async (table, rows) => {
      keyOf(table);
      for (const some of parts(rows)) await fill(trx, table, some);
    },
    filled: () => workOutSums(trx),
  };
}

async function fill(trx: Sql, table: string, rows: readonly TableRow[]): Promise<void> {
  const columns = Object.keys(rows[0]!);
  const values = rows.map((row) => sql`(${sql.join(columns.map((column) => row[column]))})`);
  await sql`insert into ${sql.table(table)} (${sql.join(columns.map((column) => sql.ref(column)))})
    values ${sql.join(values)}`.execute(trx);
}

function keyOf(table: string): readonly string[] {
  const found = PRIMARY_KEYS.find(([name]) => name === table);
  invariant(found !== undefined, `no table ${table}`);
  return found[1];
}

/** Both engines bound the values of one statement (SQLite at 32,766, PostgreSQL at 65,535). */
const ROWS_AT_ONCE = 500;

function* parts<Item>(items: readonly Item[]): Generator<readonly Item[]> {
  for (let from = 0; from < items.length; from += ROWS_AT_ONCE) yield items.slice(from, from + ROWS_AT_ONCE);
}
