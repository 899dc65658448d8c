import { gammaTails, poissonTerm } from '../special/gamma-tails.js';
import { type Counted, countOfShare } from './counted.js';

/**
 * How many events there are where `mean` are expected, each coming by itself: upTo(k) = Q(k+1, mean) (Abramowitz &
 * Stegun 1964, 26.4.21), exact in both tails.
 */
export function poisson(mean: number): Counted {
  const upTo = (k: number): number => (k < 0 ? 0 : gammaTails(Math.floor(k) + 1, mean).above);
  return {
    at: (k) => {
      if (k < 0 || !Number.isInteger(k)) return 0;
      return mean === 0 ? Number(k === 0) : poissonTerm(k, mean);
    },
    upTo,
    from: (k) => (k <= 0 ? 1 : gammaTails(Math.ceil(k), mean).below),
    quantile: (share) => countOfShare(share, upTo, mean),
  };
}
