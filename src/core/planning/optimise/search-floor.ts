import type { ShopFloor } from '../shop-floor.js';

/** A shop floor laid out for millions of looks a second. */
export interface SearchFloor {
  readonly floor: ShopFloor;
  readonly lots: number;
  readonly machines: number;
  readonly release: Float64Array;
  /** Infinite where a lot only fills a bin. */
  readonly due: Float64Array;
  readonly weight: Float64Array;
  readonly setUpClass: Int32Array;
  /** Lots of each machine's lane that are under way, and stay where they are. */
  readonly frozen: Int32Array;
  /** Where the lot stands in the plan in force: machine and lot before it; -1 for none, -2 for not in it. */
  readonly stoodOn: Int32Array;
  readonly stoodAfter: Int32Array;
  /**
   * No due dates, no releases, one open shift a machine: a change early in a lane only shifts what is behind it, so
   * that its effect is known without walking on.
   */
  readonly isPlain: boolean;
  readonly changes: SearchChanges;
}

/** Minutes and cost of every change-over, one behind the other; from no set-up is class -1. */
export interface SearchChanges {
  readonly minutes: Float64Array;
  readonly costMinor: Float64Array;
  /** Where a change stands in both, asked of the shop if it is not there yet. */
  at(machine: number, from: number, to: number): number;
}

/** Past so many pairs of set-ups the shop's own table is asked instead of a dense one. */
const MOST_PAIRS = 8_000_000;

export function searchFloor(floor: ShopFloor): SearchFloor {
  const { jobs, machines } = floor.problem;
  const setUpClass = Int32Array.from(floor.changes.jobClass);
  const numbers = new Map(jobs.map(({ id }, job) => [id, job]));
  const machineNumbers = new Map(machines.map(({ id }, machine) => [id, machine]));
  const due = Float64Array.from(jobs, ({ dueMinute }) => dueMinute ?? Number.POSITIVE_INFINITY);
  const release = Float64Array.from(jobs, ({ releaseMinute }) => releaseMinute);
  return {
    floor,
    lots: jobs.length,
    machines: machines.length,
    release,
    due,
    weight: Float64Array.from(jobs, ({ weight }) => weight),
    setUpClass,
    frozen: Int32Array.from(floor.frozen, (lane) => lane.length),
    stoodOn: Int32Array.from(jobs, ({ inForce }) =>
      inForce ? (machineNumbers.get(inForce.machineId) ?? -1) : -2,
    ),
    stoodAfter: Int32Array.from(jobs, ({ inForce }) =>
      inForce?.afterJobId === undefined ? -1 : (numbers.get(inForce.afterJobId) ?? -1),
    ),
    isPlain:
      due.every((minute) => minute === Number.POSITIVE_INFINITY) &&
      release.every((minute) => minute <= 0) &&
      machines.every(({ shifts }) => shifts.length === 1),
    changes: changesOf(floor),
  };
}

function changesOf({ problem, changes }: ShopFloor): SearchChanges {
  const classes = 1 + Math.max(-1, ...changes.jobClass, ...changes.machineClass);
  const rules = [...new Set(problem.machines.map(({ changeOver }) => changeOver))];
  const size = (classes + 1) * classes;
  if (rules.length * size > MOST_PAIRS) return askedEachTime(changes);
  const ruleOf = Int32Array.from(problem.machines, ({ changeOver }) => rules.indexOf(changeOver) * size);
  const minutes = new Float64Array(rules.length * size).fill(Number.NaN);
  const costMinor = new Float64Array(rules.length * size);
  return {
    minutes,
    costMinor,
    at: (machine, from, to) => {
      const at = ruleOf[machine]! + (from + 1) * classes + to;
      if (Number.isNaN(minutes[at]!)) {
        minutes[at] = changes.minutes(machine, from, to);
        costMinor[at] = changes.costMinor(machine, from, to);
      }
      return at;
    },
  };
}

/** Too many pairs to lay out: one place, filled with what was asked last. */
function askedEachTime(changes: ShopFloor['changes']): SearchChanges {
  const minutes = new Float64Array(1);
  const costMinor = new Float64Array(1);
  return {
    minutes,
    costMinor,
    at: (machine, from, to) => {
      minutes[0] = changes.minutes(machine, from, to);
      costMinor[0] = changes.costMinor(machine, from, to);
      return 0;
    },
  };
}
