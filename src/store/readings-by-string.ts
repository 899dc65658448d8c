import { sql } from 'kysely';
import type { ReadingReader, StringReadings } from './store.js';
import type { Sql } from './tables.js';
import { isAmongStanding } from './voided-entries.js';

interface Row {
  readonly run_id: string;
  readonly trial_string_id: string | null;
  readonly trial_number: number | string | null;
  readonly quantity: string;
  readonly rotations: number | string;
  readonly readings: number | string;
  readonly mean: number;
  readonly first_at: string;
  readonly instrument: string;
}

/** Taken together in the database: of a year some tens of thousands of readings, of which each string has half a dozen. */
export async function readingsByString(
  trx: Sql,
  { since = '' }: Parameters<ReadingReader['readingsByString']>[0],
): Promise<readonly StringReadings[]> {
  const { rows } = await sql<Row>`
    select g.run_id, g.trial_string_id, t.number as trial_number, g.quantity, g.rotations, g.readings, g.mean,
      g.first_at, g.instrument
    from (
      select run_id, trial_string_id, quantity, min(at) as first_at, min(instrument) as instrument, count(*) as readings,
        count(distinct rotation_deg) as rotations, avg(value) as mean
      from measurements
      where at >= ${since} and ${isAmongStanding(sql.ref('id'))} and ${isAmongStanding(sql.ref('trial_string_id'))}
      group by run_id, trial_string_id, case when trial_string_id is null then at else '' end, quantity,
        case when rotation_deg is null then 0 else 1 end
    ) g
    left join trial_strings t on t.id = g.trial_string_id
    order by g.first_at, g.run_id, coalesce(g.trial_string_id, ''), g.quantity, g.rotations`.execute(trx);
  return rows.map((row) => ({
    runId: row.run_id,
    trialStringId: row.trial_string_id,
    trialNumber: row.trial_number === null ? null : Number(row.trial_number),
    quantity: row.quantity as StringReadings['quantity'],
    rotations: Number(row.rotations),
    readings: Number(row.readings),
    mean: row.mean,
    at: row.first_at,
    instrument: row.instrument,
  }));
}
