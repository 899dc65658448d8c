import type { PlanProblem } from '../plan.js';
import { type ShopFloor, shopFloor } from '../shop-floor.js';

/** What no plan can be below, each part by itself. Weak where set-ups differ much, but never wrong. */
export interface PlanBound {
  readonly weightedLateMinutes: number;
  readonly changeCostMinor: number;
  readonly makespanMinutes: number;
}

/**
 * Lateness: what each lot would be late if it were alone in the shop, its set-up the shortest that any lot or machine
 * could lead to. Cost: each lot after the one that makes its change cheapest. Last end: the longest lot alone, and all work with the shortest set-ups shared out over all
 * machines as if it could be cut at will.
 */
export function planBound(problem: PlanProblem): PlanBound {
  const floor = shopFloor(problem);
  const lots = problem.jobs.map((_, job) => leastOf(floor, job));
  const sum = (of: (lot: LeastOfLot) => number) => lots.reduce((total, lot) => total + of(lot), 0);
  return {
    weightedLateMinutes: sum(({ lateMinutes }) => lateMinutes),
    changeCostMinor: sum(({ costMinor }) => costMinor),
    makespanMinutes: Math.max(
      0,
      sharedEnd(
        floor,
        sum(({ minutes }) => minutes),
      ),
      ...lots.map(({ endMinute }) => endMinute),
    ),
  };
}

interface LeastOfLot {
  readonly minutes: number;
  readonly costMinor: number;
  readonly endMinute: number;
  readonly lateMinutes: number;
}

function leastOf(floor: ShopFloor, job: number): LeastOfLot {
  const { releaseMinute, dueMinute, weight } = floor.problem.jobs[job]!;
  let [minutes, costMinor, endMinute] = Array<number>(3).fill(Number.POSITIVE_INFINITY) as [
    number,
    number,
    number,
  ];
  for (const machine of floor.able[job]!) {
    const change = leastChange(floor, machine, job);
    const calendar = floor.calendars[machine]!;
    const own = change.minutes + floor.processMinutes[machine]![job]!;
    const begin = calendar.workedBefore(Math.max(0, releaseMinute));
    minutes = Math.min(minutes, own);
    costMinor = Math.min(costMinor, change.costMinor);
    endMinute = Math.min(endMinute, own === 0 ? 0 : calendar.endOf(begin + own));
  }
  const late = dueMinute === undefined ? 0 : Math.max(0, endMinute - dueMinute);
  return { minutes, costMinor, endMinute, lateMinutes: weight * late };
}

/** The shortest and the cheapest change to a lot on a machine: after what is on it, or after any other lot that it can make. */
function leastChange(floor: ShopFloor, machine: number, job: number) {
  const { changes, processMinutes, problem } = floor;
  const to = changes.jobClass[job]!;
  let minutes = changes.minutes(machine, changes.machineClass[machine]!, to);
  let costMinor = changes.costMinor(machine, changes.machineClass[machine]!, to);
  for (let before = 0; before < problem.jobs.length; before++) {
    if (before === job || Number.isNaN(processMinutes[machine]![before]!)) continue;
    const from = changes.jobClass[before]!;
    minutes = Math.min(minutes, changes.minutes(machine, from, to));
    costMinor = Math.min(costMinor, changes.costMinor(machine, from, to));
  }
  return { minutes, costMinor };
}

/** The earliest minute by which all machines together have worked so many minutes. */
function sharedEnd({ problem, calendars }: ShopFloor, workMinutes: number): number {
  const workedBy = (minute: number) =>
    calendars.reduce((sum, calendar) => sum + calendar.workedBefore(minute), 0);
  const latestStart = Math.max(0, ...problem.machines.map(({ shifts }) => shifts.at(-1)!.fromMinute));
  let [low, high] = [0, latestStart + workMinutes];
  for (let halving = 0; halving < 60; halving++) {
    const middle = (low + high) / 2;
    if (workedBy(middle) < workMinutes) low = middle;
    else high = middle;
  }
  return low;
}
