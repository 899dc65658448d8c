import { betaTails, binomialTerm } from '../special/beta-tails.js';
import { type Counted, countOfShare } from './counted.js';

/**
 * How many of n are bad when each is with chance p: upTo(k) = I_(1-p)(n-k, k+1) (Abramowitz & Stegun 1964, 26.5.24),
 * exact in both tails for any n.
 */
export function binomial(n: number, p: number): Counted {
  const parts = { x: p, rest: 1 - p };
  const upTo = (k: number): number => {
    if (k < 0) return 0;
    return k >= n ? 1 : betaTails(parts, Math.floor(k) + 1, n - Math.floor(k)).above;
  };
  return {
    at: (k) => (k < 0 || k > n || !Number.isInteger(k) ? 0 : binomialTerm(k, n, parts)),
    upTo,
    from: (k) => {
      if (k <= 0) return 1;
      return k > n ? 0 : betaTails(parts, Math.ceil(k), n - Math.ceil(k) + 1).below;
    },
    quantile: (share) => (share >= 1 ? n : Math.min(n, countOfShare(share, upTo, n * p))),
  };
}
