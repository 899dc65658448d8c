import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import {
  atcsIndex,
  atcsScale,
  checkPlan,
  dispatch,
  optimise,
  type Plan,
  type PlanProblem,
} from '../../src/core/planning/index.js';
import type { SetUpTraits } from '../../src/core/winding/index.js';

/** One machine, jobs numbered from 0; `setUp[from][to]`, the last row for the first job on the machine. */
interface SingleMachine {
  readonly process: readonly number[];
  readonly weight: readonly number[];
  readonly due: readonly number[];
  readonly setUp: readonly (readonly number[])[];
}

const traitsOf = (job: number): SetUpTraits => ({
  coreWireId: String(job),
  wrapWireIds: [],
  wrapAlloy: '',
  lengthM: 1,
});

const problemOf = ({ process, weight, due, setUp }: SingleMachine): PlanProblem => ({
  jobs: process.map((processMinutes, job) => ({
    id: String(job),
    traits: traitsOf(job),
    eligible: [{ machineId: 'machine', processMinutes }],
    releaseMinute: 0,
    dueMinute: due[job]!,
    weight: weight[job]!,
  })),
  machines: [
    {
      id: 'machine',
      shifts: [{ fromMinute: 0, toMinute: 1e6 }],
      changeOver: (from, to) => ({
        minutes: setUp[from ? Number(from.coreWireId) : process.length]![Number(to.coreWireId)]!,
        scrapStrings: 0,
        costMinor: 0,
      }),
    },
  ],
});

/** The plan that runs the jobs in the order given, worked out here by plain addition. */
function planOf({ process, weight, due, setUp }: SingleMachine, sequence: readonly number[]): Plan {
  let clock = 0;
  let weightedLateMinutes = 0;
  const runs = sequence.map((job, place) => {
    const setUpMinutes = setUp[sequence[place - 1] ?? process.length]![job]!;
    const setUpFromMinute = clock;
    clock += setUpMinutes + process[job]!;
    const lateMinutes = Math.max(0, clock - due[job]!);
    weightedLateMinutes += weight[job]! * lateMinutes;
    return {
      jobId: String(job),
      machineId: 'machine',
      setUpFromMinute,
      runFromMinute: setUpFromMinute + setUpMinutes,
      toMinute: clock,
      setUpMinutes,
      scrapStrings: 0,
      lateMinutes,
      reason: { kind: 'fills-bin' } as const,
    };
  });
  return { runs, score: { weightedLateMinutes, changeCostMinor: 0, movedLots: 0, makespanMinutes: clock } };
}

function permutations(items: readonly number[]): readonly (readonly number[])[] {
  if (items.length === 0) return [[]];
  return items.flatMap((first) =>
    permutations(items.filter((item) => item !== first)).map((rest) => [first, ...rest]),
  );
}

describe('the ATCS rule on the textbook example of four jobs (Pinedo, Scheduling: Theory, Algorithms, and Systems, composite dispatching rules; figures from memory)', () => {
  const example: SingleMachine = {
    process: [13, 9, 13, 10],
    weight: [2, 4, 2, 5],
    due: [12, 37, 21, 22],
    setUp: [
      [0, 4, 1, 3],
      [0, 0, 1, 0],
      [1, 2, 0, 3],
      [4, 3, 1, 0],
      [1, 1, 3, 4],
    ],
  };
  const scale = atcsScale({ k1: 5, k2: 0.7, meanProcessMinutes: 11, meanSetUpMinutes: 2 });
  const indexAtStart = (job: number) =>
    atcsIndex(
      {
        weight: example.weight[job]!,
        processMinutes: example.process[job]!,
        dueMinute: example.due[job]!,
        nowMinute: 0,
        setUpMinutes: example.setUp[4]![job]!,
      },
      scale,
    );

  // (2/13) e^(-1/1.4); (4/9) e^(-28/55) e^(-1/1.4); (2/13) e^(-8/55) e^(-3/1.4): worked by hand to three places.
  it.each([
    [1, 0.075],
    [2, 0.131],
    [3, 0.016],
  ])(
    'index of job %d at the start is %f (formula of Lee, Bhaskaran & Pinedo 1997, from memory)',
    (job, index) => {
      expect(Math.abs(indexAtStart(job - 1) - index)).toBeLessThan(0.0005);
    },
  );

  it('job 2 goes first', () => {
    const indices = [0, 1, 2, 3].map(indexAtStart);
    expect(indices.indexOf(Math.max(...indices))).toBe(1);
  });

  it('the rule finds 2, 4, 3, 1 with a total weighted tardiness of 98, and no order has less', () => {
    const plan = dispatch(problemOf(example), { seed: 1, iterations: 0 });
    expect(plan.runs.map((run) => Number(run.jobId) + 1)).toEqual([2, 4, 3, 1]);
    expect(plan.score.weightedLateMinutes).toBe(98);
    const all = permutations([0, 1, 2, 3]).map((order) => planOf(example, order).score.weightedLateMinutes);
    expect(Math.min(...all)).toBe(98);
  });
});

