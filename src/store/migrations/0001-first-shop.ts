import { type CreateTableBuilder, sql, type Transaction } from 'kysely';
import type { Dialect } from '../dialect.js';
import { createLedgerTables } from '../ledger-tables.js';
import type { Migration } from './migration.js';

/** Everything that the shop's first database holds. */
export const firstShop: Migration = {
  number: 1,
  name: 'first-shop',
  async up(trx, dialect) {
    for (const table of RECORD_TABLES) await createRecords(trx, dialect, table);
    await createRecordVersions(trx, dialect);
    await createReadings(trx, dialect);
    await createLedgerTables(trx, dialect);
    await createJournal(trx, dialect);
    await createAccess(trx, dialect);
    await createSmallTables(trx, dialect);
    for (const table of APPEND_ONLY)
      for (const statement of dialect.appendOnly(table)) await statement.execute(trx);
  },
};

type KeyColumn = readonly [name: string, type: 'text' | 'real' | 'unique text', refersTo?: string];

/** Tables of records with their key columns; what others refer to comes first. */
const RECORD_TABLES: readonly (readonly [table: string, keys: readonly KeyColumn[]])[] = [
  ['wires', [['name', 'unique text']]],
  [
    'spools',
    [
      ['name', 'unique text'],
      ['wire_id', 'text', 'wires'],
      ['lot', 'text'],
    ],
  ],
  ['machines', [['name', 'unique text']]],
  ['people', [['name', 'unique text']]],
  ['instruments', [['name', 'unique text']]],
  ['tunings', [['name', 'unique text']]],
  ['requests', [['player', 'text']]],
  ['sets', [['name', 'unique text']]],
  [
    'recipes',
    [
      ['name', 'unique text'],
      ['material', 'text'],
      ['gauge_thou', 'real'],
    ],
  ],
  [
    'runs',
    [
      ['name', 'text'],
      ['machine_id', 'text', 'machines'],
      ['recipe_id', 'text', 'recipes'],
    ],
  ],
  [
    'string_lots',
    [
      ['name', 'text'],
      ['run_id', 'text', 'runs'],
      ['string_key', 'text'],
    ],
  ],
  ['bins', [['name', 'unique text']]],
  ['dry_room_readings', [['at', 'text']]],
  [
    'orders',
    [
      ['number', 'unique text'],
      ['player', 'text'],
      ['due', 'text'],
    ],
  ],
  [
    'packs',
    [
      ['order_id', 'text', 'orders'],
      ['label_code', 'text'],
    ],
  ],
  [
    'complaints',
    [
      ['player', 'text'],
      ['fault_code', 'text'],
    ],
  ],
  [
    'documents',
    [
      ['title', 'text'],
      ['of_kind', 'text'],
      ['of_id', 'text'],
    ],
  ],
  ['plans', [['date', 'text']]],
  ['settings', []],
];

const APPEND_ONLY = [
  'record_versions',
  'measurements',
  'tallies',
  'movements',
  'movement_entries',
  'journal',
  'journal_touched',
  'events',
];

/**
 * A table of one kind of record. Each way to narrow a list has an index that is already in the list's order, so that
 * a page costs the same at the end of ten years as on the first day; the last two answer searches without touching
 * the records themselves.
 */
export async function createRecords(
  trx: Transaction<unknown>,
  { text, whole, real, tableEnd }: Dialect,
  [table, keys]: (typeof RECORD_TABLES)[number],
): Promise<void> {
  let creating: CreateTableBuilder<string, string> = trx.schema
    .createTable(table)
    .addColumn('id', text, (column) => column.primaryKey().notNull())
    .addColumn('version', whole, (column) => column.notNull().check(sql`version >= 1`))
    .addColumn('state', text, (column) => column.notNull())
    .addColumn('created_at', text, (column) => column.notNull())
    .addColumn('updated_at', text, (column) => column.notNull())
    .addColumn('search_text', text, (column) => column.notNull());
  for (const [name, type, refersTo] of keys)
    creating = creating.addColumn(name, type === 'real' ? real : text, (column) => {
      const unique = type === 'unique text' ? column.unique() : column;
      return refersTo ? unique.references(`${refersTo}.id`) : unique;
    });
  // Last: SQLite finds a column by walking over those before it.
  await creating
    .addColumn('body', text, (column) => column.notNull())
    .modifyEnd(tableEnd)
    .execute();
  for (const [name] of keys) await index(trx, table, name, [name, 'created_at', 'id']);
  await index(trx, table, 'state', ['state', 'created_at', 'id', 'search_text']);
  await index(trx, table, 'time', ['created_at', 'id', 'search_text']);
}

