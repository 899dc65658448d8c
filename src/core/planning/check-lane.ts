import type { SetUpTraits } from '../winding/index.js';
import type { PlanJob, PlanMachine, PlannedRun, PlanProblem } from './plan.js';

/** A law that a run breaks on its machine. */
export interface LaneFault {
  readonly code:
    | 'plan.machine-not-able'
    | 'plan.before-release'
    | 'plan.runs-overlap'
    | 'plan.outside-shifts'
    | 'plan.frozen-moved'
    | 'plan.times-wrong'
    | 'plan.lateness-wrong'
    | 'plan.change-wrong';
  readonly jobId: string;
  readonly machineId: string;
}

export interface LaneCheck {
  readonly faults: readonly LaneFault[];
  readonly weightedLateMinutes: number;
  readonly changeCostMinor: number;
  readonly movedLots: number;
  readonly endMinute: number;
}

/** A millionth of a minute, relative to large sums: far above rounding, far below what a shop could notice. */
export const near = (a: number, b: number): boolean =>
  Math.abs(a - b) <= 1e-6 * Math.max(1, Math.abs(b) * 1e-3);

/** Walks one machine's runs in the order in which they begin and works everything out anew. */
export function checkLane(
  problem: PlanProblem,
  machine: PlanMachine,
  runs: readonly PlannedRun[],
): LaneCheck {
  const jobs = new Map(problem.jobs.map((job) => [job.id, job]));
  const lane = [...runs].sort((a, b) => a.setUpFromMinute - b.setUpFromMinute || a.toMinute - b.toMinute);
  const faults = frozenFaults(problem, machine, lane);
  const sums = { weightedLateMinutes: 0, changeCostMinor: 0, movedLots: 0, endMinute: 0 };
  let setUp = machine.setUp;
  let before: PlannedRun | undefined;
  for (const run of lane) {
    const job = jobs.get(run.jobId);
    if (!job) continue;
    const fault = (code: LaneFault['code']): unknown =>
      faults.push({ code, jobId: job.id, machineId: machine.id });
    const expected = recompute(machine, setUp, job, sums.endMinute);
    if (!expected) {
      fault('plan.machine-not-able');
      continue;
    }
    if (run.setUpFromMinute < job.releaseMinute && !near(run.setUpFromMinute, job.releaseMinute))
      fault('plan.before-release');
    if (before && run.setUpFromMinute < before.toMinute && !near(run.setUpFromMinute, before.toMinute))
      fault('plan.runs-overlap');
    if (![run.setUpFromMinute, run.runFromMinute, run.toMinute].every((at) => inShift(machine, at)))
      fault('plan.outside-shifts');
    if (!sameTimes(run, expected)) fault('plan.times-wrong');
    if (!near(run.lateMinutes, expected.lateMinutes)) fault('plan.lateness-wrong');
    if (!near(run.setUpMinutes, expected.setUpMinutes) || run.scrapStrings !== expected.scrapStrings)
      fault('plan.change-wrong');
    sums.weightedLateMinutes += job.weight * expected.lateMinutes;
    sums.changeCostMinor += expected.costMinor;
    sums.endMinute = expected.toMinute;
    if (isMoved(job, machine, before)) sums.movedLots += 1;
    setUp = job.traits;
    before = run;
  }
  return { faults, ...sums };
}

/** Whether it stands on another machine, or behind another lot, than in the plan in force. */
const isMoved = ({ inForce }: PlanJob, { id }: PlanMachine, before: PlannedRun | undefined): boolean =>
  inForce !== undefined && (inForce.machineId !== id || inForce.afterJobId !== before?.jobId);

type Expected = Omit<PlannedRun, 'jobId' | 'machineId' | 'reason'> & { readonly costMinor: number };

/** The run as soon as its machine is free at `freeMinute` and it is released; undefined where the machine cannot make it. */
function recompute(
  machine: PlanMachine,
  setUp: SetUpTraits | undefined,
  job: PlanJob,
  freeMinute: number,
): Expected | undefined {
  const able = job.eligible.find((one) => one.machineId === machine.id);
  if (!able) return undefined;
  const change = machine.changeOver(setUp, job.traits);
  const settingUp = walk(machine, Math.max(freeMinute, job.releaseMinute), change.minutes);
  const running = walk(machine, settingUp.toMinute, able.processMinutes);
  return {
    setUpFromMinute: settingUp.fromMinute,
    runFromMinute: running.fromMinute,
    toMinute: running.toMinute,
    setUpMinutes: change.minutes,
    scrapStrings: change.scrapStrings,
    lateMinutes: job.dueMinute === undefined ? 0 : Math.max(0, running.toMinute - job.dueMinute),
    costMinor: change.costMinor,
  };
}

/** So many working minutes from a moment on, shift by shift; the last shift has no end. */
function walk(
  machine: PlanMachine,
  earliest: number,
  minutes: number,
): { fromMinute: number; toMinute: number } {
  let left = minutes;
  let fromMinute: number | undefined;
  for (const [i, shift] of machine.shifts.entries()) {
    const end = i === machine.shifts.length - 1 ? Number.POSITIVE_INFINITY : shift.toMinute;
    const begin = Math.max(earliest, shift.fromMinute);
    if (begin >= end) continue;
    fromMinute ??= begin;
    if (begin + left <= end) return { fromMinute, toMinute: begin + left };
    left -= end - begin;
  }
  return { fromMinute: Number.NaN, toMinute: Number.NaN };
}

const inShift = (machine: PlanMachine, at: number): boolean =>
  machine.shifts.some(
    ({ fromMinute, toMinute }, i) =>
      (at >= fromMinute || near(at, fromMinute)) &&
      (i === machine.shifts.length - 1 || at <= toMinute || near(at, toMinute)),
  );

const sameTimes = (run: PlannedRun, expected: Expected): boolean =>
  near(run.setUpFromMinute, expected.setUpFromMinute) &&
  near(run.runFromMinute, expected.runFromMinute) &&
  near(run.toMinute, expected.toMinute);

/** Jobs under way on this machine are its first runs, in their order. */
function frozenFaults(problem: PlanProblem, machine: PlanMachine, lane: readonly PlannedRun[]): LaneFault[] {
  return problem.jobs
    .filter((job) => job.frozen?.machineId === machine.id)
    .sort((a, b) => a.frozen!.order - b.frozen!.order)
    .flatMap((job, place) =>
      lane[place]?.jobId === job.id
        ? []
        : [{ code: 'plan.frozen-moved' as const, jobId: job.id, machineId: machine.id }],
    );
}