/**
 * Best values: proven optimal by Tanaka & Araki 2013, Computers & Operations Research 40:344-352 (citation
 * from memory). The sequences were found by a search of our own and are not taken from the literature; that
 * each scores exactly the published optimum ties our objective to the published one.
 */
const INSTANCES = [
  {
    number: 41,
    optimum: 69102,
    sequence: [
      22, 30, 2, 37, 31, 36, 46, 34, 38, 16, 57, 4, 3, 39, 43, 17, 28, 41, 50, 35, 21, 49, 19, 27, 51, 10, 20,
      23, 56, 40, 42, 24, 13, 8, 29, 9, 26, 44, 32, 52, 0, 48, 33, 53, 12, 15, 14, 6, 18, 47, 1, 54, 55, 11,
      7, 59, 5, 45, 58, 25,
    ],
  },
  {
    number: 61,
    optimum: 75916,
    sequence: [
      26, 17, 57, 41, 54, 43, 27, 34, 46, 53, 30, 20, 2, 25, 7, 45, 32, 48, 44, 42, 10, 23, 9, 56, 59, 3, 39,
      40, 50, 38, 58, 15, 22, 31, 49, 19, 16, 51, 6, 1, 55, 5, 28, 21, 36, 33, 37, 12, 11, 8, 29, 14, 47, 0,
      18, 4, 35, 13, 24, 52,
    ],
  },
  {
    number: 91,
    optimum: 339933,
    sequence: [
      23, 13, 43, 51, 41, 36, 17, 15, 9, 8, 21, 27, 40, 32, 3, 38, 46, 4, 18, 1, 39, 19, 42, 58, 33, 45, 24,
      25, 7, 56, 26, 2, 48, 6, 22, 59, 55, 10, 11, 31, 29, 34, 20, 5, 12, 14, 28, 54, 30, 50, 57, 44, 49, 16,
      35, 53, 0, 37, 47, 52,
    ],
  },
];

function readInstance(number: number): SingleMachine {
  const text = readFileSync(new URL(`data/wtsds/wt_sds_${number}.txt`, import.meta.url), 'utf8');
  const [[count] = [], process = [], weight = [], due = [], ...setUp] = text
    .split('\n')
    .filter((line) => /^[\d ]+$/.test(line))
    .map((line) => line.trim().split(' ').map(Number));
  for (const row of [process, weight, due, ...setUp]) expect(row).toHaveLength(count!);
  expect(setUp).toHaveLength(count! + 1);
  return { process, weight, due, setUp };
}

describe.each(INSTANCES)(
  'instance $number of 60 jobs with set-ups (Cicirello 2003; optimum $optimum by Tanaka & Araki 2013)',
  ({ number, optimum, sequence }) => {
    const instance = readInstance(number);
    const problem = problemOf(instance);

    it('a sequence worth the published optimum is judged to be worth exactly that', () => {
      const check = checkPlan(problem, planOf(instance, sequence));
      expect(check.faults).toEqual([]);
      expect(check.score.weightedLateMinutes).toBe(optimum);
    });

    it('the rule alone is never below the optimum, and within 30 % of it (measured: 21, 20 and 5 % above)', () => {
      const plan = dispatch(problem, { seed: 1, iterations: 0 });
      const check = checkPlan(problem, plan);
      expect(check.faults).toEqual([]);
      expect(check.score.weightedLateMinutes).toBeGreaterThanOrEqual(optimum);
      expect(check.score.weightedLateMinutes).toBeLessThan(1.3 * optimum);
    });

    it('20,000 moves bring it within 20 % (measured: 14, 10 and 4 % above), never below', () => {
      const plan = dispatch(problem, { seed: 1, iterations: 20_000 });
      const check = checkPlan(problem, plan);
      expect(check.faults).toEqual([]);
      expect(check.score.weightedLateMinutes).toBeGreaterThanOrEqual(optimum);
      expect(check.score.weightedLateMinutes).toBeLessThan(1.2 * optimum);
    });

    it('a search of 400,000 moves comes within 10 % (measured: 7.4, 4.1 and 3.4 % above), never below', () => {
      const plan = optimise(problem, { seed: 1, iterations: 400_000 });
      const check = checkPlan(problem, plan);
      expect(check.faults).toEqual([]);
      expect(check.score.weightedLateMinutes).toBeGreaterThanOrEqual(optimum);
      expect(check.score.weightedLateMinutes).toBeLessThan(1.1 * optimum);
    });
  },
);
