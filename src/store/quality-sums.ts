import { keepRunFacts, runFacts } from './run-facts.js';
import type { IntegrityFault } from './store.js';
import { keepStringSums, keyOf, worked } from './string-sums.js';
import type { Sql } from './tables.js';

/** Runs taken at once where all of them are gone through. */
const RUNS_AT_ONCE = 200;

/** Works everything out anew that is kept beside runs and readings for the quality room. */
export async function workOutSums(trx: Sql): Promise<void> {
  for await (const runIds of allRuns(trx)) {
    await keepRunFacts(trx, runIds);
    await keepStringSums(trx, runIds);
  }
}

/** As many as are told: one is already too many. */
const MOST_TOLD = 20;

/** Where what is kept is not what runs and readings say, worked out anew from every one of them. */
export async function sumFaults(trx: Sql): Promise<readonly IntegrityFault[]> {
  const faults: string[] = [];
  for await (const runIds of allRuns(trx)) {
    const facts = await trx.selectFrom('run_facts').selectAll().where('run_id', 'in', runIds).execute();
    const sums = await trx.selectFrom('string_sums').selectAll().where('run_id', 'in', runIds).execute();
    faults.push(
      ...apart(facts, await runFacts(trx, runIds), ({ run_id }) => run_id),
      ...apart(sums, await worked(trx, runIds), keyOf),
    );
    if (faults.length >= MOST_TOLD) break;
  }
  return [...new Set(faults)]
    .slice(0, MOST_TOLD)
    .map((runId) => ({ check: 'sums', detail: `what is kept of run ${runId} is not what its readings say` }));
}

/** Runs of which one has a row that the other has not, or has otherwise. */
function apart<Row extends { readonly run_id: string }>(
  kept: readonly Row[],
  worked: readonly Row[],
  nameOf: (row: Row) => string,
): readonly string[] {
  const told = (rows: readonly Row[]) => new Map(rows.map((row) => [nameOf(row), asText(row)]));
  const [ofKept, ofWorked] = [told(kept), told(worked)];
  return [...kept, ...worked]
    .filter((row) => ofKept.get(nameOf(row)) !== ofWorked.get(nameOf(row)))
    .map(({ run_id }) => run_id);
}

const asText = (row: object): string =>
  Object.entries(row)
    .sort(([one], [other]) => (one < other ? -1 : 1))
    .map(([name, value]) => `${name}=${String(value)}`)
    .join();

async function* allRuns(trx: Sql): AsyncGenerator<readonly string[]> {
  let after = '';
  while (true) {
    const rows = await trx
      .selectFrom('runs' as 'any_records')
      .select('id')
      .where('id', '>', after)
      .orderBy('id')
      .limit(RUNS_AT_ONCE)
      .execute();
    if (rows.length === 0) return;
    yield rows.map(({ id }) => id);
    after = rows.at(-1)!.id;
  }
}
