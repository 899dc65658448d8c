import type { Transaction } from 'kysely';
import type { Dialect } from '../dialect.js';
import { workOutSums } from '../quality-sums.js';
import type { Sql } from '../tables.js';
import type { Migration } from './migration.js';

/**
 * What was measured of each run, taken together, so that years of it can be looked at in a moment. Worked out from what
 * a shop has already; a later step that gives these tables another form fills them itself, and this one no more.
 */
export const qualitySums: Migration = {
  number: 7,
  name: 'quality-sums',
  async up(trx, dialect) {
    await createRunFacts(trx, dialect);
    await createStringSums(trx, dialect);
    await workOutSums(trx as unknown as Sql);
  },
};

async function createRunFacts(
  trx: Transaction<unknown>,
  { text, whole, real, tableEnd }: Dialect,
): Promise<void> {
  await trx.schema
    .createTable('run_facts')
    .addColumn('run_id', text, (column) => column.primaryKey().notNull().references('runs.id'))
    .addColumn('machine_id', text, (column) => column.notNull())
    .addColumn('recipe_id', text, (column) => column.notNull())
    .addColumn('recipe_version', whole, (column) => column.notNull())
    .addColumn('length_m', real, (column) => column.notNull())
    .addColumn('winder_id', text)
    .addColumn('spool_ids', text, (column) => column.notNull())
    .addColumn('good_count', whole, (column) => column.notNull())
    .addColumn('scrap_count', whole, (column) => column.notNull())
    .addColumn('at', text, (column) => column.notNull())
    .modifyEnd(tableEnd)
    .execute();
  await trx.schema.createIndex('run_facts_by_time').on('run_facts').columns(['at', 'run_id']).execute();
}

async function createStringSums(
  trx: Transaction<unknown>,
  { text, whole, real, tableEnd }: Dialect,
): Promise<void> {
  let creating = trx.schema
    .createTable('string_sums')
    .addColumn('run_id', text, (column) => column.notNull().references('runs.id'))
    .addColumn('instrument', text, (column) => column.notNull())
    .addColumn('is_first', whole, (column) => column.notNull())
    .addColumn('is_largest', whole, (column) => column.notNull());
  for (const [name, type] of [
    ['strings', whole],
    ['mean_m', real],
    ['squares_m2', real],
    ['along_squares_m2', real],
    ['along_degrees', whole],
    ['weighed', whole],
    ['mean_kg', real],
    ['squares_kg2', real],
    ['readings', whole],
    ['first_at', text],
    ['last_at', text],
  ] as const)
    creating = creating.addColumn(name, type, (column) => column.notNull());
  await creating
    .addPrimaryKeyConstraint('string_sums_key', ['run_id', 'instrument', 'is_first', 'is_largest'])
    .modifyEnd(tableEnd)
    .execute();
}
