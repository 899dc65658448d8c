import { findRoot } from '../../numeric/index.js';
import { overSpread } from './noncentral-t.js';
import { normalBelow, normalDensity } from './normal.js';

const FAR = 8.5;
const STEP = 0.25;
const TOLERANCE = 1e-9;

/**
 * Share of samples of n from a standard normal whose range is below w:
 * n INT phi(z) [Phi(z) - Phi(z - w)]^(n-1) dz (H. L. Harter, Ann. Math. Statist. 31 (1960) 1122). Error below 1e-10.
 */
export function rangeBelow(w: number, n: number): number {
  if (w <= 0) return 0;
  let sum = 0;
  // Equal steps: for a function that dies out like the normal density no rule does better.
  for (let z = -FAR; z <= FAR; z += STEP)
    sum += normalDensity(z) * (normalBelow(z) - normalBelow(z - w)) ** (n - 1);
  return Math.min(1, n * STEP * sum);
}

export interface RangeOf {
  /** Means compared. */
  readonly means: number;
  /** Degrees of freedom of the spread they are measured by. */
  readonly degrees: number;
}

/** Share below q of the range of so many means over a spread found with so many degrees (Tukey's q). */
export const studentizedRangeBelow = (q: number, { means, degrees }: RangeOf): number =>
  q <= 0 ? 0 : overSpread(degrees, (s) => rangeBelow(q * s, means), TOLERANCE);

/** The q below which this share lies, to 1e-8. */
export function studentizedRangeQuantile(share: number, of: RangeOf): number {
  const off = (q: number): number => studentizedRangeBelow(q, of) - share;
  let high = 4;
  while (off(high) < 0) high *= 2;
  return findRoot({ f: off, low: 0, high, tolerance: TOLERANCE })!;
}
