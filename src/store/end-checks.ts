import { invariant } from '../core/foundation/index.js';
import { behind, inOrder, pageOf, rowsToFetch, type Walk } from './cursor.js';
import type { EndCheckRecord, Page, ReadingReader } from './store.js';
import { Taken } from './store-faults.js';
import type { EndCheckRow, Sql } from './tables.js';

export async function endChecks(
  trx: Sql,
  walk: Walk,
  { runId, wireId, spoolId, machineId }: Parameters<ReadingReader['endChecks']>[0],
): Promise<Page<EndCheckRecord>> {
  const rows = await trx
    .selectFrom('end_checks')
    .selectAll()
    .$if(runId !== undefined, (rows) => rows.where('run_id', '=', runId!))
    .$if(wireId !== undefined, (rows) => rows.where('wire_id', '=', wireId!))
    .$if(spoolId !== undefined, (rows) => rows.where('spool_id', '=', spoolId!))
    .$if(machineId !== undefined, (rows) => rows.where('machine_id', '=', machineId!))
    .where(behind(walk))
    .orderBy(inOrder(walk))
    .limit(rowsToFetch(walk))
    .execute();
  return pageOf(rows, walk, asEndCheck);
}

/** All in one statement; an id that is there already refuses all of them. */
export async function addEndChecks(trx: Sql, rows: readonly EndCheckRecord[]): Promise<void> {
  if (rows.length === 0) return;
  for (const row of rows) refuseNoNumber(row);
  const { numInsertedOrUpdatedRows } = await trx
    .insertInto('end_checks')
    .values(rows.map(rowOf))
    .onConflict((conflict) => conflict.doNothing())
    .executeTakeFirst();
  if (numInsertedOrUpdatedRows === BigInt(rows.length)) return;
  throw new Taken('end-check', 'id', rows.map(({ id }) => id).join(', '));
}

/** What a column makes of no number would be believed. */
function refuseNoNumber({ id, lengthM, twists, tailM, pull }: EndCheckRecord): void {
  for (const [field, read] of Object.entries({ lengthM, twists, tailM, forceN: pull?.forceN }))
    invariant(
      read === undefined || (typeof read === 'number' && Number.isFinite(read)),
      `end check ${id} has for ${field} no number, but ${read}`,
    );
}

const rowOf = (row: EndCheckRecord): EndCheckRow => ({
  id: row.id,
  run_id: row.runId,
  machine_id: row.machineId,
  wire_id: row.wireId,
  spool_id: row.spoolId,
  string_end: row.end,
  length_m: row.lengthM ?? null,
  twists: row.twists ?? null,
  tail_m: row.tailM ?? null,
  seat: row.seat ?? null,
  force_n: row.pull?.forceN ?? null,
  came: row.pull?.came ?? null,
  least_breaking_n: row.leastBreakingN,
  strength_from: row.strengthFrom,
  gauge: row.gauge,
  instead_of: row.insteadOf,
  at: row.at,
  by: row.by,
});

const asEndCheck = (row: EndCheckRow): EndCheckRecord => ({
  id: row.id,
  runId: row.run_id,
  machineId: row.machine_id,
  wireId: row.wire_id,
  spoolId: row.spool_id,
  end: row.string_end as EndCheckRecord['end'],
  ...(row.length_m === null ? {} : { lengthM: row.length_m }),
  ...(row.twists === null ? {} : { twists: row.twists }),
  ...(row.tail_m === null ? {} : { tailM: row.tail_m }),
  ...(row.seat === null ? {} : { seat: row.seat as NonNullable<EndCheckRecord['seat']> }),
  ...pullOf(row),
  leastBreakingN: row.least_breaking_n,
  strengthFrom: row.strength_from as EndCheckRecord['strengthFrom'],
  gauge: row.gauge,
  insteadOf: row.instead_of,
  at: row.at,
  by: row.by,
});

function pullOf({ force_n: forceN, came }: EndCheckRow): Pick<EndCheckRecord, 'pull'> {
  if (forceN === null || came === null) return {};
  return { pull: { forceN, came: came as NonNullable<EndCheckRecord['pull']>['came'] } };
}
