import { invariant } from '../foundation/index.js';
import { tensionN } from '../string/index.js';
import type { SetPosition } from './set-position.js';
import type { StringCandidate } from './string-candidate.js';

/** What no set may break. */
export interface SetRules {
  /** Most that the pull may be of the load that breaks the core. */
  readonly stressLimit: number;
  readonly thickestPlainThou: number;
  readonly thinnestWoundThou: number;
  /** Whether the third string (of a twelve-string the lower of the third course) is wound; either where left out. */
  readonly woundThird?: boolean;
}

/** Why a candidate may not stand in a position. */
export type Refusal =
  | 'not-pinned'
  | 'wrong-kind'
  | 'plain-too-thick'
  | 'wound-too-thin'
  | 'strength-unknown'
  | 'would-break';

/** Why a candidate may not stand in a position whose kind is settled; undefined where it may. */
export function refusal(
  candidate: StringCandidate,
  position: SetPosition,
  rules: SetRules,
): Refusal | undefined {
  const { pinned } = position;
  if (pinned && !pinned.includes(candidate.id)) return 'not-pinned';
  if (!pinned) {
    if (position.kind && candidate.kind !== position.kind) return 'wrong-kind';
    if (candidate.kind === 'plain' && candidate.gaugeThou > rules.thickestPlainThou) return 'plain-too-thick';
    if (candidate.kind === 'wound' && candidate.gaugeThou < rules.thinnestWoundThou) return 'wound-too-thin';
    if (candidate.breakingLoadN === undefined) return 'strength-unknown';
  }
  const pullN = tensionN(candidate.linearDensityKgPerM, position.speakingLengthM, position.frequencyHz);
  const breaks = pullN > rules.stressLimit * (candidate.breakingLoadN ?? Number.POSITIVE_INFINITY);
  return breaks ? 'would-break' : undefined;
}

/** The positions with the wish for a wound or plain third string written into the one it means. */
export function withThirdSettled(positions: readonly SetPosition[], rules: SetRules): readonly SetPosition[] {
  const { woundThird } = rules;
  const third = thirdStringIndex(positions.length);
  if (woundThird === undefined || third === undefined) return positions;
  return positions.map((position, index) =>
    index === third && position.kind === undefined
      ? { ...position, kind: woundThird ? 'wound' : 'plain' }
      : position,
  );
}

/** Of six strings or more the third; of a twelve-string the second of the third course; of basses none. */
function thirdStringIndex(count: number): number | undefined {
  if (count === 12) return 5;
  return count >= 6 ? 2 : undefined;
}

/** What two neighbours may not do. */
export type NeighbourRule = 'gauge-falls' | 'plain-after-wound';

/**
 * The rule that a string and the next break where pitch falls from one to the other: the next is no thinner,
 * and no plain string follows a wound one. The second, held at every step, allows one change from plain to
 * wound at most. Where pitch does not fall nothing is asked: from the low string of a twelve-string's course
 * up to the thin one of the next, thinner and plain is just what is wanted.
 */
export function brokenRule(left: StringCandidate, right: StringCandidate): NeighbourRule | undefined {
  if (right.gaugeThou < left.gaugeThou) return 'gauge-falls';
  return left.kind === 'wound' && right.kind === 'plain' ? 'plain-after-wound' : undefined;
}

/** Whether pitch falls from a position to the next; less than a thousandth of a cent is no fall but rounding. */
export function pitchFalls(left: SetPosition, right: SetPosition): boolean {
  invariant(left.frequencyHz > 0 && right.frequencyHz > 0, 'a position sounds at a positive frequency');
  return right.frequencyHz < left.frequencyHz * (1 - 5e-7);
}
