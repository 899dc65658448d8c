import type { SetUpTraits } from '../winding/index.js';
import type { ChangeOver, PlanProblem } from './plan.js';

/** A set-up class: lots of equal traits need no telling apart when changing over. `COLD` is a machine with nothing on it. */
export type SetUpClass = number;
export const COLD: SetUpClass = -1;

/** Minutes and cost of changing over on a machine, asked of the shop once and then remembered. */
export interface ChangeTable {
  /** Class of each job, in the problem's order. */
  readonly jobClass: readonly SetUpClass[];
  /** What each machine is set up for, in the problem's order. */
  readonly machineClass: readonly SetUpClass[];
  minutes(machine: number, from: SetUpClass, to: SetUpClass): number;
  costMinor(machine: number, from: SetUpClass, to: SetUpClass): number;
  /** The same minutes for one starting point, looked up once: what asks for thousands takes this. */
  minutesFrom(machine: number, from: SetUpClass): (to: SetUpClass) => number;
}

// 4 million pairs are 64 MB; past that the memory is emptied and fills again with what the search is at.
const MOST_PAIRS = 4_000_000;

interface ChangeRow {
  readonly minutes: Float64Array;
  readonly costMinor: Float64Array;
}

/** Reads the traits of a problem into classes and remembers up to `mostPairs` change-overs between them. */
export function changeTable({ jobs, machines }: PlanProblem, mostPairs = MOST_PAIRS): ChangeTable {
  const traits: SetUpTraits[] = [];
  const classByText = new Map<string, SetUpClass>();
  const classOf = (one: SetUpTraits): SetUpClass => {
    const text = JSON.stringify([one.coreWireId, one.wrapWireIds, one.wrapAlloy, one.lengthM]);
    const known = classByText.get(text);
    if (known !== undefined) return known;
    classByText.set(text, traits.length);
    return traits.push(one) - 1;
  };
  const jobClass = jobs.map((job) => classOf(job.traits));
  const machineClass = machines.map((machine) => (machine.setUp ? classOf(machine.setUp) : COLD));

  // Machines that share one change-over function share what is remembered of it.
  const rowsByRule = new Map<ChangeOver, (ChangeRow | undefined)[]>();
  const rows = machines.map(({ changeOver }) => {
    const shared = rowsByRule.get(changeOver) ?? [];
    rowsByRule.set(changeOver, shared);
    return shared;
  });
  let pairs = 0;
  const newRow = (): ChangeRow => {
    pairs += traits.length;
    if (pairs > mostPairs) {
      for (const remembered of rowsByRule.values()) remembered.length = 0;
      pairs = traits.length;
    }
    return {
      minutes: new Float64Array(traits.length).fill(Number.NaN),
      costMinor: new Float64Array(traits.length),
    };
  };
  const row = (machine: number, from: SetUpClass): ChangeRow => {
    const found = rows[machine]![from + 1] ?? newRow();
    rows[machine]![from + 1] = found;
    return found;
  };
  const ask = (machine: number, from: SetUpClass, to: SetUpClass, known: ChangeRow): number => {
    const change = machines[machine]!.changeOver(traits[from], traits[to]!);
    known.costMinor[to] = change.costMinor;
    known.minutes[to] = change.minutes;
    return change.minutes;
  };
  const minutesFrom = (machine: number, from: SetUpClass) => {
    const known = row(machine, from);
    return (to: SetUpClass): number => {
      const minutes = known.minutes[to]!;
      return Number.isNaN(minutes) ? ask(machine, from, to, known) : minutes;
    };
  };
  return {
    jobClass,
    machineClass,
    minutesFrom,
    minutes: (machine, from, to) => minutesFrom(machine, from)(to),
    costMinor: (machine, from, to) => {
      const known = row(machine, from);
      if (Number.isNaN(known.minutes[to]!)) ask(machine, from, to, known);
      return known.costMinor[to]!;
    },
  };
}
