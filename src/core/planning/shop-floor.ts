import { invariant } from '../foundation/index.js';
import { type ChangeTable, changeTable } from './change-table.js';
import { type MachineCalendar, machineCalendar } from './machine-calendar.js';
import type { PlanProblem } from './plan.js';

/** A problem made ready for search: jobs and machines by number, in the problem's order. */
export interface ShopFloor {
  readonly problem: PlanProblem;
  readonly calendars: readonly MachineCalendar[];
  readonly changes: ChangeTable;
  /** `processMinutes[machine][job]`; NaN where the machine cannot make it. */
  readonly processMinutes: readonly Float64Array[];
  /** Machines able to make each job, ascending. */
  readonly able: readonly (readonly number[])[];
  /** Jobs under way, at the head of each machine's lane. */
  readonly frozen: readonly (readonly number[])[];
}

/** Jobs by number, for each machine in the order it runs them. */
export type Lanes = readonly (readonly number[])[];

/** Reads a problem; what no caller can have wanted (a job for no machine, a name unknown or used twice) throws. */
export function shopFloor(problem: PlanProblem): ShopFloor {
  const { jobs, machines } = problem;
  const machineNumber = numbered(machines, 'machine');
  numbered(jobs, 'job');
  const processMinutes = machines.map(() => new Float64Array(jobs.length).fill(Number.NaN));
  const able = jobs.map((job, j) => {
    invariant(job.eligible.length > 0, `job ${job.id} has a machine that can make it`);
    for (const { machineId, processMinutes: minutes } of job.eligible) {
      const row = processMinutes[machineNumber.get(machineId) ?? -1];
      invariant(row, `machine ${machineId} of job ${job.id} is in the plan`);
      row[j] = minutes;
    }
    return [...machines.keys()].filter((m) => !Number.isNaN(processMinutes[m]![j]!));
  });
  return {
    problem,
    calendars: machines.map((machine) => machineCalendar(machine.shifts)),
    changes: changeTable(problem),
    processMinutes,
    able,
    frozen: frozenLanes(problem, machineNumber, processMinutes),
  };
}

function frozenLanes(
  { jobs, machines }: PlanProblem,
  machineNumber: ReadonlyMap<string, number>,
  processMinutes: readonly Float64Array[],
): number[][] {
  const lanes = machines.map((): number[] => []);
  for (const [j, job] of jobs.entries()) {
    if (!job.frozen) continue;
    const m = machineNumber.get(job.frozen.machineId) ?? -1;
    invariant(
      !Number.isNaN(processMinutes[m]?.[j] ?? Number.NaN),
      `${job.id} is under way on a machine able to make it`,
    );
    lanes[m]!.push(j);
  }
  for (const lane of lanes) lane.sort((a, b) => jobs[a]!.frozen!.order - jobs[b]!.frozen!.order || a - b);
  return lanes;
}

function numbered(items: readonly { readonly id: string }[], what: string): Map<string, number> {
  const numbers = new Map(items.map((item, i) => [item.id, i]));
  invariant(numbers.size === items.length, `every ${what} has a name of its own`);
  return numbers;
}
