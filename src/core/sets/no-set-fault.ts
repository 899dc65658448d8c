import { invariant } from '../foundation/index.js';
import type { SetChain, SetQuestion } from './set-chain.js';
import type { SetPosition } from './set-position.js';
import { brokenRule, type NeighbourRule, pitchFalls, refusal } from './set-rules.js';
import type { StringCandidate } from './string-candidate.js';

/** Why no set can be chosen, and the nearest thing that would work. Positions count from 1, the treble. */
export type NoSetFault =
  | { readonly code: 'set.no-candidates' }
  | { readonly code: 'set.pin-unknown'; readonly position: number; readonly pinned: readonly string[] }
  | {
      /** Nothing offered is of the kind that the position needs, or the shop's limits shut out all that is. */
      readonly code: 'set.no-string-of-kind';
      readonly position: number;
      readonly kind: 'plain' | 'wound' | 'any';
      readonly thickestPlainThou: number;
      readonly thinnestWoundThou: number;
      /** What is offered of the kind and lies nearest to the limits; left out where nothing is. */
      readonly nearestGaugeThou?: number;
    }
  | {
      readonly code: 'set.strength-unknown';
      readonly position: number;
      readonly candidates: readonly string[];
    }
  | {
      /** Every string that may stand here would be pulled past the stress limit. */
      readonly code: 'set.would-break';
      readonly position: number;
      readonly pinned: boolean;
      readonly kind: 'plain' | 'wound' | 'any';
      readonly speakingLengthM: number;
      readonly frequencyHz: number;
      readonly stressLimit: number;
      /** The string that goes highest. */
      readonly strongestId: string;
      readonly strongestGaugeThou: number;
      /** The highest pitch it may be tuned to at this length ... */
      readonly highestFrequencyHz: number;
      /** ... and the longest scale that would bear this pitch. */
      readonly longestSpeakingLengthM: number;
    }
  | {
      /** The string before leaves nothing that may follow it. */
      readonly code: 'set.neighbours-contradict';
      readonly position: number;
      readonly rule: NeighbourRule;
      /** The thinnest that can stand before it, and the thickest that can stand here. */
      readonly leastGaugeBeforeThou: number;
      readonly mostGaugeHereThou: number;
      /** Positions up to this one whose string is given: pins that may contradict each other. */
      readonly pinnedPositions: readonly number[];
    };

/** Why the chain has no way through, looked for from the treble. */
export function noSetFault(question: SetQuestion, chain: SetChain): NoSetFault {
  if (question.candidates.length === 0) return { code: 'set.no-candidates' };
  const bare = chain.allowed.findIndex((candidates) => candidates.length === 0);
  return bare === -1 ? contradiction(question, chain) : bareFault(question, bare);
}

function bareFault({ positions, candidates, rules }: SetQuestion, at: number): NoSetFault {
  const position = positions[at]!;
  const refused = candidates.map((candidate) => ({ candidate, why: refusal(candidate, position, rules) }));
  const of = (...reasons: (typeof refused)[number]['why'][]): StringCandidate[] =>
    refused.filter(({ why }) => reasons.includes(why)).map(({ candidate }) => candidate);
  const breaking = of('would-break');
  if (breaking.length > 0) return wouldBreak(breaking, position, at, rules.stressLimit);
  if (position.pinned) return { code: 'set.pin-unknown', position: at + 1, pinned: position.pinned };
  const unknown = of('strength-unknown');
  if (unknown.length > 0)
    return { code: 'set.strength-unknown', position: at + 1, candidates: unknown.map(({ id }) => id) };
  const shutOut = of('plain-too-thick', 'wound-too-thin');
  const nearest = shutOut.toSorted((a, b) => beyondLimit(a) - beyondLimit(b))[0];
  return {
    code: 'set.no-string-of-kind',
    position: at + 1,
    kind: position.kind ?? 'any',
    thickestPlainThou: rules.thickestPlainThou,
    thinnestWoundThou: rules.thinnestWoundThou,
    ...(nearest ? { nearestGaugeThou: nearest.gaugeThou } : {}),
  };

  function beyondLimit(candidate: StringCandidate): number {
    const limit = candidate.kind === 'plain' ? rules.thickestPlainThou : rules.thinnestWoundThou;
    return Math.abs(candidate.gaugeThou - limit);
  }
}

/** f = sqrt(limit F/mu) / (2 L), and the same for L. */
function wouldBreak(
  breaking: readonly StringCandidate[],
  position: SetPosition,
  at: number,
  stressLimit: number,
): NoSetFault {
  const waveSpeed = (candidate: StringCandidate): number =>
    Math.sqrt((stressLimit * candidate.breakingLoadN!) / candidate.linearDensityKgPerM);
  const strongest = breaking.reduce((a, b) => (waveSpeed(b) > waveSpeed(a) ? b : a));
  const speed = waveSpeed(strongest);
  return {
    code: 'set.would-break',
    position: at + 1,
    pinned: position.pinned !== undefined,
    kind: position.kind ?? 'any',
    speakingLengthM: position.speakingLengthM,
    frequencyHz: position.frequencyHz,
    stressLimit,
    strongestId: strongest.id,
    strongestGaugeThou: strongest.gaugeThou,
    highestFrequencyHz: speed / (2 * position.speakingLengthM),
    longestSpeakingLengthM: speed / (2 * position.frequencyHz),
  };
}

function contradiction({ positions }: SetQuestion, { allowed }: SetChain): NoSetFault {
  let reached = allowed[0]!;
  for (let at = 1; at < positions.length; at++) {
    const here = allowed[at]!;
    const falls = pitchFalls(positions[at - 1]!, positions[at]!);
    const next = here.filter((right) => reached.some((left) => !falls || !brokenRule(left, right)));
    if (next.length === 0) return contradictionAt(positions, at, reached, here);
    reached = next;
  }
  invariant(false, 'a set was missed though every position can follow the last');
}

function contradictionAt(
  positions: readonly SetPosition[],
  at: number,
  before: readonly StringCandidate[],
  here: readonly StringCandidate[],
): NoSetFault {
  const rules = before.flatMap((left) => here.map((right) => brokenRule(left, right)));
  return {
    code: 'set.neighbours-contradict',
    position: at + 1,
    rule: rules.includes('plain-after-wound') ? 'plain-after-wound' : 'gauge-falls',
    leastGaugeBeforeThou: Math.min(...before.map(({ gaugeThou }) => gaugeThou)),
    mostGaugeHereThou: Math.max(...here.map(({ gaugeThou }) => gaugeThou)),
    pinnedPositions: positions.slice(0, at + 1).flatMap(({ pinned }, index) => (pinned ? [index + 1] : [])),
  };
}
