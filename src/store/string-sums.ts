import { sql } from 'kysely';
import { grouped } from '../core/foundation/index.js';
import { type ReadingOfString, type StringSums, stringSums } from '../core/quality/index.js';
import type { Sql, StringSumsRow } from './tables.js';
import { isNotVoided } from './voided-entries.js';

/** Keeps what was measured of these runs, taken together, beside their readings. */
export async function keepStringSums(trx: Sql, runIds: readonly string[]): Promise<void> {
  if (runIds.length === 0) return;
  await trx.deleteFrom('string_sums').where('run_id', 'in', runIds).execute();
  for (const some of parts(await worked(trx, runIds)))
    await trx.insertInto('string_sums').values(some).execute();
}

/** The same worked out from every reading that nobody took back; run by run, in the order of the primary key. */
export async function worked(trx: Sql, runIds: readonly string[]): Promise<StringSumsRow[]> {
  const readings = await trx
    .selectFrom('measurements')
    .select([
      'run_id',
      'trial_string_id as trialStringId',
      'quantity',
      'value',
      'place_m as placeM',
      'rotation_deg as rotationDeg',
      'instrument',
      'at',
    ])
    .where('run_id', 'in', runIds)
    .where(isNotVoided(sql.ref('measurements.id')))
    .where(isNotVoided(sql.ref('measurements.trial_string_id')))
    .orderBy('run_id')
    .orderBy('at')
    .orderBy('id')
    .execute();
  const trials = await trx
    .selectFrom('trial_strings')
    .select(['id', 'number'])
    .where('run_id', 'in', runIds)
    .where(isNotVoided(sql.ref('trial_strings.id')))
    .execute();
  const numbers = new Map(trials.map(({ id, number }) => [id, Number(number)]));
  const rows = [...grouped(readings, ({ run_id }) => run_id)].flatMap(([runId, own]) =>
    stringSums(own as readonly ReadingOfString[], numbers).map((sums) => rowOf(runId, sums)),
  );
  return rows.sort((a, b) => (keyOf(a) < keyOf(b) ? -1 : 1));
}

export const keyOf = (row: StringSumsRow): string =>
  [row.run_id, row.instrument, row.is_first, row.is_largest].join('\u0000');

const rowOf = (runId: string, sums: StringSums): StringSumsRow => ({
  run_id: runId,
  instrument: sums.instrument,
  is_first: Number(sums.isFirst),
  is_largest: Number(sums.isLargest),
  strings: sums.strings,
  mean_m: sums.meanM,
  squares_m2: sums.squaresM2,
  along_squares_m2: sums.alongSquaresM2,
  along_degrees: sums.alongDegrees,
  weighed: sums.weighed,
  mean_kg: sums.meanKg,
  squares_kg2: sums.squaresKg2,
  readings: sums.readings,
  first_at: sums.firstAt,
  last_at: sums.lastAt,
});

export const asSums = (row: StringSumsRow): StringSums => ({
  instrument: row.instrument,
  isFirst: Number(row.is_first) === 1,
  isLargest: Number(row.is_largest) === 1,
  strings: Number(row.strings),
  meanM: row.mean_m,
  squaresM2: row.squares_m2,
  alongSquaresM2: row.along_squares_m2,
  alongDegrees: Number(row.along_degrees),
  weighed: Number(row.weighed),
  meanKg: row.mean_kg,
  squaresKg2: row.squares_kg2,
  readings: Number(row.readings),
  firstAt: row.first_at,
  lastAt: row.last_at,
});

/** Both engines bound the values of one statement. */
const ROWS_AT_ONCE = 500;

function* parts<Item>(items: readonly Item[]): Generator<readonly Item[]> {
  for (let from = 0; from < items.length; from += ROWS_AT_ONCE) yield items.slice(from, from + ROWS_AT_ONCE);
}
