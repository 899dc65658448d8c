import { fail, type Result, succeed } from '../../foundation/index.js';
import { studentizedRangeBelow, studentizedRangeQuantile } from '../distributions/studentized-range.js';
import type { Interval } from '../intervals/interval.js';
import { meanOf, squaresAboutMean } from '../moments.js';
import { type StatsFault, tooFew } from '../stats-fault.js';

/** Two of the groups by their places, what the second has more than the first, and how sure that is. */
export interface PairDifference {
  readonly first: number;
  readonly second: number;
  readonly difference: number;
  /** All intervals hold together with the confidence asked for. */
  readonly interval: Interval;
  /** Chance that any pair of alike groups would differ by as much. */
  readonly p: number;
}

/**
 * All pairs of lots compared at once, spreads taken to be equal: difference -+ q s sqrt((1/n1 + 1/n2)/2), q of Tukey's
 * studentized range (J. Tukey 1953; for unequal sizes C. Kramer, Biometrics 12 (1956) 307; NIST/SEMATECH e-Handbook
 * 7.4.7.1).
 */
export function allPairs(
  groups: readonly (readonly number[])[],
  confidence = 0.95,
): Result<readonly PairDifference[], StatsFault> {
  const degrees = groups.reduce((sum, group) => sum + group.length - 1, 0);
  if (groups.length < 2 || degrees < 1) return fail(tooFew(degrees, 1));
  const s = Math.sqrt(groups.reduce((sum, group) => sum + squaresAboutMean(group), 0) / degrees);
  if (!(s > 0)) return fail({ code: 'stats.no-spread' });
  const of = { means: groups.length, degrees };
  const q = studentizedRangeQuantile(confidence, of);
  const pairs = groups.flatMap((one, first) =>
    groups.slice(first + 1).map((other, index): PairDifference => {
      const difference = meanOf(other) - meanOf(one);
      const u = s * Math.sqrt((1 / one.length + 1 / other.length) / 2);
      return {
        first,
        second: first + 1 + index,
        difference,
        interval: { from: difference - q * u, to: difference + q * u },
        p: 1 - studentizedRangeBelow(Math.abs(difference) / u, of),
      };
    }),
  );
  return succeed(pairs);
}
