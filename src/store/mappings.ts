import type { MappingWriter } from './store.js';
import type { Sql } from './tables.js';

/** How each source's columns were understood, within one transaction. */
export const createMappings = (trx: Sql): MappingWriter => ({
  get: async (source) => {
    const row = await trx
      .selectFrom('column_mappings')
      .select('mapping')
      .where('source', '=', source)
      .executeTakeFirst();
    return row && JSON.parse(row.mapping);
  },
  put: async (source, mapping) => {
    const text = JSON.stringify(mapping);
    await trx
      .insertInto('column_mappings')
      .values({ source, mapping: text })
      .onConflict((conflict) => conflict.column('source').doUpdateSet({ mapping: text }))
      .execute();
  },
});
