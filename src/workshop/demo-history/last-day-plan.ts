import { readStringKey, stringKey } from '../../core/sets/index.js';
import { freezePlan } from '../orders/freeze-plan.js';
import { planRun } from '../production/plan-run.js';
import type { HistoryDay, InHand } from './act.js';
import { kindsToFillUp, type RunToWind, runOn } from './choose-runs.js';
import type { PlannedRun } from './wind-run.js';

/** A run that stands planned, as far as the winders' eyes go. */
export interface RunOfToday extends PlannedRun {
  readonly machine: string;
  readonly stringKey: string;
  readonly quantity: number;
}

/** The day's runs of each machine, in the order in which they are planned. */
export type RunsOfToday = ReadonlyMap<string, readonly RunOfToday[]>;

/** Every machine has at least so many runs to begin on the last day. */
const LEAST_RUNS = 3;
const FILL_UP = { plain: 24, wound: 12 } as const;

/** The owner settles the plan, and has bins filled up where it leaves a machine idle. */
export async function freezeToday(shop: InHand, day: HistoryDay): Promise<RunsOfToday> {
  const { book, date } = day;
  const { runs } = await shop.ask(freezePlan, { id: book.newId(), date });
  book.count.runsToday = runs.length;
  const lanes = new Map<string, RunOfToday[]>(book.shop.machines.map(({ id }) => [id, []]));
  const nameOf = new Map(book.shop.machines.map(({ id }) => [book.ids.machine(id), id]));
  for (const { id, version, body } of runs) {
    const machine = nameOf.get(body.machineId) ?? '';
    const { name, stringKey: key, quantity } = body;
    lanes.get(machine)?.push({ id, version, name, machine, stringKey: key, quantity });
  }
  const planned = new Set(runs.map(({ body }) => body.stringKey));
  for (const [machine, lane] of lanes)
    while (lane.length < LEAST_RUNS) {
      const run = runToFillUp(day, machine, planned);
      if (!run) break;
      planned.add(run.stringKey);
      lane.push(await planByHand(shop, day, run));
    }
  return lanes;
}

function runToFillUp(
  { book }: HistoryDay,
  machine: string,
  planned: ReadonlySet<string>,
): RunToWind | undefined {
  for (const spec of kindsToFillUp(book)) {
    if (planned.has(stringKey(spec))) continue;
    const run = runOn(book, machine, { spec, quantity: FILL_UP[spec.kind], taken: new Set() });
    if (run) return run;
  }
  return undefined;
}

async function planByHand({ ask }: InHand, { book, date }: HistoryDay, run: RunToWind): Promise<RunOfToday> {
  const { machine, recipe, spec, quantity } = run;
  const { id, version, body } = await ask(planRun, {
    id: book.newId(),
    name: `${date} run ${++book.count.runsToday}`,
    recipeId: book.ids.recipe(recipe.id),
    machineId: book.ids.machine(machine),
    spec,
    quantity,
  });
  return { id, version, name: body.name, machine, stringKey: run.stringKey, quantity };
}

/** The run as its winder begins it, with spools that nobody has; nothing where the wire does not suffice. */
export function runToBegin(
  { book }: HistoryDay,
  { machine, stringKey: key, quantity }: RunOfToday,
  taken: ReadonlySet<string>,
): RunToWind | undefined {
  const spec = readStringKey(key);
  return spec && runOn(book, machine, { spec, quantity, taken });
}
