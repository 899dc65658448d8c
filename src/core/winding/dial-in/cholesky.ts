import { invariant } from '../../foundation/index.js';
import type { Matrix } from '../../numeric/index.js';

/** Lower triangle L with L L' = a, for a symmetric positive definite `a`. */
export function choleskyFactor(a: Matrix): Matrix {
  const lower: number[][] = [];
  for (const [row, entries] of a.entries()) {
    const made: number[] = [];
    for (let column = 0; column <= row; column++) {
      const other = column === row ? made : lower[column]!;
      let rest = entries[column]!;
      for (let k = 0; k < column; k++) rest -= made[k]! * other[k]!;
      invariant(column < row || rest > 0, 'a covariance is not positive definite');
      made.push(column === row ? Math.sqrt(rest) : rest / other[column]!);
    }
    lower.push(made);
  }
  return lower;
}

/** The x with L x = b. */
export function forwardSolve(lower: Matrix, b: readonly number[]): number[] {
  const x: number[] = [];
  for (const [row, entries] of lower.entries()) {
    let rest = b[row]!;
    for (let k = 0; k < row; k++) rest -= entries[k]! * x[k]!;
    x.push(rest / entries[row]!);
  }
  return x;
}
