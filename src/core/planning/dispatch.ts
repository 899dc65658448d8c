import { atcsScale } from './atcs.js';
import { dispatchPass, type PassSettings, type RuleJobs } from './dispatch-pass.js';
import { improve } from './improve.js';
import { joinScores, laneScores } from './lane.js';
import type { Planner } from './plan.js';
import { planOfLanes } from './plan-of-lanes.js';
import { compareScores } from './score.js';
import { type Lanes, type ShopFloor, shopFloor } from './shop-floor.js';

/**
 * A first sound plan: lots are dispatched by the ATCS rule for each setting of a small grid, the best plan by
 * score is kept and then, if `effort.iterations` allows, improved by moving lots one at a time. The same
 * problem, seed and iterations give the same plan.
 */
export const dispatch: Planner = (problem, effort) => {
  const floor = shopFloor(problem);
  return planOfLanes(floor, improve(floor, bestOfGrid(floor, effort.shouldStop), effort));
};

// Look-ahead in mean processing times and set-up shyness in mean set-ups, the most often useful first. The
// published rules for k1 and k2 give values inside these ranges; a grid asks no estimate of how tight due
// dates are.
const DUE_SCALES = [2, 0.8, 0.3, 4.5, 0.15, 9];
const SET_UP_SCALES = [0.6, 0.25, 0.1, 1.5];
const JOINS = ['free-machine', 'soonest-end'] as const;

// Joining the soonest end pays where lots are few and the last of them decide; from 150 lots up it never won
// in 24 shops drawn by chance, so large shops are spared the time.
const MOST_LOTS_FOR_SOONEST_END = 100;

// A pass looks at about lots^2/2 pairs. What would go past some 40 million pairs is left out, so that thousands
// of lots still plan within seconds.
const MOST_PAIRS = 40_000_000;

export function bestOfGrid(floor: ShopFloor, shouldStop: (() => boolean) | undefined): Lanes {
  const rule = ruleJobs(floor);
  let best: Lanes | undefined;
  let bestScore = joinScores([]);
  for (const settings of grid(floor)) {
    if (best && shouldStop?.()) break;
    const lanes = dispatchPass(floor, rule, settings);
    const score = joinScores(laneScores(floor, lanes));
    if (!best || compareScores(score, bestScore) < 0) [best, bestScore] = [lanes, score];
  }
  return best ?? floor.frozen;
}

function grid(floor: ShopFloor): readonly PassSettings[] {
  const { meanProcessMinutes, meanSetUpMinutes } = means(floor);
  const lots = floor.problem.jobs.length;
  const joinsTried = lots > MOST_LOTS_FOR_SOONEST_END ? JOINS.slice(0, 1) : JOINS;
  const settings = joinsTried.flatMap((joins) =>
    SET_UP_SCALES.flatMap((k2) =>
      DUE_SCALES.map((k1) => ({ joins, scale: atcsScale({ k1, k2, meanProcessMinutes, meanSetUpMinutes }) })),
    ),
  );
  return settings.slice(0, Math.max(4, Math.floor(MOST_PAIRS / (lots ** 2 / 2 + 1))));
}

/** Mean time of a run over all machines able to make it, and of the set-up from each job to the next two in the list. */
function means(floor: ShopFloor): { meanProcessMinutes: number; meanSetUpMinutes: number } {
  const { jobClass, minutes } = floor.changes;
  const runs = floor.able.flatMap((machines, job) => machines.map((m) => floor.processMinutes[m]![job]!));
  const setUps = floor.able.flatMap((machines, job) =>
    [1, 2].flatMap((ahead) => {
      const from = jobClass[(job + ahead) % jobClass.length]!;
      return machines.map((m) => minutes(m, from, jobClass[job]!));
    }),
  );
  return { meanProcessMinutes: mean(runs), meanSetUpMinutes: mean(setUps) };
}

/**
 * Lots that only fill a bin have no due date, but the rule needs one: they count as due when all work might
 * be done, so that they are taken where a machine is set up for them and promised lots can spare the time.
 */
function ruleJobs(floor: ShopFloor): RuleJobs {
  const { jobs, machines } = floor.problem;
  const shortest = floor.able.map((able, job) =>
    Math.min(...able.map((m) => floor.processMinutes[m]![job]!)),
  );
  const allDone = shortest.reduce((sum, minutes) => sum + minutes, 0) / machines.length;
  const latest = jobs.reduce((late, job) => Math.max(late, job.dueMinute ?? 0, job.releaseMinute), allDone);
  const meanWeight = mean(jobs.map((job) => job.weight)) || 1;
  return {
    weight: Float64Array.from(jobs, (job) => Math.max(job.weight, LEAST_WEIGHT * meanWeight)),
    dueMinute: Float64Array.from(jobs, (job) => job.dueMinute ?? latest),
    releaseMinute: Float64Array.from(jobs, (job) => job.releaseMinute),
  };
}

// A lot nobody waits for still wants its turn, and a weight of zero has no logarithm.
const LEAST_WEIGHT = 0.01;

const mean = (values: readonly number[]): number =>
  values.length === 0 ? 0 : values.reduce((sum, value) => sum + value, 0) / values.length;
