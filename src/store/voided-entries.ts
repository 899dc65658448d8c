import { type RawBuilder, type SqlBool, sql } from 'kysely';
import type { ReadingWriter, VoidedEntry } from './store.js';
import { Taken } from './store-faults.js';
import type { Sql, VoidedEntryRow } from './tables.js';

type VoidedEntries = Pick<ReadingWriter, 'voidedEntries' | 'voidOf' | 'voidEntry'>;

/** Entries that were taken back, within one transaction: added, never changed. */
export const createVoidedEntries = (trx: Sql): VoidedEntries => ({
  voidedEntries: async ({ runId, lotId }) => {
    const rows = await trx
      .selectFrom('voided_entries')
      .selectAll()
      .$if(runId !== undefined, (query) => query.where('run_id', '=', runId!))
      .$if(lotId !== undefined, (query) => query.where('lot_id', '=', lotId!))
      .orderBy('at')
      .orderBy('id')
      .execute();
    return rows.map(asVoided);
  },
  voidOf: async (entryId) => {
    const row = await trx
      .selectFrom('voided_entries')
      .selectAll()
      .where('entry_id', '=', entryId)
      .executeTakeFirst();
    return row && asVoided(row);
  },
  voidEntry: async ({ id, ofKind, entryId, runId, lotId, reason, at, by }) => {
    const { numInsertedOrUpdatedRows } = await trx
      .insertInto('voided_entries')
      .values({ id, of_kind: ofKind, entry_id: entryId, run_id: runId, lot_id: lotId, reason, at, by })
      .onConflict((conflict) => conflict.doNothing())
      .executeTakeFirst();
    if (numInsertedOrUpdatedRows !== 1n) throw new Taken('voided-entry', 'id', id);
  },
});

/** Of few rows: whether nobody took the entry with this id back. */
export const isNotVoided = (id: RawBuilder<unknown>): RawBuilder<SqlBool> =>
  sql<SqlBool>`not exists (select 1 from voided_entries v where v.entry_id = ${id})`;

/** Of very many rows: the same, the ids of what was taken back being looked up once for all of them. */
export const isAmongStanding = (id: RawBuilder<unknown>): RawBuilder<SqlBool> =>
  sql<SqlBool>`(${id} is null or ${id} not in (select entry_id from voided_entries))`;

const asVoided = (row: VoidedEntryRow): VoidedEntry => ({
  id: row.id,
  ofKind: row.of_kind as VoidedEntry['ofKind'],
  entryId: row.entry_id,
  runId: row.run_id,
  lotId: row.lot_id,
  reason: row.reason,
  at: row.at,
  by: row.by,
});
