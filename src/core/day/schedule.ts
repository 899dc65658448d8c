import { changeOverCosts, stringCosts, unsettledTotal } from '../costing/index.js';
import type { CalendarDate } from '../foundation/index.js';
import {
  busyMinutesWithin,
  type Lateness,
  type Lot,
  type Plan,
  type PlanEffort,
  type PlanMachine,
  type Planner,
  type PlanProblem,
  type PlanWindow,
  stringsMadeWithin,
  type WorkingTime,
  whyLate,
  workingTime,
} from '../planning/index.js';
import { changeOver, type Machine, runMinutes, traitsOf } from '../winding/index.js';
import type { DayPlan, DayRun } from './day.js';
import type { MakeOf } from './make.js';
import type { Shop } from './shop.js';

/** The plan on the clock, and why lots are late. */
export interface Schedule {
  readonly plan: DayPlan;
  readonly lateBecause: ReadonlyMap<string, Lateness>;
  readonly time: WorkingTime;
}

export interface ScheduleTask {
  readonly shop: Shop;
  readonly lots: readonly Lot[];
  readonly date: CalendarDate;
  readonly makeOf: MakeOf;
  readonly planner: Planner;
  readonly effort: PlanEffort;
}

/** Puts lots on machines in working time, and the result on the shop's clock. */
export function schedule(task: ScheduleTask): Schedule {
  const { shop, lots, date } = task;
  // A shop without machines has a day all the same, with nothing planned in it.
  const dayMinutes = Math.max(1, ...shop.machines.map(({ minutesPerDay }) => minutesPerDay));
  const time = workingTime({ ...shop.rules, start: date, dayMinutes });
  const today = dayWindow(time, date, dayMinutes);
  const problem = problemOf(task, time);
  const plan = task.planner(problem, task.effort);
  return {
    plan: {
      runs: plan.runs.map((run) => onTheClock(run, lots, time)),
      score: plan.score,
      machines: shop.machines.map((machine) => machineDay({ machine, plan, problem, lots, today })),
    },
    lateBecause: whyLate(problem, plan),
    time,
  };
}

/** The day on the plan's axis; empty where the shop does not work on it. */
const dayWindow = (time: WorkingTime, date: CalendarDate, dayMinutes: number): PlanWindow => ({
  fromMinute: 0,
  toMinute: time.clockOf(0, 'start').date === date ? dayMinutes : 0,
});

function problemOf({ shop, lots, makeOf }: ScheduleTask, time: WorkingTime): PlanProblem {
  const jobs = lots.map((lot) => {
    const { recipe, spec, able } = makeOf(lot.stringKey);
    return {
      id: lot.id,
      traits: traitsOf(recipe, spec.lengthM),
      eligible: able.map(({ machine, work }) => ({
        machineId: machine.id,
        processMinutes: runMinutes(work, lot.quantity * (1 + shop.rates.runScrapShare)),
      })),
      releaseMinute: 0,
      weight: Math.max(1, lot.orderLines.length),
      ...(lot.orderLines.length > 0 ? { dueMinute: time.dueMinute(lot.due) } : {}),
    };
  });
  const workMinutes = jobs.reduce(
    (sum, job) => sum + Math.max(...job.eligible.map((each) => each.processMinutes)) + 60,
    0,
  );
  return {
    jobs,
    machines: shop.machines.map(
      (machine): PlanMachine => ({
        id: machine.id,
        ...setUpOf(shop, machine),
        shifts: time.shifts({ minutesPerDay: machine.minutesPerDay, workMinutes }),
        changeOver: costedChangeOver(shop, machine),
      }),
    ),
  };
}

function setUpOf(shop: Shop, machine: Machine): Pick<PlanMachine, 'setUp'> {
  const now = shop.setUpNow.find(({ machineId }) => machineId === machine.id);
  const recipe = now && shop.recipes.find(({ id }) => id === now.recipeId);
  return recipe ? { setUp: traitsOf(recipe, now.lengthM) } : {};
}

/**
 * What a change costs does not depend on the string's metal to a degree that would reorder runs, so a
 * scrapped string is taken at the hand time it costs: wire is a few minor units beside it.
 */
function costedChangeOver(shop: Shop, machine: Machine): PlanMachine['changeOver'] {
  const handSeconds = machine.loadSeconds + machine.unloadSeconds;
  const string = stringCosts(
    { wire: [], cycleSeconds: handSeconds, positions: machine.positions, end: 'ball' },
    { wires: [], rates: shop.rates },
  );
  return (from, to) => {
    const { minutes, scrapStrings } = changeOver(machine, from, to);
    const costMinor = string.ok
      ? unsettledTotal(changeOverCosts({ minutes, scrapStrings }, string.value, shop.rates))
      : 0;
    return { minutes, scrapStrings, costMinor };
  };
}

function onTheClock(run: Plan['runs'][number], lots: readonly Lot[], time: WorkingTime): DayRun {
  const lot = lots.find(({ id }) => id === run.jobId)!;
  return {
    lotId: lot.id,
    machineId: run.machineId,
    recipeId: lot.recipeId,
    stringKey: lot.stringKey,
    quantity: lot.quantity,
    scrapStrings: run.scrapStrings,
    setUpFrom: time.clockOf(run.setUpFromMinute, 'start'),
    runFrom: time.clockOf(run.runFromMinute, 'start'),
    to: time.clockOf(run.toMinute, 'end'),
    setUpMinutes: run.setUpMinutes,
    lateMinutes: run.lateMinutes,
    reason: run.reason,
  };
}

interface MachineDayTask {
  readonly machine: Machine;
  readonly plan: Plan;
  readonly problem: PlanProblem;
  readonly lots: readonly Lot[];
  readonly today: PlanWindow;
}

function machineDay({ machine, plan, problem, lots, today }: MachineDayTask): DayPlan['machines'][number] {
  const shifts = problem.machines.find(({ id }) => id === machine.id)!.shifts;
  const quantityOf = new Map(lots.map(({ id, quantity }) => [id, quantity]));
  const runs = plan.runs.filter(({ machineId }) => machineId === machine.id);
  const sum = (numbers: readonly number[]): number => numbers.reduce((total, number) => total + number, 0);
  return {
    machineId: machine.id,
    name: machine.name,
    stringsToday: sum(
      runs.map((run) =>
        stringsMadeWithin(today, { ...run, quantity: quantityOf.get(run.jobId) ?? 0 }, shifts),
      ),
    ),
    busyShareToday: sum(runs.map((run) => busyMinutesWithin(today, run, shifts))) / machine.minutesPerDay,
  };
}
