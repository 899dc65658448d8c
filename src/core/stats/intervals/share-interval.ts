import { fail, type Result, succeed } from '../../foundation/index.js';
import { betaDistribution } from '../distributions/beta.js';
import { normalQuantile } from '../distributions/normal.js';
import type { StatsFault } from '../stats-fault.js';
import type { Interval } from './interval.js';

export interface ShareFound {
  readonly bad: number;
  readonly of: number;
}

/**
 * Interval of a share by beta quantiles: never covers less than it says (C. Clopper & E. Pearson, Biometrika 26 (1934)
 * 404; NIST/SEMATECH e-Handbook 7.2.4.1).
 */
export function shareInterval(found: ShareFound, confidence = 0.95): Result<Interval, StatsFault> {
  return checked(found, ({ bad, of }) => {
    const tail = (1 - confidence) / 2;
    return {
      from: bad === 0 ? 0 : betaDistribution(bad, of - bad + 1).quantile(tail),
      to: bad === of ? 1 : betaDistribution(bad + 1, of - bad).quantileAbove(tail),
    };
  });
}

/** What a share does not exceed with this confidence; with none found 1 - (1 - confidence)^(1/n). */
export const shareAtMost = (found: ShareFound, confidence = 0.95): Result<number, StatsFault> =>
  checked(found, ({ bad, of }) =>
    bad === of ? 1 : betaDistribution(bad + 1, of - bad).quantile(confidence),
  );

/** E. Wilson's interval, by the normal law (J. Amer. Statist. Assoc. 22 (1927) 209): covers as it says on average. */
export function wilsonInterval(found: ShareFound, confidence = 0.95): Result<Interval, StatsFault> {
  return checked(found, ({ bad, of }) => {
    const z = normalQuantile((1 + confidence) / 2);
    const middle = (2 * bad + z * z) / (2 * (of + z * z));
    const half = (z * Math.sqrt(z * z + (4 * bad * (of - bad)) / of)) / (2 * (of + z * z));
    return { from: Math.max(0, middle - half), to: Math.min(1, middle + half) };
  });
}

/**
 * What is believed of a share after the count, begun with the prior Beta(1/2, 1/2) of H. Jeffreys; ends at 0 and 1 as
 * L. Brown, T. Cai & A. DasGupta have it (Statistical Science 16 (2001) 101).
 */
export function jeffreysInterval(found: ShareFound, confidence = 0.95): Result<Interval, StatsFault> {
  return checked(found, ({ bad, of }) => {
    const law = betaDistribution(bad + 0.5, of - bad + 0.5);
    const tail = (1 - confidence) / 2;
    return {
      from: bad === 0 ? 0 : law.quantile(tail),
      to: bad === of ? 1 : law.quantileAbove(tail),
    };
  });
}

function checked<T>(found: ShareFound, answer: (found: ShareFound) => T): Result<T, StatsFault> {
  const { bad, of } = found;
  const isCount = Number.isInteger(bad) && Number.isInteger(of) && bad >= 0 && of >= bad && of > 0;
  return isCount ? succeed(answer(found)) : fail({ code: 'stats.count-impossible' });
}
