import { fail, type Result, succeed } from '../../foundation/index.js';
import { binomial } from '../distributions/binomial.js';
import { type StatsFault, tooFew } from '../stats-fault.js';

export interface TimeCluster {
  /** The most complaints in any window, and when that window begins; in the unit of the times. */
  readonly count: number;
  readonly from: number;
  /** Chance that so many fall together somewhere if they come evenly over the whole time. */
  readonly p: number;
}

/**
 * Whether complaints crowd together in time: the fullest window of this length (scan statistic), p by S. Wallenstein &
 * N. Neff, (k/w - N - 1) b(k) + 2 P(k or more), b binomial of N at w, the window over the whole
 * (Statistics in Medicine 6 (1987) 197): good where it is small, exact where all fall into one window. The window is to be
 * chosen before looking.
 */
export function timeCluster(
  times: readonly number[],
  { from, to, window }: { readonly from: number; readonly to: number; readonly window: number },
): Result<TimeCluster, StatsFault> {
  if (times.length < 2) return fail(tooFew(times.length, 2));
  const share = window / (to - from);
  if (!(share > 0 && share < 1) || times.some((time) => time < from || time > to))
    return fail({ code: 'stats.limits-unusable' });
  const sorted = times.toSorted((a, b) => a - b);
  let fullest = { count: 0, from };
  let last = 0;
  sorted.forEach((time, first) => {
    while (last < sorted.length && sorted[last]! <= time + window) last += 1;
    if (last - first > fullest.count) fullest = { count: last - first, from: time };
  });
  return succeed({ ...fullest, p: crowdedP(fullest.count, times.length, share) });
}

function crowdedP(k: number, n: number, share: number): number {
  const law = binomial(n, share);
  return Math.min(1, (k / share - n - 1) * law.at(k) + 2 * law.from(k));
}
