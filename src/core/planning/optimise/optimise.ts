import { seededChance } from '../../foundation/index.js';
import { bestOfGrid } from '../dispatch.js';
import { joinScores, laneScores } from '../lane.js';
import type { Planner, PlanScore } from '../plan.js';
import { planOfLanes } from '../plan-of-lanes.js';
import { compareScores } from '../score.js';
import { shopFloor } from '../shop-floor.js';
import { anneal, type Found, type SearchWeights } from './anneal.js';
import { type SearchFloor, searchFloor } from './search-floor.js';

/**
 * The best plan found: from the dispatching rule's plan on by legs of simulated annealing, each longer than the one
 * before, and each from the best so far. Good early, better later; the same problem, seed and iterations give the same
 * plan.
 */
export const optimise: Planner = (problem, effort) => {
  const floor = shopFloor(problem);
  const search = searchFloor(floor);
  const shouldStop = () => effort.shouldStop?.() ?? false;
  const lanes = bestOfGrid(floor, effort.shouldStop);
  let best: Found = { lanes, score: joinScores(laneScores(floor, lanes)) };
  const chance = seededChance(effort.seed);
  let spent = 0;
  for (let leg = 0; spent < effort.iterations && !shouldStop(); leg++) {
    const moves = legLength(FIRST_LEG * GROWTH ** leg, effort.iterations - spent);
    const weights = weightsFor(search, best.score);
    const found = anneal(search, {
      start: best.lanes,
      moves,
      ...heat(search, best.score),
      weights,
      chance,
      shouldStop,
    });
    if (compareScores(found.score, best.score) < 0) best = found;
    spent += moves;
    effort.onProgress?.(spent / effort.iterations, best.score);
  }
  return planOfLanes(floor, best.lanes);
};

const FIRST_LEG = 100_000;
const GROWTH = 2;

/** A leg that would leave less than half its length behind takes the rest along. */
const legLength = (wished: number, left: number): number => (left < 1.5 * wished ? left : wished);

/** A change-over of middling cost weighs as much as a minute late; where nothing is late, cost alone counts, then calm. */
function weightsFor({ lots, isPlain }: SearchFloor, { changeCostMinor }: PlanScore): SearchWeights {
  const perLot = changeCostMinor / Math.max(1, lots);
  return {
    late: 1,
    cost: perLot > 0 ? 1 / perLot : 0,
    moved: 0.05,
    end: isPlain ? 1 : 0.001,
    ends: isPlain ? 0.1 : 0.001,
  };
}

function heat(
  { isPlain, lots }: SearchFloor,
  score: PlanScore,
): { readonly hottest: number; readonly coolest: number } {
  if (isPlain) return { hottest: 0.03 * score.makespanMinutes, coolest: 0.05 };
  const hottest = Math.max(1, (2 * score.weightedLateMinutes) / lots);
  return { hottest, coolest: hottest / 200 };
}
