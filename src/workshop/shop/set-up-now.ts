import type { BodyOf, StoredRecord } from '../../contract/index.js';
import type { SetUpNow } from '../../core/day/index.js';
import type { ReadTransaction } from '../../store/index.js';
import type { NameIndex } from './shop-parts.js';

type Run = StoredRecord<BodyOf<'run'>>;

/** Runs looked at in one go; many plans made anew may leave more that nobody began. */
const AT_ONCE = 50;

/** What each machine is set up for: the run that was begun on it last, whether it still goes or not. */
export async function setUpNow(
  tx: ReadTransaction,
  { machine, recipe }: { readonly machine: NameIndex<'machine'>; readonly recipe: NameIndex<'recipe'> },
): Promise<readonly SetUpNow[]> {
  const setUps: SetUpNow[] = [];
  for (const [machineId, { id }] of machine.byName) {
    const last = await lastBegun(tx, id);
    const recipeId = last && recipe.nameOf(last.body.recipeId);
    if (last && recipeId !== undefined) setUps.push({ machineId, recipeId, lengthM: last.body.spec.lengthM });
  }
  return setUps;
}

/** Of the newest runs that hold a begun one, that begun last. */
async function lastBegun(tx: ReadTransaction, machineId: string): Promise<Run | undefined> {
  let after: string | undefined;
  do {
    const from = after === undefined ? {} : { after };
    const page = await tx.records.list('run', { where: { machineId }, limit: AT_ONCE, ...from });
    const last = page.items.reduce(laterBegun, undefined);
    if (last) return last;
    after = page.next;
  } while (after !== undefined);
  return undefined;
}

function laterBegun(last: Run | undefined, run: Run): Run | undefined {
  if (run.body.startedAt === undefined) return last;
  return last?.body.startedAt !== undefined && last.body.startedAt > run.body.startedAt ? last : run;
}
