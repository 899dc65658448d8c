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
import { stringKey } from '../sets/index.js';
import { changeOver, type Machine, runMinutes, traitsOf } from '../winding/index.js';
import type { ClockTime, DayPlan, DayRun, DayRunUnderWay } from './day.js';
import type { MakeOf } from './make.js';
import type { RunUnderWay } from './run-under-way.js';
import type { Shop } from './shop.js';
import { type WorkUnderWay, workUnderWay } from './work-under-way.js';

/** The plan on the clock, and why lots are late. */
export interface Schedule {
  readonly plan: DayPlan;
  readonly underWay: readonly DayRunUnderWay[];
  readonly lateBecause: ReadonlyMap<string, Lateness>;
}

export interface ScheduleTask {
  readonly shop: Shop;
  readonly lots: readonly Lot[];
  readonly date: CalendarDate;
  readonly makeOf: MakeOf;
  readonly underWay: readonly RunUnderWay[];
  /** When the plan is made; at its start where left out. */
  readonly now?: ClockTime;
  readonly planner: Planner;
  readonly effort: PlanEffort;
}

/** Puts lots on machines in working time, behind what is under way there, and the result on the shop's clock. */
export function schedule(task: ScheduleTask): Schedule {
  const { shop, lots, date } = task;
  // A shop without machines has a day all the same, with nothing planned in it.
  const dayMinutes = Math.max(1, ...shop.machines.map(({ minutesPerDay }) => minutesPerDay));
  const time = workingTime({ ...shop.rules, start: date, dayMinutes });
  const today = dayWindow(time, date, dayMinutes);
  const before = workUnderWay({ shop, runs: task.underWay, ...moment(task, time, dayMinutes) });
  const problem = problemOf(task, time, before);
  const plan = task.planner(problem, task.effort);
  const ids = new Set(task.underWay.map(({ id }) => id));
  const quantities = new Map([
    ...lots.map(({ id, quantity }) => [id, quantity] as const),
    ...task.underWay.map(({ id, quantity, made }) => [id, Math.max(0, quantity - made)] as const),
  ]);
  return {
    plan: {
      runs: plan.runs.filter(({ jobId }) => !ids.has(jobId)).map((run) => onTheClock(run, lots, time)),
      score: plan.score,
      machines: shop.machines.map((machine) => machineDay({ machine, plan, problem, quantities, today })),
    },
    underWay: task.underWay.map((run) => busyUntil(run, plan, time)),
    lateBecause: whyLate(problem, plan),
  };
}

/** The day on the plan's axis; empty where the shop does not work on it. */
const dayWindow = (time: WorkingTime, date: CalendarDate, dayMinutes: number): PlanWindow => ({
  fromMinute: 0,
  toMinute: time.clockOf(0, 'start').date === date ? dayMinutes : 0,
});

/** How much of what is under way can be done before the plan's start, or how far the plan's day has gone already. */
export function moment(
  { now, date }: Pick<ScheduleTask, 'now' | 'date'>,
  time: WorkingTime,
  dayMinutes: number,
) {
  const minute = now ? time.minuteOf(now) : 0;
  const ahead = Math.max(0, -minute);
  return {
    nowMinute: now?.date === date ? Math.max(0, minute) : 0,
    minutesBefore: ({ minutesPerDay }: Machine): number => {
      const wholeDays = Math.floor(ahead / dayMinutes);
      const restOfDay = Math.max(0, (ahead % dayMinutes) - (dayMinutes - minutesPerDay));
      return wholeDays * minutesPerDay + restOfDay;
    },
  };
}

/** Lots and what is under way as the planner sees them. */
export function problemOf(
  { shop, lots, makeOf }: Pick<ScheduleTask, 'shop' | 'lots' | 'makeOf'>,
  time: WorkingTime,
  before: WorkUnderWay,
): PlanProblem {
  const wanted = lots.map((lot) => {
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
  const jobs = [...before.jobs, ...wanted];
  const workMinutes = jobs.reduce(
    (sum, job) => sum + Math.max(...job.eligible.map((each) => each.processMinutes)) + 60,
    0,
  );
  return {
    jobs,
    machines: shop.machines.map((machine): PlanMachine => {
      const setUp = before.setUpAtStart(machine.id);
      return {
        id: machine.id,
        ...(setUp ? { setUp } : {}),
        shifts: time.shifts({ minutesPerDay: machine.minutesPerDay, workMinutes }),
        changeOver: costedChangeOver(shop, machine),
      };
    }),
  };
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

/** A planned run with its times on the shop's clock. */
export function onTheClock(run: Plan['runs'][number], lots: readonly Lot[], time: WorkingTime): DayRun {
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

/** From when to when a run under way keeps its machine; both the plan's start where it is over by then. */
export function busyUntil(run: RunUnderWay, plan: Plan, time: WorkingTime): DayRunUnderWay {
  const { id: runId, name, machineId, spec, quantity, made } = run;
  const planned = plan.runs.find(({ jobId }) => jobId === runId);
  const start = time.clockOf(0, 'start');
  return {
    runId,
    name,
    machineId,
    stringKey: stringKey(spec),
    quantity: Math.max(quantity, made),
    from: planned ? time.clockOf(planned.setUpFromMinute, 'start') : start,
    to: planned && planned.toMinute > 0 ? time.clockOf(planned.toMinute, 'end') : start,
  };
}

interface MachineDayTask {
  readonly machine: Machine;
  readonly plan: Plan;
  readonly problem: PlanProblem;
  /** Good strings that each job still makes. */
  readonly quantities: ReadonlyMap<string, number>;
  readonly today: PlanWindow;
}

function machineDay({
  machine,
  plan,
  problem,
  quantities,
  today,
}: MachineDayTask): DayPlan['machines'][number] {
  const shifts = problem.machines.find(({ id }) => id === machine.id)!.shifts;
  const runs = plan.runs.filter(({ machineId }) => machineId === machine.id);
  const sum = (numbers: readonly number[]): number => numbers.reduce((total, number) => total + number, 0);
  return {
    machineId: machine.id,
    name: machine.name,
    stringsToday: sum(
      runs.map((run) =>
        stringsMadeWithin(today, { ...run, quantity: quantities.get(run.jobId) ?? 0 }, shifts),
      ),
    ),
    busyShareToday: sum(runs.map((run) => busyMinutesWithin(today, run, shifts))) / machine.minutesPerDay,
  };
}
