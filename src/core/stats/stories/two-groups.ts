import { fail, type Result, succeed } from '../../foundation/index.js';
import { studentT } from '../distributions/student-t.js';
import type { Interval } from '../intervals/interval.js';
import { meanOf, squaresAboutMean } from '../moments.js';
import { type StatsFault, tooFew } from '../stats-fault.js';

export interface GroupDifference {
  /** Mean of the second less that of the first, in the readings' unit. */
  readonly difference: number;
  readonly interval: Interval;
  readonly t: number;
  readonly degrees: number;
  /** Chance of as much to either side where the means are the same. */
  readonly p: number;
}

/**
 * Means of two groups compared, such as before and after a known change of spool, spreads not taken to be equal: t with
 * degrees (a + b)^2/(a^2/(n1-1) + b^2/(n2-1)), a and b the squared standard errors (B. Welch, Biometrika 34 (1947) 28;
 * NIST/SEMATECH e-Handbook 1.3.5.3).
 */
export function groupDifference(
  first: readonly number[],
  second: readonly number[],
  confidence = 0.95,
): Result<GroupDifference, StatsFault> {
  const least = Math.min(first.length, second.length);
  if (least < 2) return fail(tooFew(least, 2));
  const [a, b] = [errorSquare(first), errorSquare(second)];
  const u = Math.sqrt(a + b);
  if (!(u > 0)) return fail({ code: 'stats.no-spread' });
  const degrees = (a + b) ** 2 / (a ** 2 / (first.length - 1) + b ** 2 / (second.length - 1));
  const difference = meanOf(second) - meanOf(first);
  const law = studentT(degrees);
  const half = law.quantile((1 + confidence) / 2) * u;
  const t = difference / u;
  return succeed({
    difference,
    interval: { from: difference - half, to: difference + half },
    t,
    degrees,
    p: 2 * law.above(Math.abs(t)),
  });
}

const errorSquare = (group: readonly number[]): number =>
  squaresAboutMean(group) / (group.length - 1) / group.length;
