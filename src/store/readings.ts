import { sql } from 'kysely';
import { invariant } from '../core/foundation/index.js';
import { behind, inOrder, pageOf, rowsToFetch, type Walk } from './cursor.js';
import { addEndChecks, endChecks } from './end-checks.js';
import { readingsByString } from './readings-by-string.js';
import { runsDialledIn } from './runs-dialled-in.js';
import { setUpReadings } from './set-up-readings.js';
import type { Measurement, ReadingQuery, ReadingWriter, Tally, TrialString } from './store.js';
import { Taken } from './store-faults.js';
import { keepStringSums } from './string-sums.js';
import type { MeasurementRow, Sql, TallyRow, TrialStringRow } from './tables.js';
import { createVoidedEntries, isNotVoided } from './voided-entries.js';

/** Readings of the floor within one transaction: added, never changed, but for the verdict on a trial string. */
export function createReadings(trx: Sql): ReadingWriter {
  const voids = createVoidedEntries(trx);
  return {
    ...voids,
    trialStrings: async (runId) => {
      const rows = await trx
        .selectFrom('trial_strings')
        .selectAll()
        .where('run_id', '=', runId)
        .where(isNotVoided(sql.ref('trial_strings.id')))
        .orderBy('number')
        .execute();
      return rows.map(asTrialString);
    },
    runsDialledIn: (query) => runsDialledIn(trx, query),
    measurements: async (query) => {
      const walk = walkOf(query);
      const rows = await trx
        .selectFrom('measurements')
        .selectAll()
        .$if(query.runId !== undefined, (rows) => rows.where('run_id', '=', query.runId!))
        .where(isNotVoided(sql.ref('measurements.id')))
        .where(isNotVoided(sql.ref('measurements.trial_string_id')))
        .where(behind(walk))
        .orderBy(inOrder(walk))
        .limit(rowsToFetch(walk))
        .execute();
      return pageOf(rows, walk, asMeasurement);
    },
    tallies: async (query) => {
      const walk = walkOf(query);
      const rows = await trx
        .selectFrom('tallies')
        .selectAll()
        .$if(query.runId !== undefined, (rows) => rows.where('run_id', '=', query.runId!))
        .$if(query.lotId !== undefined, (rows) => rows.where('lot_id', '=', query.lotId!))
        .where(isNotVoided(sql.ref('tallies.id')))
        .where(behind(walk))
        .orderBy(inOrder(walk))
        .limit(rowsToFetch(walk))
        .execute();
      return pageOf(rows, walk, asTally);
    },
    setUpReadings: (runIds) => setUpReadings(trx, runIds),
    endChecks: (query) => endChecks(trx, walkOf(query), query),
    readingsByString: (query) => readingsByString(trx, query),
    tally: async (id) => {
      const row = await trx.selectFrom('tallies').selectAll().where('id', '=', id).executeTakeFirst();
      return row && asTally(row);
    },
    measurement: async (id) => {
      const row = await trx.selectFrom('measurements').selectAll().where('id', '=', id).executeTakeFirst();
      return row && asMeasurement(row);
    },
    trialString: async (id) => {
      const row = await trx.selectFrom('trial_strings').selectAll().where('id', '=', id).executeTakeFirst();
      return row && asTrialString(row);
    },
    addTrialString: (row) => addTrialString(trx, row),
    setVerdict: async (id, verdict) => {
      const { numUpdatedRows } = await trx
        .updateTable('trial_strings')
        .set({ verdict })
        .where('id', '=', id)
        .executeTakeFirst();
      invariant(numUpdatedRows === 1n, `no trial string ${id}`);
    },
    addMeasurements: async (rows) => {
      await addMeasurements(trx, rows);
      await keepStringSums(trx, [...new Set(rows.map(({ runId }) => runId))]);
    },
    voidEntry: async (row) => {
      await voids.voidEntry(row);
      if (row.runId !== null && row.ofKind !== 'tally') await keepStringSums(trx, [row.runId]);
    },
    addTally: (row) => addTally(trx, row),
    addEndChecks: (rows) => addEndChecks(trx, rows),
  };
}

const walkOf = ({ after, limit, order = 'oldest' }: ReadingQuery): Walk => ({
  by: ['at', 'id'],
  order,
  after,
  limit,
});

