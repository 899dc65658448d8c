import type { SetUpClass } from './change-table.js';
import type { PlanScore } from './plan.js';
import type { Lanes, ShopFloor } from './shop-floor.js';

/** A run with its place in time. Minutes of the plan. */
export interface TimedRun {
  readonly setUpFromMinute: number;
  readonly runFromMinute: number;
  readonly toMinute: number;
  readonly setUpMinutes: number;
}

/** Where a machine stands while its lane is being filled. */
export interface LaneEnd {
  /** Worked minutes of the machine's calendar that are taken. */
  readonly worked: number;
  readonly setUp: SetUpClass;
}

export const emptyLane = (floor: ShopFloor, machine: number): LaneEnd => ({
  worked: 0,
  setUp: floor.changes.machineClass[machine]!,
});

/** The lane's end after one more job, begun as soon as the machine is free and the job released. */
export function afterJob(floor: ShopFloor, machine: number, end: LaneEnd, job: number): LaneEnd {
  const setUp = floor.changes.jobClass[job]!;
  const begin = beginning(floor, machine, end, job);
  const minutes = floor.changes.minutes(machine, end.setUp, setUp) + floor.processMinutes[machine]![job]!;
  return { worked: begin + minutes, setUp };
}

/** The times of one more job at the lane's end. */
export function timesAfter(floor: ShopFloor, machine: number, end: LaneEnd, job: number): TimedRun {
  const calendar = floor.calendars[machine]!;
  const setUpMinutes = floor.changes.minutes(machine, end.setUp, floor.changes.jobClass[job]!);
  const begin = beginning(floor, machine, end, job);
  const runFromMinute = calendar.startOf(begin + setUpMinutes);
  const done = calendar.endOf(begin + setUpMinutes + floor.processMinutes[machine]![job]!);
  return {
    setUpFromMinute: calendar.startOf(begin),
    runFromMinute,
    toMinute: Math.max(runFromMinute, done),
    setUpMinutes,
  };
}

const beginning = (floor: ShopFloor, machine: number, end: LaneEnd, job: number): number =>
  Math.max(end.worked, floor.calendars[machine]!.workedBefore(floor.problem.jobs[job]!.releaseMinute));

/** What one lane adds to the score; its end counts as the makespan. */
export function laneScore(floor: ShopFloor, machine: number, lane: readonly number[]): PlanScore {
  const machineId = floor.problem.machines[machine]!.id;
  let end = emptyLane(floor, machine);
  let weightedLateMinutes = 0;
  let changeCostMinor = 0;
  let movedLots = 0;
  let makespanMinutes = 0;
  let before: string | undefined;
  for (const job of lane) {
    const { id, dueMinute, weight, inForce } = floor.problem.jobs[job]!;
    const next = afterJob(floor, machine, end, job);
    changeCostMinor += floor.changes.costMinor(machine, end.setUp, next.setUp);
    if (inForce && (inForce.machineId !== machineId || inForce.afterJobId !== before)) movedLots += 1;
    before = id;
    makespanMinutes = floor.calendars[machine]!.endOf(next.worked);
    if (dueMinute !== undefined && makespanMinutes > dueMinute)
      weightedLateMinutes += weight * (makespanMinutes - dueMinute);
    end = next;
  }
  return { weightedLateMinutes, changeCostMinor, movedLots, makespanMinutes };
}

/** The whole plan's score from its lanes' scores. */
export function joinScores(lanes: readonly PlanScore[]): PlanScore {
  let [weightedLateMinutes, changeCostMinor, movedLots, makespanMinutes] = [0, 0, 0, 0];
  for (const lane of lanes) {
    weightedLateMinutes += lane.weightedLateMinutes;
    changeCostMinor += lane.changeCostMinor;
    movedLots += lane.movedLots;
    makespanMinutes = Math.max(makespanMinutes, lane.makespanMinutes);
  }
  return { weightedLateMinutes, changeCostMinor, movedLots, makespanMinutes };
}

export const laneScores = (floor: ShopFloor, lanes: Lanes): PlanScore[] =>
  lanes.map((lane, machine) => laneScore(floor, machine, lane));
