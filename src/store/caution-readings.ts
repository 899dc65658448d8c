import { behind, inOrder, pageOf, rowsToFetch, type Walk } from './cursor.js';
import type { CautionReading, CautionReadingWriter } from './store.js';
import { Taken } from './store-faults.js';
import type { CautionReadingRow, Sql } from './tables.js';

/** Who read which cautions at which machine, within one transaction: added, never changed. */
export const createCautionReadings = (trx: Sql): CautionReadingWriter => ({
  list: async ({ machineId, personId, after, limit, order = 'newest' }) => {
    const walk: Walk = { by: ['at', 'id'], order, after, limit };
    const rows = await trx
      .selectFrom('caution_readings')
      .selectAll()
      .$if(machineId !== undefined, (query) => query.where('machine_id', '=', machineId!))
      .$if(personId !== undefined, (query) => query.where('person_id', '=', personId!))
      .where(behind(walk))
      .orderBy(inOrder(walk))
      .limit(rowsToFetch(walk))
      .execute();
    return pageOf(rows, walk, asReading);
  },
  add: async ({ id, personId, machineId, cautions, edition, at }) => {
    const { numInsertedOrUpdatedRows } = await trx
      .insertInto('caution_readings')
      .values({
        id,
        person_id: personId,
        machine_id: machineId,
        cautions: JSON.stringify(cautions),
        edition,
        at,
      })
      .onConflict((conflict) => conflict.doNothing())
      .executeTakeFirst();
    if (numInsertedOrUpdatedRows !== 1n) throw new Taken('caution-reading', 'id', id);
  },
});

const asReading = (row: CautionReadingRow): CautionReading => ({
  id: row.id,
  personId: row.person_id,
  machineId: row.machine_id,
  cautions: JSON.parse(row.cautions),
  edition: row.edition,
  at: row.at,
});
