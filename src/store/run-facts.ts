import type { BodyOf } from '../contract/index.js';
import type { RunFactsRow, Sql } from './tables.js';

/** Keeps what the quality room asks of these runs beside them; of a run that was not begun there is nothing. */
export async function keepRunFacts(trx: Sql, runIds: readonly string[]): Promise<void> {
  if (runIds.length === 0) return;
  await trx.deleteFrom('run_facts').where('run_id', 'in', runIds).execute();
  const rows = await runFacts(trx, runIds);
  if (rows.length > 0) await trx.insertInto('run_facts').values(rows).execute();
}

/** The same worked out from the runs and their lots, in the order of their ids. */
export async function runFacts(trx: Sql, runIds: readonly string[]): Promise<RunFactsRow[]> {
  const runs = await trx
    .selectFrom('runs' as 'any_records')
    .select(['id', 'created_at', 'body'])
    .where('id', 'in', runIds)
    .orderBy('id')
    .execute();
  const lots = await trx
    .selectFrom('string_lots' as 'any_records')
    .select(['id', 'body'])
    .where('run_id' as 'id', 'in', runIds)
    .orderBy('id')
    .execute();
  const ofLot = new Map(lots.map(({ id, body }) => [id, JSON.parse(body) as BodyOf<'string-lot'>]));
  return runs.flatMap(({ id, body }) => {
    const run = JSON.parse(body) as BodyOf<'run'>;
    return run.startedAt === undefined ? [] : [rowOf(id, run, run.startedAt, ofLot.get(run.lotId ?? ''))];
  });
}

const rowOf = (
  id: string,
  run: BodyOf<'run'>,
  at: string,
  lot: BodyOf<'string-lot'> | undefined,
): RunFactsRow => ({
  run_id: id,
  machine_id: run.machineId,
  recipe_id: run.recipeId,
  recipe_version: run.recipeVersion,
  length_m: run.spec.lengthM,
  winder_id: run.winderId ?? null,
  spool_ids: [
    ...new Set([
      ...run.spoolIds,
      ...(run.takenOff ?? []).map(({ spoolId }) => spoolId),
      ...(lot?.spoolIds ?? []),
    ]),
  ]
    .sort()
    .join(' '),
  good_count: run.goodCount,
  scrap_count: run.scrapCount,
  at,
});
