import { fail, type Result, succeed } from '../foundation/index.js';
import type { Plan, PlanProblem } from './plan.js';
import { planOfLanes } from './plan-of-lanes.js';
import { shopFloor } from './shop-floor.js';

/** For each machine the jobs it is to run, first to last; machines that are left out run none. */
export type LaneOrder = readonly { readonly machineId: string; readonly jobIds: readonly string[] }[];

/** Why an order of jobs is no plan. */
export type LaneOrderFault =
  | { readonly code: 'machine-unknown'; readonly machineId: string }
  | { readonly code: 'machine-not-able'; readonly machineId: string; readonly jobId: string }
  /** Every job that may move stands in the order once. */
  | {
      readonly code: 'jobs-differ';
      readonly missing: readonly string[];
      readonly unknown: readonly string[];
    };

/**
 * The plan that an order told by a person gives: each job as soon as its machine is free and it is released. What is under
 * way stays at the head of its machine's lane and is not told.
 */
export function planInOrder(problem: PlanProblem, order: LaneOrder): Result<Plan, LaneOrderFault> {
  const floor = shopFloor(problem);
  const fault = unknownMachine(problem, order) ?? jobsDiffer(problem, order);
  if (fault) return fail(fault);
  const numberOf = new Map(problem.jobs.map(({ id }, number) => [id, number]));
  const lanes = floor.frozen.map((lane) => [...lane]);
  for (const { machineId, jobIds } of order) {
    const machine = problem.machines.findIndex(({ id }) => id === machineId);
    for (const jobId of jobIds) {
      const job = numberOf.get(jobId)!;
      if (!floor.able[job]!.includes(machine)) return fail({ code: 'machine-not-able', machineId, jobId });
      lanes[machine]!.push(job);
    }
  }
  return succeed(planOfLanes(floor, lanes));
}

function unknownMachine({ machines }: PlanProblem, order: LaneOrder): LaneOrderFault | undefined {
  const known = new Set(machines.map(({ id }) => id));
  const stray = order.find(({ machineId }) => !known.has(machineId));
  return stray && { code: 'machine-unknown', machineId: stray.machineId };
}

function jobsDiffer({ jobs }: PlanProblem, order: LaneOrder): LaneOrderFault | undefined {
  const wanted = new Set(jobs.filter(({ frozen }) => !frozen).map(({ id }) => id));
  const unknown: string[] = [];
  // Told a second time, a job is as unknown as one that never was.
  for (const jobId of order.flatMap(({ jobIds }) => jobIds)) if (!wanted.delete(jobId)) unknown.push(jobId);
  if (wanted.size === 0 && unknown.length === 0) return undefined;
  return { code: 'jobs-differ', missing: [...wanted], unknown };
}
