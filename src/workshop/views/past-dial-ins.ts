import type { BodyOf, StoredRecord } from '../../contract/index.js';
import {
  looksOf,
  type PastDialIn,
  pastOfRun,
  type RunAtMachine,
  type TriedString,
} from '../../core/winding/index.js';
import type { Measurement, ReadTransaction, TrialString } from '../../store/index.js';
import { seatByMachine } from '../calibration/seat-by-machine.js';
import { asMachine, asRecipe, byName } from '../shop/shop-parts.js';

/** So many runs of the machine are looked at, and so many of all others: more than a dial-in leans on. */
const RUNS_HERE = 16;
const RUNS_ELSEWHERE = 16;
/** More readings no dial-in has. */
const MOST_READINGS = 500;

/** What past runs teach of dialling in on a machine, the oldest first. Runs under way do not count: they are not past. */
export async function pastDialIns(tx: ReadTransaction, machineId: string): Promise<readonly PastDialIn[]> {
  const here = await tx.readings.runsDialledIn({ machineId, isElsewhere: false, limit: RUNS_HERE });
  const others = await tx.readings.runsDialledIn({ machineId, isElsewhere: true, limit: RUNS_ELSEWHERE });
  if (here.length + others.length === 0) return [];
  const atMachine = await runsAtMachines(tx);
  const past: PastDialIn[] = [];
  for (const runId of [...others.toReversed(), ...here.toReversed()]) {
    const run = await tx.records.get('run', runId);
    const work = run?.state === 'closed' ? atMachine(run) : undefined;
    if (!work) continue;
    const trials = await tx.readings.trialStrings(runId);
    const { items } = await tx.readings.measurements({ runId, limit: MOST_READINGS, order: 'oldest' });
    const taught = pastOfRun(work, triedStrings(trials, items));
    if (taught) past.push(taught);
  }
  return past;
}

/** Trial strings with what was measured of each, in the order in which they were tried. */
export const triedStrings = (
  trials: readonly TrialString[],
  readings: readonly Measurement[],
): readonly TriedString[] =>
  trials.map(({ id, position, setting, setBy }) => ({
    position: position - 1,
    ...(setting === undefined ? {} : { setting }),
    ...(setBy === undefined ? {} : { setBy }),
    looksM: looksOf(
      readings.flatMap(({ trialStringId, quantity, value, placeM, rotationDeg }) =>
        trialStringId === id && quantity === 'diameter' && placeM !== null
          ? [{ valueM: value, placeM, rotationDeg: rotationDeg ?? 0 }]
          : [],
      ),
    ),
  }));

/** The way from a run to its machine and recipe as they stand now: by them its strings are reckoned anew. */
async function runsAtMachines(
  tx: ReadTransaction,
): Promise<(run: StoredRecord<BodyOf<'run'>>) => RunAtMachine | undefined> {
  const machines = new Map((await tx.records.all('machine')).map((record) => [record.id, record]));
  const recipes = new Map((await tx.records.all('recipe')).map((record) => [record.id, record]));
  const wires = byName<'wire'>(await tx.records.all('wire'));
  const [settled] = await tx.records.all('settings');
  const { seat: learned } = settled?.body ?? {};
  const seat = learned && seatByMachine(learned, (id) => machines.get(id)?.body.name);
  return ({ body: { machineId, recipeId, quantity } }) => {
    const machineRecord = machines.get(machineId);
    const recipeRecord = recipes.get(recipeId);
    const machine = machineRecord && asMachine(machineRecord);
    const recipe = recipeRecord && asRecipe(recipeRecord, wires);
    if (machine?.kind !== 'winder' || recipe?.construction.kind !== 'wound') return undefined;
    return { machine, recipe, quantity, ...(seat ? { seat } : {}) };
  };
}
