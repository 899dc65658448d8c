import { endLooksLike, endPulled, PULL_GAUGE } from '../../../demo/index.js';
import type { InputOf } from '../../contract/index.js';
import { coreEndSheet } from '../../core/winding/index.js';
import { recordEndChecks } from '../production/record-end-checks.js';
import type { HistoryDay, InHand } from './act.js';
import type { RunToWind } from './choose-runs.js';

type Rows = InputOf<(typeof recordEndChecks)['definition']>['rows'];

const BENCH = 'bench';
/** Every so many pulls one goes on until something gives way, so that it is known where. Invented. */
const BROKEN_IN = 6;

/** What is found of the first ends of a run, and of how many they are pulled; of a plain run its strings, else its cores. */
export async function checkEnds(
  { ask }: InHand,
  { book }: HistoryDay,
  { run, runId }: { readonly run: RunToWind; readonly runId: string },
): Promise<void> {
  const bench = book.shop.machines.find(({ id }) => id === BENCH);
  if (bench?.kind !== 'bench') return;
  const { recipe, spec, quantity } = run;
  const made = coreEndSheet({ bench, recipe, spec, quantity });
  if (!made.ok) return;
  const spoolId = run.spools.find(({ wire }) => wire === recipe.coreWireId)?.first.id;
  const of = {
    runId,
    machineId: book.ids.machine(BENCH),
    gauge: PULL_GAUGE,
    ...(spoolId === undefined ? {} : { spoolId }),
  };
  const { chance } = book.ends;
  const pieces = spec.kind === 'plain' ? made.value.toPull.pieces : 1;
  const rows: Rows = Array.from({ length: pieces }, () => ({
    id: book.newId(),
    ...of,
    ...endLooksLike(made.value, chance),
    ...endPulled(made.value, ++book.ends.pulled % BROKEN_IN === 0, chance),
  }));
  await ask(recordEndChecks, { rows });
}
