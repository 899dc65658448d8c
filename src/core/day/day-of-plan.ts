import type { Lot, PlanScore } from '../planning/index.js';
import type { StringSpec } from '../sets/index.js';
import type { Day, DayRun, MachineDay } from './day.js';
import { costLookUp, dayCosts } from './day-costs.js';
import { knownKinds, makeLookUp } from './make.js';
import type { RunUnderWay } from './run-under-way.js';
import type { Shop } from './shop.js';
import { wirePulls } from './wire-pulls.js';
import { sheetsOf, withFreeWire } from './work-out-day.js';

export interface DayOfPlanTask {
  readonly shop: Shop;
  /** The day as it would be planned beside what is settled: its orders, its roll, what cannot be made. */
  readonly day: Day;
  /** The runs of the plan in force. */
  readonly runs: readonly DayRun[];
  readonly lots: readonly Lot[];
  /** Lots that are made: no wire is to be carried for them any more. */
  readonly done: ReadonlySet<string>;
  readonly kinds: readonly { readonly spec: StringSpec; readonly recipeId: string }[];
  /** Runs that are no part of the plan and stand before it. */
  readonly underWay: readonly RunUnderWay[];
  readonly score: PlanScore;
}

/** A day whose plan is settled: lanes, sheets, wire and costs are those of the plan, the rest is as it stands now. */
export function dayOfPlan(task: DayOfPlanTask): Day {
  const { day, runs, lots, done, underWay, score } = task;
  const shop = withFreeWire(task.shop, underWay);
  const kinds = knownKinds({ ...shop, strings: [] }, task.kinds);
  const makeOf = makeLookUp(shop, kinds);
  // Of a kind whose recipe is retired since, neither sheet nor wire can be told any more.
  const today = runs.filter(
    ({ setUpFrom, stringKey }) => setUpFrom.date === day.date && kinds.has(stringKey),
  );
  const all = runs.filter(({ stringKey }) => kinds.has(stringKey));
  return {
    ...day,
    lots,
    plan: { runs, score, machines: shop.machines.map((machine) => machineDay(shop, day, machine, runs)) },
    sheets: sheetsOf({ shop, makeOf, underWay, all }, today),
    wirePulls: wirePulls(
      shop,
      today.filter(({ lotId }) => !done.has(lotId)),
      makeOf,
    ),
    costs: dayCosts(shop, today, day.roll, costLookUp(shop, makeOf)),
  };
}

/** How full a machine's day is, told from the clock: a machine's day is one stretch of minutes. */
function machineDay(
  { rules }: Shop,
  { date }: Day,
  { id: machineId, name, minutesPerDay }: Shop['machines'][number],
  runs: readonly DayRun[],
): MachineDay {
  const opens = rules.dayStartsAtMinute;
  const closes = opens + minutesPerDay;
  const onTheDay = (time: DayRun['to']): number => {
    if (time.date < date) return opens;
    return time.date > date ? closes : time.minute;
  };
  const own = runs.filter((run) => run.machineId === machineId);
  return {
    machineId,
    name,
    stringsToday: own.reduce((sum, run) => {
      const share = (onTheDay(run.to) - onTheDay(run.runFrom)) / minutesOf(run, opens, closes);
      return sum + Math.floor(run.quantity * Math.min(1, share) + 1e-9);
    }, 0),
    busyShareToday:
      own.reduce((sum, run) => sum + onTheDay(run.to) - onTheDay(run.setUpFrom), 0) / minutesPerDay,
  };
}

/** Working minutes that a run winds; of one over night those of its first and last day. */
function minutesOf({ runFrom, to }: DayRun, opens: number, closes: number): number {
  const minutes =
    to.date === runFrom.date ? to.minute - runFrom.minute : closes - runFrom.minute + (to.minute - opens);
  return Math.max(minutes, 1e-9);
}
