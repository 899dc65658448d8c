import { sql } from 'kysely';
import type { Migration } from './migration.js';

/** Entries of the floor that were taken back: the entry stays as it was, and this stands beside it. */
export const voidedEntries: Migration = {
  number: 4,
  name: 'voided-entries',
  async up(trx, dialect) {
    const { text, tableEnd } = dialect;
    await trx.schema
      .createTable('voided_entries')
      .addColumn('id', text, (column) => column.primaryKey().notNull())
      .addColumn('of_kind', text, (column) =>
        column.notNull().check(sql`of_kind in ('tally', 'measurement', 'trial-string')`),
      )
      .addColumn('entry_id', text, (column) => column.notNull().unique())
      .addColumn('run_id', text, (column) => column.references('runs.id'))
      .addColumn('lot_id', text, (column) => column.references('string_lots.id'))
      .addColumn('reason', text, (column) => column.notNull())
      .addColumn('at', text, (column) => column.notNull())
      .addColumn('by', text, (column) => column.notNull())
      .modifyEnd(tableEnd)
      .execute();
    for (const of of ['run_id', 'lot_id'])
      await trx.schema
        .createIndex(`voided_entries_${of}`)
        .on('voided_entries')
        .columns([of, 'at', 'id'])
        .execute();
    for (const statement of dialect.appendOnly('voided_entries')) await statement.execute(trx);
  },
};
