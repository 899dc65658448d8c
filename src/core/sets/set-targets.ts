import { fail, type Result, succeed } from '../foundation/index.js';
import { tensionN } from '../string/index.js';
import { frequencyHz } from '../units/index.js';
import { bendForceN } from './bend-force.js';
import { carriedTo, type StringFeel } from './carry-feel.js';
import type { Instrument, Tuning } from './instrument.js';
import { type SetPosition, usualStretchingLengthM } from './set-position.js';
import { type SetWeights, USUAL_WEIGHTS } from './set-weights.js';

/** What a player wants to feel, as far as pulls go. */
export interface TargetWish {
  readonly target: 'feel' | 'even' | 'graded' | 'free';
  /** Even: one pull (or one a string). Graded: the pull of the treble string. Free: one a string, or one for all. N. */
  readonly pullsN?: readonly number[];
  /** Graded: pull grows by this share from one string to the next towards the bass. */
  readonly gradePerString?: number;
  readonly heavierBass?: number;
  readonly heavierTreble?: number;
  /** 0: match the pull; 1: match the force that bends a whole tone; between: a blend. */
  readonly bendShare?: number;
}

/** A set that is liked, where it is liked. Strings treble first. */
export interface LikedSet {
  readonly instrument: Instrument;
  readonly tuning: Tuning;
  readonly strings: readonly { readonly linearDensityKgPerM: number; readonly axialStiffnessN: number }[];
}

export interface SetTargets {
  readonly positions: readonly SetPosition[];
  readonly weights: Pick<SetWeights, 'pull' | 'bend' | 'step'>;
}

export type TargetFault =
  | {
      /** Tuning or liked set do not have as many strings as their instrument. */
      readonly code: 'target.strings-do-not-match';
      readonly of: 'tuning' | 'liked-tuning' | 'liked-strings';
      readonly expected: number;
      readonly given: number;
    }
  | { readonly code: 'target.liked-set-missing' }
  | { readonly code: 'target.pulls-missing'; readonly target: TargetWish['target'] }
  | { readonly code: 'target.pulls-count'; readonly expected: number; readonly given: number }
  | { readonly code: 'target.grade-missing' };

export interface TargetQuestion {
  readonly instrument: Instrument;
  readonly tuning: Tuning;
  readonly wish: TargetWish;
  readonly liked?: LikedSet;
}

/**
 * Where each string of an instrument sounds and what pull (and bend force) is wished of it.
 *
 * Feel: those of the liked set on its own instrument and tuning, carried over by position from the treble (see `carriedTo`). Even: one
 * pull for all, that of the liked set on average where none is given. Graded: T_k = T_1 (1 + g)^(k-1), or about the
 * liked set's average. Free: as given. On top, heavier trebles and basses raise the wish on their side by
 * their share: the trebles are the first three strings, or half where there are fewer than six, or the first
 * three courses of a twelve-string.
 */
export function targetsFor(question: TargetQuestion): Result<SetTargets, TargetFault> {
  const { instrument, tuning, wish } = question;
  const count = instrument.scaleLengthsM.length;
  const mismatch = countFault(question);
  if (mismatch) return fail(mismatch);
  const wished = wishedFeel(question, count);
  if (!wished.ok) return wished;
  const bendShare = wish.bendShare ?? 0;
  const positions = sites(instrument, tuning).map((site, index): SetPosition => {
    const heavier = 1 + ((isTreble(index, count) ? wish.heavierTreble : wish.heavierBass) ?? 0);
    const { pullN, bendN } = wished.value[index]!;
    return {
      ...site,
      targetTensionN: pullN * heavier,
      ...(bendN === undefined ? {} : { targetBendForceN: bendN * heavier }),
      weight: 1,
    };
  });
  return succeed({
    positions,
    // The wished steps are steps of pull: they count as far as pull does.
    weights: { pull: 1 - bendShare, bend: bendShare, step: USUAL_WEIGHTS.step * (1 - bendShare) },
  });
}

function countFault({ instrument, tuning, liked }: TargetQuestion): TargetFault | undefined {
  const compared = [
    ['tuning', instrument.scaleLengthsM.length, tuning.pitches.length],
    ...(liked
      ? ([
          ['liked-tuning', liked.instrument.scaleLengthsM.length, liked.tuning.pitches.length],
          ['liked-strings', liked.instrument.scaleLengthsM.length, liked.strings.length],
        ] as const)
      : []),
  ] as const;
  const wrong = compared.find(([, expected, given]) => expected !== given);
  return wrong && { code: 'target.strings-do-not-match', of: wrong[0], expected: wrong[1], given: wrong[2] };
}

function wishedFeel(
  { wish, liked }: TargetQuestion,
  count: number,
): Result<readonly StringFeel[], TargetFault> {
  const { target, pullsN = [] } = wish;
  const likedFeel = liked && feelOf(liked);
  if (target === 'feel')
    return likedFeel ? succeed(carriedTo(likedFeel, count)) : fail({ code: 'target.liked-set-missing' });
  if (target === 'graded' && wish.gradePerString === undefined) return fail({ code: 'target.grade-missing' });
  if (target === 'free' || (target === 'even' && pullsN.length > 1)) return givenPulls(target, pullsN, count);
  const [given] = pullsN;
  const pullN = given ?? (likedFeel && averagePullN(likedFeel));
  if (pullN === undefined) return fail({ code: 'target.pulls-missing', target });
  const grade = target === 'graded' ? 1 + wish.gradePerString! : 1;
  // A pull given is the treble's; an average belongs in the middle of the set.
  const fixedAt = given === undefined ? (count - 1) / 2 : 0;
  return succeed(pulls(Array.from({ length: count }, (_, index) => pullN * grade ** (index - fixedAt))));
}

function givenPulls(
  target: TargetWish['target'],
  pullsN: readonly number[],
  count: number,
): Result<readonly StringFeel[], TargetFault> {
  const [first] = pullsN;
  if (first === undefined) return fail({ code: 'target.pulls-missing', target });
  if (pullsN.length === 1) return succeed(pulls(Array.from({ length: count }, () => first)));
  return pullsN.length === count
    ? succeed(pulls(pullsN))
    : fail({ code: 'target.pulls-count', expected: count, given: pullsN.length });
}

const pulls = (pullsN: readonly number[]): StringFeel[] =>
  pullsN.map((pullN) => ({ pullN, bendN: undefined }));

const averagePullN = (feel: readonly StringFeel[]): number =>
  feel.reduce((sum, { pullN }) => sum + pullN, 0) / feel.length;

/** Pull and bend force of a set where it is liked. */
function feelOf({ instrument, tuning, strings }: LikedSet): StringFeel[] {
  return sites(instrument, tuning).map((site, index) => {
    const { linearDensityKgPerM, axialStiffnessN } = strings[index]!;
    const pullN = tensionN(linearDensityKgPerM, site.speakingLengthM, site.frequencyHz);
    return { pullN, bendN: bendForceN({ tensionN: pullN, axialStiffnessN }, site) };
  });
}

/** Where each string of an instrument sounds. */
const sites = (instrument: Instrument, tuning: Tuning) =>
  instrument.scaleLengthsM.map((speakingLengthM, index) => ({
    speakingLengthM,
    frequencyHz: frequencyHz(tuning.pitches[index]!, tuning.referenceHz),
    stretchingLengthM: instrument.stretchingLengthsM?.[index] ?? usualStretchingLengthM(speakingLengthM),
  }));

function isTreble(index: number, count: number): boolean {
  if (count === 12) return index < 6;
  return index < Math.min(3, Math.floor(count / 2));
}
