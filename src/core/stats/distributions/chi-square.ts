import { gammaTails } from '../special/gamma-tails.js';
import { placeOfTail, type TailShare } from '../special/quantile-search.js';
import type { Continuous } from './continuous.js';

/**
 * The gamma distribution of this shape, in units of its scale: below(x) = P(shape, x) (NIST DLMF 8.2.4).
 * Shape > 0; relative error of either tail below 1e-11.
 */
export function gammaDistribution(shape: number): Continuous {
  const tailsAt = (x: number) => gammaTails(shape, Math.max(0, x));
  const valueAt = (asked: TailShare): number =>
    Math.exp(placeOfTail(asked, { tailsAt: (place) => tailsAt(Math.exp(place)), start: Math.log(shape) }));
  return {
    below: (x) => tailsAt(x).below,
    above: (x) => tailsAt(x).above,
    quantile: (share) => valueAt({ below: share }),
    quantileAbove: (share) => valueAt({ above: share }),
  };
}

/** Chi-square with this many degrees of freedom (any positive number): twice a gamma of half the degrees. */
export function chiSquare(degrees: number): Continuous {
  const half = gammaDistribution(degrees / 2);
  return {
    below: (x) => half.below(x / 2),
    above: (x) => half.above(x / 2),
    quantile: (share) => 2 * half.quantile(share),
    quantileAbove: (share) => 2 * half.quantileAbove(share),
  };
}
