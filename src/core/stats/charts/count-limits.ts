import { fail, type Result, succeed } from '../../foundation/index.js';
import type { Counted } from '../distributions/counted.js';
import { type StatsFault, tooFew } from '../stats-fault.js';
import type { ControlLimits } from './control-limits.js';

/** What was counted in how much: bad strings among so many, or faults on so many units. */
export interface CountedSample {
  readonly count: number;
  readonly size: number;
}

/** Sum of counts over sum of sizes: p-bar, u-bar, or with size 1 c-bar (NIST/SEMATECH e-Handbook 6.3.3). */
export function overallRate(samples: readonly CountedSample[]): Result<number, StatsFault> {
  const size = samples.reduce((sum, each) => sum + each.size, 0);
  if (size <= 0) return fail(tooFew(samples.length, 1));
  if (samples.some(({ count }) => count < 0)) return fail({ code: 'stats.count-impossible' });
  return succeed(samples.reduce((sum, each) => sum + each.count, 0) / size);
}

/** p chart: p -+ 3 sqrt(p (1-p)/n), kept within 0 and 1. */
export const shareLimits = (p: number, n: number): ControlLimits =>
  kept(p, 3 * Math.sqrt((p * (1 - p)) / n), 1);

/** np chart: n p -+ 3 sqrt(n p (1-p)), kept within 0 and n. */
export const badCountLimits = (p: number, n: number): ControlLimits =>
  kept(n * p, 3 * Math.sqrt(n * p * (1 - p)), n);

/** u chart: u -+ 3 sqrt(u/n); with n = 1 the c chart. Never below 0. */
export const rateLimits = (u: number, n = 1): ControlLimits => kept(u, 3 * Math.sqrt(u / n));

const kept = (centre: number, half: number, most = Number.POSITIVE_INFINITY): ControlLimits => ({
  centre,
  lower: Math.max(0, centre - half),
  upper: Math.min(most, centre + half),
});

export interface ProbabilityLimits {
  /** A count from here up is a signal. */
  readonly signalFrom: number;
  /** A count up to here is a signal; left out where even nought is not rare enough. */
  readonly signalUpTo?: number;
  /** Chance of a signal to either side while nothing is wrong. */
  readonly falseAlarm: number;
}

/**
 * Limits by the chances themselves, for small counts, where 3 standard deviations say little: each side signals with a
 * chance of at most `tail` (0.00135, that of 3 standard deviations, unless told) when counts follow this distribution.
 */
export function probabilityLimits(law: Counted, tail = 0.00135): ProbabilityLimits {
  let signalFrom = law.quantile(1 - tail);
  while (law.from(signalFrom) > tail) signalFrom += 1;
  let signalUpTo = law.quantile(tail);
  while (signalUpTo >= 0 && law.upTo(signalUpTo) > tail) signalUpTo -= 1;
  const falseAlarm = law.from(signalFrom) + law.upTo(signalUpTo);
  return { signalFrom, ...(signalUpTo >= 0 ? { signalUpTo } : {}), falseAlarm };
}
