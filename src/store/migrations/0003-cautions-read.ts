import type { Migration } from './migration.js';

/** Which cautions a person touched as read at a machine, and when. */
export const cautionsRead: Migration = {
  number: 3,
  name: 'cautions-read',
  async up(trx, dialect) {
    const { text, whole, tableEnd } = dialect;
    await trx.schema
      .createTable('caution_readings')
      .addColumn('id', text, (column) => column.primaryKey().notNull())
      .addColumn('person_id', text, (column) => column.notNull())
      .addColumn('machine_id', text, (column) => column.notNull().references('machines.id'))
      .addColumn('cautions', text, (column) => column.notNull())
      .addColumn('edition', whole, (column) => column.notNull())
      .addColumn('at', text, (column) => column.notNull())
      .modifyEnd(tableEnd)
      .execute();
    for (const [of, columns] of [
      ['machine', ['machine_id', 'person_id', 'at', 'id']],
      ['person', ['person_id', 'at', 'id']],
      ['time', ['at', 'id']],
    ] as const)
      await trx.schema
        .createIndex(`caution_readings_${of}`)
        .on('caution_readings')
        .columns([...columns])
        .execute();
    for (const statement of dialect.appendOnly('caution_readings')) await statement.execute(trx);
  },
};
