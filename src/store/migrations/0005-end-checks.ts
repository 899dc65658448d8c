import { sql, type Transaction } from 'kysely';
import type { Dialect } from '../dialect.js';
import type { Migration } from './migration.js';

/** What was found of the ends of strings and cores: length, twist, tail, seat, pull. What was not looked at is null. */
export const endChecks: Migration = {
  number: 5,
  name: 'end-checks',
  async up(trx, dialect) {
    await createEndChecks(trx, dialect);
    for (const [of, column] of WALKED_BY) {
      await trx.schema
        .createIndex(`end_checks_by_${of}`)
        .on('end_checks')
        .columns([...column, 'at', 'id'])
        .execute();
    }
    for (const statement of dialect.appendOnly('end_checks')) await statement.execute(trx);
  },
};

const WALKED_BY: readonly (readonly [of: string, column: readonly string[]])[] = [
  ['run', ['run_id']],
  ['wire', ['wire_id']],
  ['spool', ['spool_id']],
  ['machine', ['machine_id']],
  ['time', []],
];

async function createEndChecks(trx: Transaction<unknown>, { text, real, tableEnd }: Dialect): Promise<void> {
  await trx.schema
    .createTable('end_checks')
    .addColumn('id', text, (column) => column.primaryKey().notNull())
    .addColumn('run_id', text, (column) => column.notNull().references('runs.id'))
    .addColumn('machine_id', text, (column) => column.notNull().references('machines.id'))
    .addColumn('wire_id', text, (column) => column.notNull().references('wires.id'))
    .addColumn('spool_id', text, (column) => column.references('spools.id'))
    .addColumn('string_end', text, (column) => column.notNull().check(sql`string_end in ('ball', 'loop')`))
    .addColumn('length_m', real, (column) => column.check(sql`length_m > 0`))
    .addColumn('twists', real, (column) => column.check(sql`twists >= 0`))
    .addColumn('tail_m', real, (column) => column.check(sql`tail_m >= 0`))
    .addColumn('seat', text, (column) => column.check(sql`seat in ('straight', 'crooked', 'loose')`))
    .addColumn('force_n', real, (column) => column.check(sql`force_n > 0`))
    .addColumn('came', text, (column) =>
      column.check(sql`came in ('held', 'at-twist', 'in-length', 'slipped')`),
    )
    .addColumn('least_breaking_n', real, (column) => column.check(sql`least_breaking_n > 0`))
    .addColumn('strength_from', text, (column) =>
      column.check(sql`strength_from in ('certificate', 'standard')`),
    )
    .addColumn('gauge', text, (column) => column.notNull())
    // Refers to a row of this same table, which an archive may bring later: no constraint.
    .addColumn('instead_of', text)
    .addColumn('at', text, (column) => column.notNull())
    .addColumn('by', text, (column) => column.notNull())
    .modifyEnd(tableEnd)
    .execute();
}
