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
  return momentsDifference(momentsOf(first), momentsOf(second), confidence);
}

/** What is enough to know of a group: how many, their mean, and their squares about it. */
export interface GroupMoments {
  readonly count: number;
  readonly mean: number;
  readonly squares: number;
}

/** The same where only counts, means and squares are at hand. */
export function momentsDifference(
  first: GroupMoments,
  second: GroupMoments,
  confidence = 0.95,
): Result<GroupDifference, StatsFault> {
  const least = Math.min(first.count, second.count);
  if (least < 2) return fail(tooFew(least, 2));
  const [a, b] = [errorSquare(first), errorSquare(second)];
  const u = Math.sqrt(a + b);
  if (!(u > 0)) return fail({ code: 'stats.no-spread' });
  const degrees = (a + b) ** 2 / (a ** 2 / (first.count - 1) + b ** 2 / (second.count - 1));
  const difference = second.mean - first.mean;
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

const errorSquare = ({ count, squares }: GroupMoments): number => squares / (count - 1) / count;

export const momentsOf = (group: readonly number[]): GroupMoments => ({
  count: group.length,
  mean: meanOf(group),
  squares: squaresAboutMean(group),
});

/** What is left of all where some of them are taken out. */
export function momentsWithout(all: GroupMoments, some: GroupMoments): GroupMoments {
  const count = all.count - some.count;
  const mean = (all.count * all.mean - some.count * some.mean) / count;
  const between = some.count * (some.mean - all.mean) ** 2 + count * (mean - all.mean) ** 2;
  return { count, mean, squares: Math.max(0, all.squares - some.squares - between) };
}
