import { fail, type Result, succeed } from '../../foundation/index.js';
import { betaParts } from '../distributions/beta.js';
import { binomial } from '../distributions/binomial.js';
import { chiSquare } from '../distributions/chi-square.js';
import type { StatsFault } from '../stats-fault.js';
import type { Interval } from './interval.js';

/** Events counted over an exposure: complaints over thousands of strings, faults over metres. */
export interface RateFound {
  readonly count: number;
  readonly exposure: number;
}

/**
 * Interval of a rate, in events per unit of exposure: chi2(tail; 2x)/2 to chi2(1 - tail; 2x + 2)/2 over the exposure
 * (F. Garwood, Biometrika 28 (1936) 437). Never covers less than it says.
 */
export function rateInterval(found: RateFound, confidence = 0.95): Result<Interval, StatsFault> {
  if (!isRate(found)) return fail({ code: 'stats.count-impossible' });
  const { count, exposure } = found;
  const tail = (1 - confidence) / 2;
  return succeed({
    from: count === 0 ? 0 : chiSquare(2 * count).quantile(tail) / 2 / exposure,
    to: chiSquare(2 * count + 2).quantileAbove(tail) / 2 / exposure,
  });
}

export interface RateRatio {
  /** First rate over second; infinite where the second has no events. */
  readonly ratio: number;
  readonly interval: Interval;
  /** Chance, if the rates are equal, of a split of the events as unlikely as this or more. */
  readonly p: number;
}

/**
 * Two rates compared exactly: of all events the share that falls to the first is binomial, with theta = r e1/(r e1 + e2)
 * for a ratio r; interval from that of Clopper & Pearson, p by adding up all splits that are no likelier (J.
 * Przyborowski & H. Wilenski, Biometrika 31 (1940) 313).
 */
export function rateRatio(
  first: RateFound,
  second: RateFound,
  confidence = 0.95,
): Result<RateRatio, StatsFault> {
  if (!isRate(first) || !isRate(second)) return fail({ code: 'stats.count-impossible' });
  const events = first.count + second.count;
  if (events === 0) return fail({ code: 'stats.too-few', given: 0, needed: 1 });
  const tail = (1 - confidence) / 2;
  const times = second.exposure / first.exposure;
  const odds = ({ x, rest }: { x: number; rest: number }): number => (x / rest) * times;
  return succeed({
    ratio: (first.count / second.count) * times,
    interval: {
      from: first.count === 0 ? 0 : odds(betaParts({ below: tail }, first.count, second.count + 1)),
      to:
        second.count === 0
          ? Number.POSITIVE_INFINITY
          : odds(betaParts({ above: tail }, first.count + 1, second.count)),
    },
    p: asUnlikely(first.count, events, first.exposure / (first.exposure + second.exposure)),
  });
}

/** Adds up the chances of all counts that are no likelier than this one; one part in 1e7 is rounding. */
export function asUnlikely(count: number, of: number, share: number): number {
  const law = binomial(of, share);
  const limit = law.at(count) * (1 + 1e-7);
  let p = 0;
  for (let k = 0; k <= of; k++) {
    const chance = law.at(k);
    if (chance <= limit) p += chance;
  }
  return Math.min(1, p);
}

const isRate = ({ count, exposure }: RateFound): boolean =>
  Number.isInteger(count) && count >= 0 && exposure > 0;
