import { emptyLane, timesAfter } from './lane.js';
import type { Plan, PlanProblem } from './plan.js';
import { shopFloor } from './shop-floor.js';

/** Why a job is late. Minutes of the plan. */
export type Lateness =
  | { readonly kind: 'due-already-past'; readonly dueMinute: number }
  /** Alone in the shop, begun at its release on the machine that ends it soonest, it would still be late. */
  | { readonly kind: 'too-short-notice'; readonly dueMinute: number; readonly minutesNeeded: number }
  /** Alone it would have been in time: other work takes its machine. */
  | { readonly kind: 'machine-full'; readonly dueMinute: number; readonly machineId: string };

/** The reason of each late job, by the job's id. `minutesNeeded` is set-up and run in working minutes. */
export function whyLate(problem: PlanProblem, plan: Plan): ReadonlyMap<string, Lateness> {
  const floor = shopFloor(problem);
  const numberOf = new Map(problem.jobs.map((job, number) => [job.id, number]));
  const reason = (jobId: string, machineId: string): Lateness => {
    const number = numberOf.get(jobId)!;
    const dueMinute = problem.jobs[number]!.dueMinute!;
    if (dueMinute <= 0) return { kind: 'due-already-past', dueMinute };
    const alone = floor.able[number]!.map((machine) => {
      const times = timesAfter(floor, machine, emptyLane(floor, machine), number);
      const minutesNeeded = times.setUpMinutes + floor.processMinutes[machine]![number]!;
      return { toMinute: times.toMinute, minutesNeeded };
    }).reduce((soonest, other) => (other.toMinute < soonest.toMinute ? other : soonest));
    return alone.toMinute > dueMinute
      ? { kind: 'too-short-notice', dueMinute, minutesNeeded: alone.minutesNeeded }
      : { kind: 'machine-full', dueMinute, machineId };
  };
  const late = plan.runs.filter((run) => run.lateMinutes > 0);
  return new Map(late.map((run) => [run.jobId, reason(run.jobId, run.machineId)]));
}