async function addTrialString(trx: Sql, row: TrialString): Promise<void> {
  const { id, runId, number, position, verdict, setting = null, setBy = null, seen = null, at, by } = row;
  invariant(setting === null || Number.isFinite(setting), `trial string ${id} was set to ${setting}`);
  const { numInsertedOrUpdatedRows } = await trx
    .insertInto('trial_strings')
    .values({ id, run_id: runId, number, position, verdict, setting, set_by: setBy, seen, at, by })
    .onConflict((conflict) => conflict.doNothing())
    .executeTakeFirst();
  if (numInsertedOrUpdatedRows === 1n) return;
  const same = await trx.selectFrom('trial_strings').select('id').where('id', '=', id).executeTakeFirst();
  throw same ? new Taken('trial-string', 'id', id) : new Taken('trial-string', 'number', String(number));
}

/** All in one statement; an id that is there already refuses all of them. */
async function addMeasurements(trx: Sql, rows: readonly Measurement[]): Promise<void> {
  if (rows.length === 0) return;
  for (const row of rows) refuseMissing(row);
  const { numInsertedOrUpdatedRows } = await trx
    .insertInto('measurements')
    .values(rows.map(measurementRow))
    .onConflict((conflict) => conflict.doNothing())
    .executeTakeFirst();
  if (numInsertedOrUpdatedRows === BigInt(rows.length)) return;
  throw new Taken('measurement', 'id', rows.map(({ id }) => id).join(', '));
}

async function addTally(trx: Sql, row: Tally): Promise<void> {
  invariant(Number.isSafeInteger(row.count) && row.count >= 1, `a tally of ${row.count}`);
  const { id, runId, lotId, station, outcome, reason, count, at, by } = row;
  const { numInsertedOrUpdatedRows } = await trx
    .insertInto('tallies')
    .values({ id, run_id: runId, lot_id: lotId, station, outcome, reason, count, at, by })
    .onConflict((conflict) => conflict.doNothing())
    .executeTakeFirst();
  if (numInsertedOrUpdatedRows !== 1n) throw new Taken('tally', 'id', id);
}

/** A reading that was not taken must stay missing: as 0, or as what a column makes of no number, it would be believed. */
function refuseMissing({ id, value, placeM, rotationDeg }: Measurement): void {
  const isNumber = (read: unknown): read is number => typeof read === 'number' && Number.isFinite(read);
  invariant(isNumber(value) && value > 0, `measurement ${id} has no value, but ${value}`);
  for (const [field, place] of Object.entries({ placeM, rotationDeg }))
    invariant(
      place === null || isNumber(place),
      `measurement ${id} has for ${field} no number, but ${place}`,
    );
}

const measurementRow = (row: Measurement): MeasurementRow => ({
  id: row.id,
  run_id: row.runId,
  trial_string_id: row.trialStringId,
  quantity: row.quantity,
  value: row.value,
  place_m: row.placeM,
  rotation_deg: row.rotationDeg,
  instrument: row.instrument,
  at: row.at,
  by: row.by,
});

const asMeasurement = (row: MeasurementRow): Measurement => ({
  id: row.id,
  runId: row.run_id,
  trialStringId: row.trial_string_id,
  quantity: row.quantity as Measurement['quantity'],
  value: row.value,
  placeM: row.place_m,
  rotationDeg: row.rotation_deg,
  instrument: row.instrument,
  at: row.at,
  by: row.by,
});

const asTrialString = (row: TrialStringRow): TrialString => ({
  id: row.id,
  runId: row.run_id,
  number: row.number,
  position: row.position,
  verdict: row.verdict as TrialString['verdict'],
  ...(row.setting === null ? {} : { setting: row.setting }),
  ...(row.set_by === null ? {} : { setBy: row.set_by as NonNullable<TrialString['setBy']> }),
  ...(row.seen === null ? {} : { seen: row.seen as NonNullable<TrialString['seen']> }),
  at: row.at,
  by: row.by,
});

const asTally = (row: TallyRow): Tally => ({
  id: row.id,
  runId: row.run_id,
  lotId: row.lot_id,
  station: row.station as Tally['station'],
  outcome: row.outcome as Tally['outcome'],
  reason: row.reason,
  count: row.count,
  at: row.at,
  by: row.by,
});
