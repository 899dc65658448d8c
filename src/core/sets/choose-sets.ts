import { fail, invariant, type Result, succeed } from '../foundation/index.js';
import { tensionN } from '../string/index.js';
import { bendForceN } from './bend-force.js';
import { bestChains, type Chain } from './best-chains.js';
import type { ChosenSet, ChosenString } from './chosen-set.js';
import { compareSets, type RankedSet } from './compare-sets.js';
import { type NoSetFault, noSetFault } from './no-set-fault.js';
import { type SetChain, type SetQuestion, setChain, TICKS_PER_UNIT } from './set-chain.js';
import type { SetPosition } from './set-position.js';
import { type SetRules, withThirdSettled } from './set-rules.js';
import { type SetWeights, USUAL_WEIGHTS } from './set-weights.js';
import { inOrder, type StringCandidate } from './string-candidate.js';

export interface SetWish {
  /** Treble first. */
  readonly positions: readonly SetPosition[];
  readonly candidates: readonly StringCandidate[];
  readonly rules: SetRules;
  /** What is left out is as usual. */
  readonly weights?: Partial<SetWeights>;
  /** How many sets to show at most; 5 where left out. */
  readonly count?: number;
  /** How many sets are wanted: a string counts as on the shelf where that many lie there; 1 where left out. */
  readonly sets?: number;
}

/**
 * The best sets for a wish, best first, exactly; two that differ only in recipe count as one.
 *
 * Least sum over positions of w (pull (ln T - ln T*)² + bend (ln F - ln F*)²) + shelf, recipe and wire costs,
 * and over neighbours of step (ln T - ln T_next - step wished)² (+ bend (ln F - ln F_next)² where neither has a
 * wished bend force), T = mu (2 L f)². No string is pulled past the stress limit; where pitch falls from a
 * string to the next, gauge does not fall and no plain string follows a wound one; plain and wound keep to
 * the shop's limits; pinned strings stand. Where no set does all that: why, and what would.
 */
export function chooseSets(wish: SetWish): Result<readonly ChosenSet[], NoSetFault> {
  invariant(wish.positions.length > 0, 'a set has at least one string');
  const question: SetQuestion = {
    positions: withThirdSettled(wish.positions, wish.rules),
    candidates: inOrder(wish.candidates),
    rules: wish.rules,
    weights: { ...USUAL_WEIGHTS, ...wish.weights },
    sets: wish.sets ?? 1,
  };
  const chain = setChain(question);
  const chains = bestChains(chain, wish.count ?? 5);
  if (chains.length === 0) return fail(noSetFault(question, chain));
  return succeed(
    compareSets(
      chains.map((found) => rankedSet(question, chain, found)),
      question,
    ),
  );
}

function rankedSet({ positions }: SetQuestion, { allowed }: SetChain, found: Chain): RankedSet {
  return {
    cost: found.ticks / TICKS_PER_UNIT,
    strings: found.choices.map((choice, at) => chosenString(allowed[at]![choice]!, positions[at]!, at + 1)),
  };
}

function chosenString(candidate: StringCandidate, position: SetPosition, place: number): ChosenString {
  const { linearDensityKgPerM, axialStiffnessN, breakingLoadN } = candidate;
  const pullN = tensionN(linearDensityKgPerM, position.speakingLengthM, position.frequencyHz);
  return {
    position: place,
    candidate,
    tensionN: pullN,
    wishedTensionN: position.targetTensionN,
    stressShare: breakingLoadN === undefined ? undefined : pullN / breakingLoadN,
    bendForceN: bendForceN({ tensionN: pullN, axialStiffnessN }, position),
    ...(position.targetBendForceN === undefined ? {} : { wishedBendForceN: position.targetBendForceN }),
  };
}
