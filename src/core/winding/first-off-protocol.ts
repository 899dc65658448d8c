import { normalBelow, normalBetween } from '../stats/index.js';
import type { FirstOffSpreads } from './first-off-spreads.js';

/** How many first strings are measured, at how many places, and what that can tell. */
export interface FirstOffProtocol {
  /** Of each position of the machine. */
  readonly stringsEach: number;
  readonly places: number;
  /** The position is stopped where the mean of its strings is off by more, m. */
  readonly stopBeyondM: number;
  /** A process this far off is to be stopped, and the chance that it is let go all the same. */
  readonly badM: number;
  readonly letGoChance: number;
  /** One no further off than this is to be let go, and the chance that it is stopped all the same. */
  readonly goodM: number;
  readonly stopChance: number;
  /** False where the most that is asked of a winder does not reach the chances wanted. */
  readonly isEnough: boolean;
}

/** One string in four out of tolerance is a bad process. */
const BAD_SHARE = 0.25;
/** A process centred to a quarter of the tolerance is good. */
const GOOD_SHARE_OF_TOLERANCE = 0.25;
const LET_GO_AT_MOST = 0.05;
const STOP_AT_MOST = 0.1;
/** A misread string shows only beside another. */
const LEAST_STRINGS = 2;
const MOST_STRINGS = 8;
/** Both ends and the middle at least, so that a taper shows and a belly. */
const LEAST_PLACES = 3;
const MOST_PLACES = 5;
// All of them our own choice: no source.

/**
 * The smallest number of strings, then of places, at which the mean of n strings at p places, of variance
 * (s_between^2 + (s_within^2 + s_micrometer^2) / p) / n, tells a bad process from a good one.
 */
export function firstOffProtocol(asked: {
  readonly spreads: FirstOffSpreads;
  readonly toleranceM: number;
  readonly positions: 1 | 2;
}): FirstOffProtocol {
  const { spreads, toleranceM, positions } = asked;
  const goodM = GOOD_SHARE_OF_TOLERANCE * toleranceM;
  const badM = badOffsetM(spreads.betweenM, toleranceM);
  const tried = Array.from({ length: MOST_PLACES - LEAST_PLACES + 1 }, (_, at) => {
    const places = LEAST_PLACES + at;
    const sample = smallestSample({
      deviationM: stringDeviationM(spreads, places),
      goodM,
      badM,
      // With two positions there are two that could be stopped for nothing.
      stopAtMost: STOP_AT_MOST / positions,
      letGoAtMost: LET_GO_AT_MOST,
      least: LEAST_STRINGS,
      most: MOST_STRINGS,
    });
    const { strings: stringsEach, ...odds } = sample;
    return { stringsEach, places, badM, goodM, ...odds };
  });
  return tried.reduce((best, other) => (other.stringsEach < best.stringsEach ? other : best));
}

/** A sample that tells good from bad, its limit and its chances of error. */
export interface SmallestSample {
  readonly strings: number;
  readonly stopBeyondM: number;
  readonly letGoChance: number;
  readonly stopChance: number;
  readonly isEnough: boolean;
}

/**
 * The smallest sample whose mean, of known spread, tells an offset that is good from one that is bad; the limit stands where
 * a good one is stopped just as often as is borne. Two-sided test; with the other tail out of sight it is
 * n >= ((z_a + z_b) s / (bad - good))^2 (E. G. Schilling, Acceptance Sampling in Quality Control, 1982, ch. 10). `most`
 * where none is enough.
 */
export function smallestSample(asked: {
  /** Of one string's mean about the process, m. */
  readonly deviationM: number;
  readonly goodM: number;
  readonly badM: number;
  readonly stopAtMost: number;
  readonly letGoAtMost: number;
  readonly least: number;
  readonly most: number;
}): SmallestSample {
  const { deviationM, goodM, badM, stopAtMost, letGoAtMost, least, most } = asked;
  for (let strings = least; ; strings++) {
    const u = deviationM / Math.sqrt(strings);
    const stopBeyondM = stopLimitM({ u, goodM, stopAtMost });
    const letGoChance = letGo(badM, stopBeyondM, u);
    const isEnough = badM > goodM && letGoChance <= letGoAtMost;
    if (isEnough || strings >= most)
      return { strings, stopBeyondM, letGoChance, stopChance: 1 - letGo(goodM, stopBeyondM, u), isEnough };
  }
}

/** Standard deviation of one string's mean about the process, from so many places, m. */
const stringDeviationM = ({ betweenM, withinM, micrometerM }: FirstOffSpreads, places: number): number =>
  Math.sqrt(betweenM ** 2 + (withinM ** 2 + micrometerM ** 2) / places);

/** Chance that a process this far off is let go: its mean falls within the limit. */
const letGo = (offM: number, stopBeyondM: number, u: number): number =>
  normalBetween(-stopBeyondM, stopBeyondM, { value: offM, u });

/** The narrowest limit at which a good process is stopped no oftener than wanted; halving, since it falls steadily. */
function stopLimitM({ u, goodM, stopAtMost }: { u: number; goodM: number; stopAtMost: number }): number {
  let low = 0;
  let high = goodM + FAR * u;
  for (let half = 0; half < HALVINGS; half++) {
    const middle = (low + high) / 2;
    if (1 - letGo(goodM, middle, u) > stopAtMost) low = middle;
    else high = middle;
  }
  return high;
}

/** The offset at which so many strings are out of tolerance, as an exact share of both tails; halving. */
function badOffsetM(betweenM: number, toleranceM: number): number {
  const outAt = (offM: number): number =>
    normalBelow((-toleranceM - offM) / betweenM) + normalBelow((offM - toleranceM) / betweenM);
  let low = 0;
  let high = toleranceM;
  for (let half = 0; half < HALVINGS; half++) {
    const middle = (low + high) / 2;
    if (outAt(middle) < BAD_SHARE) low = middle;
    else high = middle;
  }
  return low;
}

const FAR = 8;
const HALVINGS = 60;
