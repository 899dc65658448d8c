import { checkLane, type LaneFault, near } from './check-lane.js';
import type { Plan, PlanProblem, PlanScore } from './plan.js';

/** A law that a plan breaks, with the run that breaks it. */
export type PlanFault =
  | LaneFault
  | { readonly code: 'plan.job-missing'; readonly jobId: string }
  | { readonly code: 'plan.job-unknown' | 'plan.job-twice'; readonly jobId: string }
  | { readonly code: 'plan.machine-unknown'; readonly jobId: string; readonly machineId: string }
  | { readonly code: 'plan.score-wrong'; readonly found: PlanScore };

export interface PlanCheck {
  readonly faults: readonly PlanFault[];
  /** The score recomputed from nothing but which job follows which on which machine. */
  readonly score: PlanScore;
}

/**
 * Judges a plan, whoever made it. Shares no code with any planner: shifts are walked one by one, change-overs
 * asked anew, times and score worked out from the order of the runs alone and compared with what the plan
 * says. Minutes may differ by a millionth.
 */
export function checkPlan(problem: PlanProblem, plan: Plan): PlanCheck {
  const lanes = problem.machines.map((machine) =>
    checkLane(
      problem,
      machine,
      plan.runs.filter((run) => run.machineId === machine.id),
    ),
  );
  const score = {
    weightedLateMinutes: lanes.reduce((sum, lane) => sum + lane.weightedLateMinutes, 0),
    changeCostMinor: lanes.reduce((sum, lane) => sum + lane.changeCostMinor, 0),
    movedLots: lanes.reduce((sum, lane) => sum + lane.movedLots, 0),
    makespanMinutes: lanes.reduce((last, lane) => Math.max(last, lane.endMinute), 0),
  };
  const faults: PlanFault[] = [...countFaults(problem, plan), ...lanes.flatMap((lane) => lane.faults)];
  if (!sameScore(plan.score, score)) faults.push({ code: 'plan.score-wrong', found: score });
  return { faults, score };
}

/** Every job of the problem stands in the plan once, on a machine that exists, and nothing else does. */
function countFaults(problem: PlanProblem, plan: Plan): PlanFault[] {
  const faults: PlanFault[] = [];
  const wanted = new Set(problem.jobs.map((job) => job.id));
  const machines = new Set(problem.machines.map((machine) => machine.id));
  const seen = new Set<string>();
  for (const { jobId, machineId } of plan.runs) {
    if (!wanted.has(jobId)) faults.push({ code: 'plan.job-unknown', jobId });
    if (seen.has(jobId)) faults.push({ code: 'plan.job-twice', jobId });
    if (!machines.has(machineId)) faults.push({ code: 'plan.machine-unknown', jobId, machineId });
    seen.add(jobId);
  }
  for (const jobId of wanted) if (!seen.has(jobId)) faults.push({ code: 'plan.job-missing', jobId });
  return faults;
}

const sameScore = (a: PlanScore, b: PlanScore): boolean =>
  near(a.weightedLateMinutes, b.weightedLateMinutes) &&
  near(a.changeCostMinor, b.changeCostMinor) &&
  a.movedLots === b.movedLots &&
  near(a.makespanMinutes, b.makespanMinutes);
