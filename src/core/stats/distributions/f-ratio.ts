import { betaTails } from '../special/beta-tails.js';
import type { Tails } from '../tails.js';
import { betaParts } from './beta.js';
import type { Continuous } from './continuous.js';

/**
 * Snedecor's F, the ratio of two mean squares with these degrees of freedom: below(f) = I_x(d1/2, d2/2) with
 * x = d1 f/(d1 f + d2) (Abramowitz & Stegun 1964, 26.6.2). Degrees need not be whole.
 */
export function fRatio(degreesOver: number, degreesUnder: number): Continuous {
  const [a, b] = [degreesOver / 2, degreesUnder / 2];
  const tailsAt = (f: number): Tails => {
    if (f <= 0) return { below: 0, above: 1 };
    const sum = degreesOver * f + degreesUnder;
    return betaTails({ x: (degreesOver * f) / sum, rest: degreesUnder / sum }, a, b);
  };
  const ratio = ({ x, rest }: { x: number; rest: number }): number =>
    (x / rest) * (degreesUnder / degreesOver);
  return {
    below: (f) => tailsAt(f).below,
    above: (f) => tailsAt(f).above,
    quantile: (share) => ratio(betaParts({ below: share }, a, b)),
    quantileAbove: (share) => ratio(betaParts({ above: share }, a, b)),
  };
}
