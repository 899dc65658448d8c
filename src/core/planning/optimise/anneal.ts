import type { Chance } from '../../foundation/index.js';
import type { PlanScore } from '../plan.js';
import { compareScores } from '../score.js';
import type { Lanes } from '../shop-floor.js';
import { drawMove, type Move } from './moves.js';
import type { SearchFloor } from './search-floor.js';
import { COST, END, LATE, MOVED, type SearchLanes, searchLanes } from './search-lanes.js';

/** How much each part of the score weighs while searching: a new best is chosen by the ordered comparison alone. */
export interface SearchWeights {
  readonly late: number;
  readonly cost: number;
  readonly moved: number;
  readonly end: number;
  /** Of the mean of the machines' ends: evens out what the last end alone does not show. */
  readonly ends: number;
}

export interface Leg {
  readonly start: Lanes;
  readonly moves: number;
  /** In units of the weighed score. */
  readonly hottest: number;
  readonly coolest: number;
  readonly weights: SearchWeights;
  readonly chance: Chance;
  readonly shouldStop: () => boolean;
}

export interface Found {
  readonly lanes: Lanes;
  readonly score: PlanScore;
}

/** Moves between two looks at whether to stop, and two steps of cooling. */
const STRIDE = 256;

/**
 * One leg of simulated annealing (S. Kirkpatrick, C. D. Gelatt & M. P. Vecchi, Science 220 (1983) 671): moves that make the
 * plan worse by d are taken with chance exp(-d/T), T falling geometrically. Gives the best plan met, by the ordered score.
 */
export function anneal(search: SearchFloor, leg: Leg): Found {
  const { weights, chance } = leg;
  const lanes = searchLanes(search, leg.start);
  const movable = movableLots(search, lanes);
  const standing = standingOf(search, lanes);
  let best: Found = { lanes: leg.start, score: standing.score() };
  if (movable.length === 0) return best;
  let value = standing.weighed(weights);
  const cooling = (leg.coolest / leg.hottest) ** (STRIDE / Math.max(STRIDE, leg.moves));
  let temperature = leg.hottest;
  for (let tried = 0; tried < leg.moves; tried++) {
    if (tried % STRIDE === 0 && tried > 0) {
      if (leg.shouldStop()) break;
      temperature *= cooling;
    }
    const move = drawMove(search, lanes, drawLots(search, lanes, movable, chance));
    if (!move) continue;
    const most = value - temperature * Math.log(1 - chance.next());
    const after = standing.attempt(move, weights, most);
    if (after > most) continue;
    standing.take(move);
    value = after;
    if (standing.isBelow(best.score)) best = { lanes: lanes.copy(), score: standing.score() };
  }
  return best;
}

/** Lots that are not under way. */
const movableLots = (search: SearchFloor, lanes: SearchLanes): Int32Array =>
  Int32Array.from(
    Array.from({ length: search.lots }, (_, lot) => lot).filter(
      (lot) => lanes.placeOf[lot]! >= search.frozen[lanes.machineOf[lot]!]!,
    ),
  );

/** Half the time a lot that matters: of the machine that ends last, or the later of two. */
function drawLots(search: SearchFloor, lanes: SearchLanes, movable: Int32Array, chance: Chance) {
  const any = () => movable[Math.floor(chance.next() * movable.length)]!;
  const other = any();
  let lot = any();
  if (chance.next() < 0.5)
    lot = search.isPlain ? lotOfLast(search, lanes, lot, chance) : laterOf(lanes, lot, any());
  return { lot, other, chance };
}

function lotOfLast(search: SearchFloor, lanes: SearchLanes, lot: number, chance: Chance): number {
  let last = 0;
  for (let machine = 1; machine < search.machines; machine++)
    if (lanes.tally(machine, END) > lanes.tally(last, END)) last = machine;
  const [first, length] = [search.frozen[last]!, lanes.length(last)];
  return length > first ? lanes.lotAt(last, chance.whole(first, length - 1)) : lot;
}

function laterOf(lanes: SearchLanes, one: number, other: number): number {
  const late = (lot: number) => lanes.lateAt(lanes.machineOf[lot]!, lanes.placeOf[lot]!);
  return late(other) > late(one) ? other : one;
}

/** The sums over all lanes as they stand, and as a move would leave them. */
function standingOf({ machines }: SearchFloor, lanes: SearchLanes) {
  const tallies = Array.from({ length: machines }, () => new Float64Array(4));
  const totals = new Float64Array(4);
  const after = new Float64Array(4);
  const tried = [new Float64Array(4), new Float64Array(4)];
  const read = (machine: number) => {
    for (const what of [LATE, COST, MOVED, END]) tallies[machine]![what] = lanes.tally(machine, what);
  };
  const sum = () => {
    totals.fill(0);
    for (const tally of tallies) for (let what = 0; what < 4; what++) totals[what]! += tally[what]!;
  };
  for (let machine = 0; machine < machines; machine++) read(machine);
  sum();
  const weigh = (sums: Float64Array, last: number, weights: SearchWeights): number =>
    weights.late * sums[LATE]! +
    weights.cost * sums[COST]! +
    weights.moved * sums[MOVED]! +
    (weights.ends * sums[END]!) / machines +
    weights.end * last;
  const lastEnd = (changed: number, also: number): number => {
    let last = 0;
    for (let machine = 0; machine < machines; machine++)
      if (machine !== changed && machine !== also) last = Math.max(last, tallies[machine]![END]!);
    return last;
  };
  const score = (): PlanScore => ({
    weightedLateMinutes: totals[LATE]!,
    changeCostMinor: totals[COST]!,
    movedLots: totals[MOVED]!,
    makespanMinutes: lastEnd(-1, -1),
  });
  return {
    score,
    weighed: (weights: SearchWeights) => weigh(totals, lastEnd(-1, -1), weights),
    /** Infinite as soon as it is clear that it weighs more than `most`. */
    attempt: (move: Move, weights: SearchWeights, most: number): number => {
      const [one, two] = move;
      after.set(totals);
      let last = lastEnd(one.machine, two?.machine ?? -1);
      for (let at = 0; at < move.length; at++) {
        const change = move[at]!;
        const would = tried[at]!;
        const others = after[LATE]! - tallies[change.machine]![LATE]!;
        lanes.attempt(change, would, most / weights.late - others);
        if (would[LATE] === Number.POSITIVE_INFINITY) return Number.POSITIVE_INFINITY;
        for (let what = 0; what < 4; what++) after[what]! += would[what]! - tallies[change.machine]![what]!;
        last = Math.max(last, would[END]!);
      }
      return weigh(after, last, weights);
    },
    take: (move: Move) => {
      for (const change of move) {
        lanes.apply(change);
        read(change.machine);
      }
      sum();
    },
    // What is later cannot be better: the rest need not be worked out.
    isBelow: (best: PlanScore): boolean =>
      totals[LATE]! <= best.weightedLateMinutes && compareScores(score(), best) < 0,
  };
}
