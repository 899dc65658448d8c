import { invariant } from '../../foundation/index.js';
import { integrate } from '../../numeric/index.js';
import { normalBelow } from '../distributions/normal.js';
import { rangeBelow } from '../distributions/studentized-range.js';
import { stirlingError } from '../special/stirling-error.js';

/** Constants of charts for groups of one size, under the names that the tables give them. */
export interface ChartConstants {
  /** Mean and standard deviation of the range of n from a standard normal. */
  readonly d2: number;
  readonly d3: number;
  /** Mean of the sample standard deviation. */
  readonly c4: number;
  /** Half width of the chart of means: times sigma, mean range, mean s. */
  readonly A: number;
  readonly A2: number;
  readonly A3: number;
  /** Limits of the chart of ranges, times the mean range. */
  readonly D3: number;
  readonly D4: number;
  /** Limits of the chart of standard deviations, times their mean. */
  readonly B3: number;
  readonly B4: number;
  /** Half width of the chart of single values, times the mean range. */
  readonly E2: number;
}

/**
 * Reckoned for groups of n >= 2 by their definitions, to 1e-9: limits at 3 standard deviations (ASTM E2587; D.
 * Montgomery, Introduction to statistical quality control, appendix VI). Printed tables differ by 1 in the last digit
 * here and there.
 */
export function chartConstants(n: number): ChartConstants {
  invariant(Number.isInteger(n) && n >= 2, `no chart of groups of ${n}`);
  const d2 = meanRange(n);
  const d3 = rangeSpread(n);
  const c4 = meanSpread(n);
  const root = Math.sqrt(n);
  const ofSpread = (3 * Math.sqrt(1 - c4 * c4)) / c4;
  return {
    d2,
    d3,
    c4,
    A: 3 / root,
    A2: 3 / (d2 * root),
    A3: 3 / (c4 * root),
    D3: Math.max(0, 1 - (3 * d3) / d2),
    D4: 1 + (3 * d3) / d2,
    B3: Math.max(0, 1 - ofSpread),
    B4: 1 + ofSpread,
    E2: 3 / d2,
  };
}

/** d2 = INT 1 - Phi^n - (1 - Phi)^n (L. Tippett, Biometrika 17 (1925) 364). */
export const meanRange = (n: number): number =>
  2 *
  integrate({
    f: (z) => 1 - normalBelow(z) ** n - normalBelow(-z) ** n,
    low: 0,
    high: 9,
    tolerance: 1e-11,
  });

/** d3: from the mean square of the range, 2 INT w (1 - W(w)) dw. */
export function rangeSpread(n: number): number {
  const square =
    2 * integrate({ f: (w) => w * (1 - rangeBelow(w, n)), low: 0, high: 12, tolerance: 1e-10, pieces: 2 });
  return Math.sqrt(square - meanRange(n) ** 2);
}

/** c4 = sqrt(2/(n-1)) Gamma(n/2)/Gamma((n-1)/2), without the overflow of either. */
export function meanSpread(n: number): number {
  const half = (n - 1) / 2;
  const logRatio = half * Math.log1p(0.5 / half) - 0.5 + stirlingError(half + 0.5) - stirlingError(half);
  return Math.exp(logRatio);
}