async function createRecordVersions(trx: Transaction<unknown>, { text, whole, tableEnd }: Dialect) {
  await trx.schema
    .createTable('record_versions')
    .addColumn('kind', text, (column) => column.notNull())
    .addColumn('record_id', text, (column) => column.notNull())
    .addColumn('version', whole, (column) => column.notNull())
    .addColumn('state', text, (column) => column.notNull())
    .addColumn('created_at', text, (column) => column.notNull())
    .addColumn('updated_at', text, (column) => column.notNull())
    .addColumn('body', text, (column) => column.notNull())
    .addPrimaryKeyConstraint('record_versions_key', ['kind', 'record_id', 'version'])
    .modifyEnd(tableEnd)
    .execute();
}

/** What is measured and counted on the floor. A reading that is missing has no row: no column takes nothing for a number. */
async function createReadings(trx: Transaction<unknown>, { text, whole, real, tableEnd }: Dialect) {
  await trx.schema
    .createTable('trial_strings')
    .addColumn('id', text, (column) => column.primaryKey().notNull())
    .addColumn('run_id', text, (column) => column.notNull().references('runs.id'))
    .addColumn('number', whole, (column) => column.notNull().check(sql`number >= 1`))
    .addColumn('position', whole, (column) => column.notNull().check(sql`position in (1, 2)`))
    .addColumn('verdict', text, (column) => column.notNull().check(sql`verdict in ('open', 'good', 'scrap')`))
    .addColumn('at', text, (column) => column.notNull())
    .addColumn('by', text, (column) => column.notNull())
    .addUniqueConstraint('trial_strings_number', ['run_id', 'number'])
    .modifyEnd(tableEnd)
    .execute();
  await trx.schema
    .createTable('measurements')
    .addColumn('id', text, (column) => column.primaryKey().notNull())
    .addColumn('run_id', text, (column) => column.notNull().references('runs.id'))
    .addColumn('trial_string_id', text, (column) => column.references('trial_strings.id'))
    .addColumn('quantity', text, (column) =>
      column.notNull().check(sql`quantity in ('diameter', 'mass', 'length')`),
    )
    .addColumn('value', real, (column) => column.notNull().check(sql`value > 0`))
    .addColumn('place_m', real)
    .addColumn('rotation_deg', real)
    .addColumn('instrument', text, (column) => column.notNull())
    .addColumn('at', text, (column) => column.notNull())
    .addColumn('by', text, (column) => column.notNull())
    .modifyEnd(tableEnd)
    .execute();
  await trx.schema
    .createTable('tallies')
    .addColumn('id', text, (column) => column.primaryKey().notNull())
    .addColumn('run_id', text, (column) => column.references('runs.id'))
    .addColumn('lot_id', text, (column) => column.references('string_lots.id'))
    .addColumn('station', text, (column) => column.notNull().check(sql`station in ('winder', 'coiler')`))
    .addColumn('outcome', text, (column) => column.notNull().check(sql`outcome in ('good', 'scrap')`))
    .addColumn('reason', text, (column) => column.notNull())
    .addColumn('count', whole, (column) => column.notNull().check(sql`count >= 1`))
    .addColumn('at', text, (column) => column.notNull())
    .addColumn('by', text, (column) => column.notNull())
    .modifyEnd(tableEnd)
    .execute();
  await index(trx, 'measurements', 'run', ['run_id', 'at', 'id']);
  await index(trx, 'measurements', 'time', ['at', 'id']);
  await index(trx, 'tallies', 'run', ['run_id', 'at', 'id']);
  await index(trx, 'tallies', 'lot', ['lot_id', 'at', 'id']);
  await index(trx, 'tallies', 'time', ['at', 'id']);
}

