import { tableOf } from './table.js';

/**
 * The straight line from row to row through (xs, ys), xs ascending. Called outside the table it throws: whoever
 * calls knows the table's ends.
 */
export function linearInterpolation(xs: readonly number[], ys: readonly number[]): (x: number) => number {
  const table = tableOf(xs, ys);
  return (x) => {
    const left = table.intervalAt(x);
    const share = (x - xs[left]!) / (xs[left + 1]! - xs[left]!);
    // Weighted ends rather than a slope: exact at both.
    return ys[left]! * (1 - share) + ys[left + 1]! * share;
  };
}
