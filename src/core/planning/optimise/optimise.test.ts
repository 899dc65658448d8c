import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bestOfAll, drawShop, shops } from '../../../../test/fixtures/drawn-shops.js';
import { seededChance } from '../../foundation/index.js';
import { checkPlan } from '../check-plan.js';
import { dispatch } from '../dispatch.js';
import type { PlanProblem, PlanScore } from '../plan.js';
import { compareScores } from '../score.js';
import { planBound } from './lower-bound.js';
import { optimise } from './optimise.js';

/** The same shop, people counting on a plan that the rule made. */
function withPlanInForce(problem: PlanProblem): PlanProblem {
  const { runs } = dispatch(problem, { seed: 1, iterations: 0 });
  const before = new Map<string, string>();
  const inForce = new Map(
    runs.map(({ jobId, machineId }) => {
      const afterJobId = before.get(machineId);
      before.set(machineId, jobId);
      return [jobId, { machineId, ...(afterJobId === undefined ? {} : { afterJobId }) }];
    }),
  );
  return {
    ...problem,
    jobs: problem.jobs.map((job) => ({ ...job, inForce: inForce.get(job.id)! })),
  };
}

describe('a plan that was searched for', () => {
  it('breaks no law, and its score is what the checker finds', () => {
    fc.assert(
      fc.property(shops, fc.constantFrom(0, 500), fc.boolean(), (drawn, iterations, isInForce) => {
        const problem = isInForce ? withPlanInForce(drawn) : drawn;
        const plan = optimise(problem, { seed: 3, iterations });
        expect(checkPlan(problem, plan).faults).toEqual([]);
        expect(plan.runs).toHaveLength(problem.jobs.length);
      }),
      { numRuns: 150 },
    );
  });

  it('is the same for the same problem, seed and effort', () => {
    fc.assert(
      fc.property(shops, fc.nat(9), (problem, seed) => {
        const effort = { seed, iterations: 600 };
        expect(optimise(problem, effort)).toEqual(optimise(problem, effort));
      }),
      { numRuns: 30 },
    );
  });

  it('is never worse than the rule’s, and never better than can be', () => {
    fc.assert(
      fc.property(shops, (problem) => {
        const { score } = optimise(problem, { seed: 5, iterations: 400 });
        const bound = planBound(problem);
        expect(compareScores(score, dispatch(problem, { seed: 1, iterations: 0 }).score)).toBeLessThanOrEqual(
          0,
        );
        expect(score.weightedLateMinutes).toBeGreaterThanOrEqual(bound.weightedLateMinutes - 1e-6);
        expect(score.changeCostMinor).toBeGreaterThanOrEqual(bound.changeCostMinor - 1e-6);
        expect(score.makespanMinutes).toBeGreaterThanOrEqual(bound.makespanMinutes - 1e-6);
      }),
      { numRuns: 100 },
    );
  });

  it('stands as the plan in force where nothing better is to be had', () => {
    const problem = drawShop(seededChance(7), 6, 2);
    const best = optimise(problem, { seed: 1, iterations: 20_000 });
    const before = new Map<string, string>();
    const jobs = problem.jobs.map((job) => ({ ...job }));
    for (const { jobId, machineId } of best.runs) {
      const afterJobId = before.get(machineId);
      before.set(machineId, jobId);
      const at = jobs.findIndex(({ id }) => id === jobId);
      jobs[at] = {
        ...jobs[at]!,
        inForce: { machineId, ...(afterJobId === undefined ? {} : { afterJobId }) },
      };
    }
    const again = optimise({ ...problem, jobs }, { seed: 2, iterations: 20_000 });
    expect(again.score.movedLots).toBe(0);
    expect(again.runs.map(({ jobId, machineId }) => [jobId, machineId])).toEqual(
      best.runs.map(({ jobId, machineId }) => [jobId, machineId]),
    );
  });

  it('stops when told to, and tells of its progress with scores that only get better', () => {
    const problem = drawShop(seededChance(5), 20, 3);
    let asked = 0;
    const stopped = optimise(problem, { seed: 1, iterations: 1e9, shouldStop: () => ++asked > 100 });
    expect(checkPlan(problem, stopped).faults).toEqual([]);
    const told: [number, PlanScore][] = [];
    optimise(problem, {
      seed: 1,
      iterations: 800_000,
      onProgress: (share, best) => told.push([share, best]),
    });
    expect(told.length).toBeGreaterThan(2);
    expect(told.at(-1)![0]).toBe(1);
    for (const [i, [, best]] of told.entries())
      if (i > 0) expect(compareScores(best, told[i - 1]![1])).toBeLessThanOrEqual(0);
  });

  it('is the best of all plans in each of 40 small shops, found by trying every one', () => {
    for (let seed = 0; seed < 40; seed++) {
      const problem = drawShop(seededChance(seed + 100), 3 + (seed % 4), 2, seed % 2 === 0);
      const { score } = optimise(problem, { seed: 1, iterations: 20_000 });
      expect(compareScores(score, bestOfAll(problem)), `shop ${seed}`).toBe(0);
    }
  });
});
