import { tensionN } from '../string/index.js';
import { type BendForce, bendForceAt } from './bend-force.js';
import type { ChainLink, ChainProblem, Joint } from './best-chains.js';
import type { SetPosition } from './set-position.js';
import { brokenRule, pitchFalls, refusal, type SetRules } from './set-rules.js';
import type { SetWeights } from './set-weights.js';
import { looksLike, type StringCandidate } from './string-candidate.js';

export interface SetQuestion {
  readonly positions: readonly SetPosition[];
  /** In the order of `inOrder`. */
  readonly candidates: readonly StringCandidate[];
  readonly rules: SetRules;
  readonly weights: SetWeights;
  /** How many of a string must lie on the shelf for it to count as there. */
  readonly sets: number;
}

/** The choice of a set as a chain of positions. */
export interface SetChain extends ChainProblem {
  /** For each position the candidates that may stand there, as the chain's choices count them. */
  readonly allowed: readonly (readonly StringCandidate[])[];
}

/**
 * Costs are counted in whole ticks of 2^-30, a thousand millionth: the order of summing then cannot change a
 * total, and equal sets are equal. A tick is 0.003 % of pull beside the wished one.
 */
export const TICKS_PER_UNIT = 2 ** 30;

/** A bend that no hand reaches counts as one that takes ten times the force wished. */
const LN_BEYOND_REACH = Math.log(10);

/** The chain whose cheapest ways are the best sets; see `chooseSets` for the costs. */
export function setChain(question: SetQuestion): SetChain {
  const places = placesOf(question);
  return {
    links: places.map((place) => link(place, question)),
    joints: places.slice(1).map((right, at) => joint(places[at]!, right, question.weights)),
    allowed: places.map(({ allowed }) => allowed),
  };
}

/** A position with the candidates that may stand there, and what they would do there, side by side. */
interface Place {
  readonly position: SetPosition;
  readonly allowed: readonly StringCandidate[];
  readonly looks: Int32Array;
  readonly lnPulls: Float64Array;
  /** NaN where out of reach; left out where bending does not count. */
  readonly lnBends: Float64Array | undefined;
}

function placesOf({ positions, candidates, rules, weights }: SetQuestion): Place[] {
  const bendForce = sharedBendForces();
  const lookOf = lookNumbers(candidates);
  return positions.map((position) => {
    const allowed = candidates.filter((each) => refusal(each, position, rules) === undefined);
    const pullsN = allowed.map(({ linearDensityKgPerM }) =>
      tensionN(linearDensityKgPerM, position.speakingLengthM, position.frequencyHz),
    );
    return {
      position,
      allowed,
      looks: Int32Array.from(allowed.map((each) => lookOf.get(each)!)),
      lnPulls: Float64Array.from(pullsN.map(Math.log)),
      lnBends: weights.bend > 0 ? lnBends(allowed, pullsN, bendForce(position)) : undefined,
    };
  });
}

function lookNumbers(candidates: readonly StringCandidate[]): Map<StringCandidate, number> {
  const numbers = new Map<StringCandidate, number>();
  let number = 0;
  for (const [index, candidate] of candidates.entries()) {
    if (index > 0 && !looksLike(candidates[index - 1]!, candidate)) number++;
    numbers.set(candidate, number);
  }
  return numbers;
}

/** Positions of the same lengths share their curve of bend force. */
function sharedBendForces(): (position: SetPosition) => BendForce {
  const curves = new Map<string, BendForce>();
  return (position) => {
    const lengths = `${position.speakingLengthM} ${position.stretchingLengthM}`;
    const curve = curves.get(lengths) ?? bendForceAt(position);
    curves.set(lengths, curve);
    return curve;
  };
}

const lnBends = (
  allowed: readonly StringCandidate[],
  pullsN: readonly number[],
  bendForce: BendForce,
): Float64Array =>
  Float64Array.from(
    allowed.map(({ axialStiffnessN }, index) =>
      Math.log(bendForce(pullsN[index]!, axialStiffnessN) ?? Number.NaN),
    ),
  );

function link(
  { position, allowed, looks, lnPulls, lnBends }: Place,
  { weights, sets }: SetQuestion,
): ChainLink {
  const lnPullWished = Math.log(position.targetTensionN);
  const lnBendWished =
    position.targetBendForceN === undefined ? undefined : Math.log(position.targetBendForceN);
  const ticks = allowed.map((candidate, choice) => {
    let cost = position.weight * weights.pull * (lnPulls[choice]! - lnPullWished) ** 2;
    if (lnBends && lnBendWished !== undefined)
      cost += position.weight * weights.bend * lnDistance(lnBends[choice]!, lnBendWished) ** 2;
    if (candidate.onShelf < sets) cost += weights.notOnShelf;
    if (candidate.newRecipe) cost += weights.newRecipe;
    cost += weights.extraWire * (candidate.extraWires ?? 0);
    return Math.round(TICKS_PER_UNIT * cost);
  });
  return { ticks: Float64Array.from(ticks), looks };
}

function joint(left: Place, right: Place, weights: SetWeights): Joint {
  const before = left.position;
  const after = right.position;
  const falls = pitchFalls(before, after);
  const step = before.stepToNext ?? Math.log(before.targetTensionN / after.targetTensionN);
  const bendsUnwished = before.targetBendForceN === undefined && after.targetBendForceN === undefined;
  const bends = bendsUnwished &&
    left.lnBends &&
    right.lnBends && { left: left.lnBends, right: right.lnBends };
  return (l, r) => {
    if (falls && brokenRule(left.allowed[l]!, right.allowed[r]!)) return Number.POSITIVE_INFINITY;
    const offStep = left.lnPulls[l]! - right.lnPulls[r]! - step;
    let cost = weights.step * offStep * offStep;
    if (bends) cost += weights.bend * lnDistance(bends.left[l]!, bends.right[r]!) ** 2;
    return Math.round(TICKS_PER_UNIT * cost);
  };
}

const lnDistance = (a: number, b: number): number => {
  const distance = a - b;
  return Number.isNaN(distance) ? LN_BEYOND_REACH : distance;
};
