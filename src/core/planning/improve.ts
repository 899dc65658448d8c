import { type Chance, seededChance } from '../foundation/index.js';
import { joinScores, laneScore, laneScores } from './lane.js';
import type { PlanEffort } from './plan.js';
import { compareScores } from './score.js';
import type { Lanes, ShopFloor } from './shop-floor.js';

/**
 * Moves one lot at a time to a place drawn by chance, on its own machine or another able one, and keeps the
 * move unless the score grows worse. Work under way does not move. Stops after `effort.iterations` moves or
 * when told to.
 */
export function improve(floor: ShopFloor, start: Lanes, effort: PlanEffort): Lanes {
  const lanes = start.map((lane) => [...lane]);
  const movable = [...floor.problem.jobs.keys()].filter((job) => !floor.problem.jobs[job]!.frozen);
  if (movable.length === 0) return lanes;

  const chance = seededChance(effort.seed);
  const machineOf = new Map(lanes.flatMap((lane, machine) => lane.map((job) => [job, machine] as const)));
  const scores = laneScores(floor, lanes);
  let best = joinScores(scores);
  const report = Math.ceil(effort.iterations / 100);
  for (let i = 0; i < effort.iterations; i++) {
    if (effort.shouldStop?.()) break;
    if (i % report === 0) effort.onProgress?.(i / effort.iterations, best);
    const job = chance.pick(movable);
    const from = machineOf.get(job)!;
    const to = chance.pick(floor.able[job]!);
    const moved = moveJob(floor, lanes, { job, from, to, chance });
    const tried = [...scores];
    for (const [machine, lane] of moved) tried[machine] = laneScore(floor, machine, lane);
    const score = joinScores(tried);
    if (compareScores(score, best) > 0) continue;
    best = score;
    machineOf.set(job, to);
    for (const [machine, lane] of moved) {
      lanes[machine] = lane;
      scores[machine] = tried[machine]!;
    }
  }
  return lanes;
}

interface Move {
  readonly job: number;
  readonly from: number;
  readonly to: number;
  readonly chance: Chance;
}

/** The lanes that a move changes: one or two. */
function moveJob(floor: ShopFloor, lanes: Lanes, { job, from, to, chance }: Move): Map<number, number[]> {
  const without = lanes[from]!.filter((other) => other !== job);
  const target = from === to ? without : [...lanes[to]!];
  target.splice(chance.whole(floor.frozen[to]!.length, target.length), 0, job);
  return new Map([
    [from, without],
    [to, target],
  ]);
}
