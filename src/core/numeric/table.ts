import { invariant } from '../foundation/index.js';

/** A table's ends, and which of its intervals holds an x. */
export interface Table {
  readonly least: number;
  readonly most: number;
  /** Index of the interval's left end; x must lie within the table. */
  intervalAt(x: number): number;
}

/** Checks that `xs` ascend and pair with `ys`, two rows at least. */
export function tableOf(xs: readonly number[], ys: readonly number[]): Table {
  invariant(xs.length === ys.length && xs.length >= 2, 'a table to interpolate in needs two rows or more');
  invariant(
    xs.every((x, index) => Number.isFinite(x) && (index === 0 || x > xs[index - 1]!)) &&
      ys.every(Number.isFinite),
    'the rows of a table to interpolate in do not ascend',
  );
  const least = xs[0]!;
  const most = xs.at(-1)!;
  return {
    least,
    most,
    intervalAt: (x) => {
      invariant(
        x >= least && x <= most,
        `${x} lies outside the table from ${least} to ${most}: nothing is extrapolated`,
      );
      let left = 0;
      let right = xs.length - 1;
      while (right - left > 1) {
        const middle = (left + right) >> 1;
        if (xs[middle]! <= x) left = middle;
        else right = middle;
      }
      return left;
    },
  };
}
