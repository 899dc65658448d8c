import { sql } from 'kysely';
import { grouped } from '../core/foundation/index.js';
import type { ReadingReader, SetUpReadings } from './store.js';
import type { Sql } from './tables.js';
import { isNotVoided } from './voided-entries.js';

interface TriedRow {
  readonly run_id: string;
  readonly tried: number | string;
  readonly scrapped: number | string;
  readonly last_at: string;
}

/** What was tried, read and counted while runs were set up; runs of which nothing was tried are left out. */
export async function setUpReadings(
  trx: Sql,
  runIds: Parameters<ReadingReader['setUpReadings']>[0],
): Promise<readonly SetUpReadings[]> {
  if (runIds.length === 0) return [];
  const ids = sql.join(runIds);
  const { rows: tried } = await sql<TriedRow>`
    select run_id, count(*) as tried, sum(case when verdict = 'scrap' then 1 else 0 end) as scrapped, max(at) as last_at
    from trial_strings t
    where run_id in (${ids}) and ${isNotVoided(sql.ref('t.id'))}
    group by run_id
    order by run_id`.execute(trx);
  const { rows: read } = await sql<{ readonly run_id: string; readonly last_at: string }>`
    select run_id, max(at) as last_at
    from measurements m
    where run_id in (${ids}) and trial_string_id is not null and ${isNotVoided(sql.ref('m.id'))}
    group by run_id`.execute(trx);
  const counted = await trx
    .selectFrom('tallies')
    .select(['run_id', 'outcome', 'reason', 'count', 'at'])
    .where('run_id', 'in', [...runIds])
    .where('station', '=', 'winder')
    .where(isNotVoided(sql.ref('tallies.id')))
    .orderBy('at')
    .orderBy('id')
    .execute();
  const lastRead = new Map(read.map((row) => [row.run_id, row.last_at]));
  const counts = grouped(counted, ({ run_id }) => run_id ?? '');
  return tried.map((row) => ({
    runId: row.run_id,
    tried: Number(row.tried),
    scrapped: Number(row.scrapped),
    lastTriedAt: row.last_at,
    lastReadAt: lastRead.get(row.run_id) ?? null,
    counted: (counts.get(row.run_id) ?? []).map(({ outcome, reason, count, at }) => ({
      outcome: outcome as 'good' | 'scrap',
      reason,
      count,
      at,
    })),
  }));
}
