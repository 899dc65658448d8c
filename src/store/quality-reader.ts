import { type SqlBool, sql } from 'kysely';
import { grouped } from '../core/foundation/index.js';
import type { MeasuredRun, QualityReader, ScrapOfRun } from './store.js';
import { asSums } from './string-sums.js';
import type { RunFactsRow, Sql } from './tables.js';
import { isNotVoided } from './voided-entries.js';

/** What is kept beside runs and readings for the quality room, within one transaction. */
export const createQualityReader = (trx: Sql): QualityReader => ({
  runs: async (of) => {
    const isAsked =
      'runId' in of
        ? sql<SqlBool>`run_facts.run_id = ${of.runId}`
        : sql<SqlBool>`run_facts.at >= ${of.since} and run_facts.at < ${of.before}`;
    const facts = await trx
      .selectFrom('run_facts')
      .selectAll()
      .where(isAsked)
      .orderBy('at')
      .orderBy('run_id')
      .execute();
    const sums = await trx
      .selectFrom('string_sums')
      .innerJoin('run_facts', 'run_facts.run_id', 'string_sums.run_id')
      .selectAll('string_sums')
      .where(isAsked)
      .execute();
    const ofRun = grouped(sums, ({ run_id }) => run_id);
    return facts.map((row) => asRun(row, (ofRun.get(row.run_id) ?? []).map(asSums)));
  },
  scrap: async ({ since, before }) => {
    const { rows } = await sql<ScrapRow>`
      select f.run_id, t.station, t.reason, sum(t.count) as count
      from run_facts f join tallies t on t.run_id = f.run_id
      where f.at >= ${since} and f.at < ${before} and t.outcome = 'scrap' and ${isNotVoided(sql.ref('t.id'))}
      group by f.run_id, t.station, t.reason
      union all
      select f.run_id, t.station, t.reason, sum(t.count) as count
      from run_facts f join string_lots l on l.run_id = f.run_id join tallies t on t.lot_id = l.id
      where f.at >= ${since} and f.at < ${before} and t.outcome = 'scrap' and t.run_id is null
        and ${isNotVoided(sql.ref('t.id'))}
      group by f.run_id, t.station, t.reason
      order by 1, 2, 3`.execute(trx);
    return rows.map(
      ({ run_id, station, reason, count }): ScrapOfRun => ({
        runId: run_id,
        station: station as ScrapOfRun['station'],
        reason,
        count: Number(count),
      }),
    );
  },
});

interface ScrapRow {
  readonly run_id: string;
  readonly station: string;
  readonly reason: string;
  readonly count: number | string;
}

const asRun = (row: RunFactsRow, sums: MeasuredRun['sums']): MeasuredRun => ({
  runId: row.run_id,
  machineId: row.machine_id,
  recipeId: row.recipe_id,
  recipeVersion: Number(row.recipe_version),
  lengthM: row.length_m,
  winderId: row.winder_id,
  spoolIds: row.spool_ids === '' ? [] : row.spool_ids.split(' '),
  goodCount: Number(row.good_count),
  scrapCount: Number(row.scrap_count),
  at: row.at,
  sums,
});
