import { NEW_STRINGS_BIN, type RunUnderWay } from '../../core/day/index.js';
import { kgFromMg } from '../../core/stock/index.js';
import type { ReadTransaction } from '../../store/index.js';
import { recipeOfRun } from '../production/recipe-of-run.js';
import { takenOffBefore } from '../production/spools-at-end.js';
import { needRecord } from '../record-change.js';
import type { ShopBook } from '../shop/shop-book.js';
import { asRecipe } from '../shop/shop-parts.js';
import type { RunRecord } from '../stock/live-runs.js';

const STATES = ['running', 'paused', 'planned'] as const;

/** Runs that are planned or begun and not ended, as the core works with them; names stand for ids. */
export async function runsUnderWay(tx: ReadTransaction, book: ShopBook): Promise<readonly RunUnderWay[]> {
  const runs: RunUnderWay[] = [];
  for (const state of STATES)
    for (const record of await tx.records.all('run', { state })) {
      const run = await runUnderWay(tx, book, { record, state });
      if (run) runs.push(run);
    }
  return runs;
}

interface StandingRun {
  readonly record: RunRecord;
  readonly state: RunUnderWay['state'];
}

async function runUnderWay(
  tx: ReadTransaction,
  { records }: ShopBook,
  { record, state }: StandingRun,
): Promise<RunUnderWay | undefined> {
  const { id, body } = record;
  const machineId = records.machine.nameOf(body.machineId);
  // A run is started by its recipe as it stands then; once begun it keeps to that.
  const made =
    state === 'planned' ? await needRecord(tx, 'recipe', body.recipeId) : await recipeOfRun(tx, record);
  const recipe = asRecipe(made, records.wire);
  if (machineId === undefined || !recipe) return undefined;
  const { name, spec, quantity } = body;
  return {
    id,
    name,
    state,
    machineId,
    recipe,
    spec,
    quantity,
    made: state === 'planned' ? 0 : await madeSoFar(tx, id),
    spoolIds: await spoolNames(tx, body.spoolIds),
    takenKg: await takenKg(tx, record, records.wire.byName),
    ...binOf(body.stringKey, records.bin.byName),
  };
}

/** Good strings that the winder has counted. */
async function madeSoFar({ readings }: ReadTransaction, runId: string): Promise<number> {
  let good = 0;
  let after: string | undefined;
  do {
    const page = await readings.tallies({ runId, limit: 500, ...(after === undefined ? {} : { after }) });
    for (const { station, outcome, count } of page.items)
      if (station === 'winder' && outcome === 'good') good += count;
    after = page.next;
  } while (after !== undefined);
  return good;
}

async function spoolNames({ records }: ReadTransaction, ids: readonly string[]): Promise<readonly string[]> {
  const names: string[] = [];
  for (const id of ids) names.push((await needRecord({ records }, 'spool', id)).body.name);
  return names;
}

async function takenKg(
  tx: ReadTransaction,
  run: RunRecord,
  wires: ShopBook['records']['wire']['byName'],
): Promise<Readonly<Record<string, number>>> {
  const takenMg = await takenOffBefore(tx, run);
  return Object.fromEntries([...wires].map(([name, { id }]) => [name, kgFromMg(takenMg(id))]));
}

/** Its strings count towards the level of the bin that is kept filled with their kind. */
function binOf(
  stringKey: string,
  bins: ShopBook['records']['bin']['byName'],
): Pick<RunUnderWay, 'binId' | 'reorderLevel'> {
  for (const [binId, { body }] of bins)
    if (body.stringKey === stringKey) return { binId, reorderLevel: body.reorderLevel };
  return { binId: NEW_STRINGS_BIN, reorderLevel: 0 };
}
