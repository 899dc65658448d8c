import { chiSquare } from '../distributions/chi-square.js';
import { fRatio } from '../distributions/f-ratio.js';
import type { Interval } from '../intervals/interval.js';
import type { Squares } from './crossed-anova.js';

/** A mean square and how often it counts. */
export interface VarianceTerm {
  readonly times: number;
  readonly squares: Squares;
}

/**
 * Interval of a sum of mean squares, none against it: estimate - sqrt(SUM G^2 c^2 MS^2) to + sqrt(SUM H^2 c^2 MS^2), G =
 * 1 - v/chi2(upper), H = v/chi2(lower) - 1 (F. Graybill & C. Wang, J. Amer. Statist. Assoc. 75 (1980) 869). Of one mean
 * square it is the exact interval.
 */
export function sumInterval(terms: readonly VarianceTerm[], confidence: number): Interval {
  const value = terms.reduce((sum, { times, squares }) => sum + times * squares.mean, 0);
  const reach = (side: 'down' | 'up'): number =>
    Math.hypot(
      ...terms.map(({ times, squares }) => reaches(squares.degrees, confidence)[side] * times * squares.mean),
    );
  return { from: value - reach('down'), to: value + reach('up') };
}

/**
 * Interval of one mean square less another (N. Ting, R. Burdick, F. Graybill, S. Jeyaratnam & T. Lu, J. Statist.
 * Comput. Simul. 35 (1990) 135): as above, with a term in the product of the two that makes it exact where the second
 * vanishes or the difference is nought.
 */
export function differenceInterval(plus: VarianceTerm, minus: VarianceTerm, confidence: number): Interval {
  const [one, two] = [plus.times * plus.squares.mean, minus.times * minus.squares.mean];
  const first = reaches(plus.squares.degrees, confidence);
  const second = reaches(minus.squares.degrees, confidence);
  const law = fRatio(plus.squares.degrees, minus.squares.degrees);
  const tail = (1 - confidence) / 2;
  const high = law.quantileAbove(tail);
  const low = law.quantile(tail);
  const downBoth = ((high - 1) ** 2 - (first.down * high) ** 2 - second.up ** 2) / high;
  const upBoth = ((1 - low) ** 2 - (first.up * low) ** 2 - second.down ** 2) / low;
  const down = (first.down * one) ** 2 + (second.up * two) ** 2 + downBoth * one * two;
  const up = (first.up * one) ** 2 + (second.down * two) ** 2 + upBoth * one * two;
  return { from: one - two - Math.sqrt(Math.max(0, down)), to: one - two + Math.sqrt(Math.max(0, up)) };
}

/** How far down and up from itself a variance with these degrees may truly lie, as shares of it. */
function reaches(degrees: number, confidence: number): { readonly down: number; readonly up: number } {
  const law = chiSquare(degrees);
  const tail = (1 - confidence) / 2;
  return { down: 1 - degrees / law.quantileAbove(tail), up: degrees / law.quantile(tail) - 1 };
}
