import { compensatedSum } from '../numeric/index.js';

/** Arithmetic mean; of nothing it is not a number. */
export const meanOf = (values: readonly number[]): number => compensatedSum(values) / values.length;

/**
 * Sum of squares about the mean, in two passes with the second pass's own rounding taken out (T. Chan, G. Golub & R.
 * LeVeque, American Statistician 37 (1983) 242, eq. 1.7).
 */
export function squaresAboutMean(values: readonly number[]): number {
  if (values.length === 0) return 0;
  const mean = meanOf(values);
  let [squares, left] = [0, 0];
  for (const value of values) {
    const off = value - mean;
    squares += off * off;
    left += off;
  }
  return squares - (left * left) / values.length;
}

/** Sample standard deviation, n - 1 beneath; of fewer than two values it is not a number. */
export const spreadOf = (values: readonly number[]): number =>
  Math.sqrt(squaresAboutMean(values) / (values.length - 1));

/** Greatest less least. */
export const rangeOf = (values: readonly number[]): number =>
  values.reduce((most, value) => Math.max(most, value)) -
  values.reduce((least, value) => Math.min(least, value));
