import { sql, type Transaction } from 'kysely';
import type { Dialect } from '../dialect.js';
import type { Migration } from './migration.js';

/** What each trial string was wound at, and how its turns lie. Strings of before have neither. */
export const dialIn: Migration = {
  number: 2,
  name: 'dial-in',
  async up(trx, dialect) {
    await addColumns(trx, dialect);
    // Of the many strings of years only those that were dialled in are asked for together.
    await trx.schema
      .createIndex('trial_strings_dialled')
      .on('trial_strings')
      .columns(['run_id', 'at'])
      .where(sql.ref('setting'), 'is not', null)
      .execute();
  },
};

async function addColumns(trx: Transaction<unknown>, { text, real }: Dialect): Promise<void> {
  await trx.schema.alterTable('trial_strings').addColumn('setting', real).execute();
  await trx.schema
    .alterTable('trial_strings')
    .addColumn('set_by', text, (column) => column.check(sql`set_by in ('advice', 'override')`))
    .execute();
  await trx.schema
    .alterTable('trial_strings')
    .addColumn('seen', text, (column) => column.check(sql`seen in ('gaps', 'overlaps', 'even')`))
    .execute();
}