async function createJournal(trx: Transaction<unknown>, { text, whole, tableEnd }: Dialect) {
  await trx.schema
    .createTable('journal')
    .addColumn('id', text, (column) => column.primaryKey().notNull())
    .addColumn('at', text, (column) => column.notNull())
    .addColumn('by', text, (column) => column.notNull())
    .addColumn('use_case', text, (column) => column.notNull())
    .addColumn('input', text, (column) => column.notNull())
    .addColumn('touched', text, (column) => column.notNull())
    .modifyEnd(tableEnd)
    .execute();
  await trx.schema
    .createTable('journal_touched')
    .addColumn('record_id', text, (column) => column.notNull())
    .addColumn('at', text, (column) => column.notNull())
    .addColumn('journal_id', text, (column) => column.notNull().references('journal.id'))
    .addPrimaryKeyConstraint('journal_touched_key', ['record_id', 'at', 'journal_id'])
    .modifyEnd(tableEnd)
    .execute();
  await trx.schema
    .createTable('events')
    .addColumn('number', whole, (column) => column.primaryKey().notNull())
    .addColumn('topic', text, (column) => column.notNull())
    .addColumn('record_id', text, (column) => column.notNull())
    .addColumn('version', whole, (column) => column.notNull())
    .addColumn('use_case', text, (column) => column.notNull())
    .addColumn('at', text, (column) => column.notNull())
    .modifyEnd(tableEnd)
    .execute();
  await index(trx, 'journal', 'time', ['at', 'id']);
  await index(trx, 'journal', 'doer', ['by', 'at', 'id']);
}

async function createAccess(trx: Transaction<unknown>, { text, whole, tableEnd }: Dialect) {
  await trx.schema
    .createTable('credentials')
    .addColumn('person_id', text, (column) => column.notNull().references('people.id'))
    .addColumn('kind', text, (column) => column.notNull())
    .addColumn('secret_hash', text, (column) => column.notNull())
    .addColumn('expires_at', text)
    .addPrimaryKeyConstraint('credentials_key', ['person_id', 'kind'])
    .modifyEnd(tableEnd)
    .execute();
  await trx.schema
    .createTable('devices')
    .addColumn('id', text, (column) => column.primaryKey().notNull())
    .addColumn('name', text, (column) => column.notNull())
    .addColumn('secret_hash', text, (column) => column.notNull())
    .addColumn('enrolled_at', text, (column) => column.notNull())
    .addColumn('revoked_at', text)
    .modifyEnd(tableEnd)
    .execute();
  await trx.schema
    .createTable('sessions')
    .addColumn('id', text, (column) => column.primaryKey().notNull())
    .addColumn('person_id', text, (column) => column.notNull().references('people.id'))
    .addColumn('secret_hash', text, (column) => column.notNull())
    .addColumn('via', text, (column) => column.notNull())
    .addColumn('device_id', text, (column) => column.references('devices.id'))
    .addColumn('created_at', text, (column) => column.notNull())
    .addColumn('expires_at', text, (column) => column.notNull())
    .addColumn('revoked_at', text)
    .modifyEnd(tableEnd)
    .execute();
  await trx.schema
    .createTable('tokens')
    .addColumn('id', text, (column) => column.primaryKey().notNull())
    .addColumn('name', text, (column) => column.notNull())
    .addColumn('person_id', text, (column) => column.notNull().references('people.id'))
    .addColumn('secret_hash', text, (column) => column.notNull())
    .addColumn('scopes', text, (column) => column.notNull())
    .addColumn('created_at', text, (column) => column.notNull())
    .addColumn('expires_at', text)
    .addColumn('revoked_at', text)
    .modifyEnd(tableEnd)
    .execute();
  await trx.schema
    .createTable('attempts')
    .addColumn('subject', text, (column) => column.primaryKey().notNull())
    .addColumn('failures', whole, (column) => column.notNull().check(sql`failures >= 0`))
    .addColumn('locked_until', text)
    .modifyEnd(tableEnd)
    .execute();
  await index(trx, 'credentials', 'secret', ['kind', 'secret_hash']);
  await index(trx, 'sessions', 'person', ['person_id', 'created_at', 'id']);
}

async function createSmallTables(trx: Transaction<unknown>, { text, tableEnd }: Dialect) {
  await trx.schema
    .createTable('repeats')
    .addColumn('request_id', text, (column) => column.primaryKey().notNull())
    .addColumn('use_case', text, (column) => column.notNull())
    .addColumn('input_hash', text, (column) => column.notNull())
    .addColumn('answer', text, (column) => column.notNull())
    .addColumn('at', text, (column) => column.notNull())
    .modifyEnd(tableEnd)
    .execute();
  await trx.schema
    .createTable('column_mappings')
    .addColumn('source', text, (column) => column.primaryKey().notNull())
    .addColumn('mapping', text, (column) => column.notNull())
    .modifyEnd(tableEnd)
    .execute();
}

const index = (
  trx: Transaction<unknown>,
  table: string,
  of: string,
  columns: readonly string[],
): Promise<void> =>
  trx.schema
    .createIndex(`${table}_by_${of}`)
    .on(table)
    .columns([...columns])
    .execute();
