import { chartConstants } from './chart-constants.js';
import type { ProcessBase } from './process-base.js';

/** Where a point of a chart may lie. A lower limit of nought on a chart that cannot go below it is no limit. */
export interface ControlLimits {
  readonly centre: number;
  readonly lower: number;
  readonly upper: number;
}

/** Limits of means of n readings: mean -+ width sigma / sqrt n; with n = 1 of single readings (ASTM E2587). */
export function meanLimits({ mean, sigma }: ProcessBase, n = 1, width = 3): ControlLimits {
  const half = (width * sigma) / Math.sqrt(n);
  return { centre: mean, lower: mean - half, upper: mean + half };
}

/** Limits of ranges of n readings: D3 and D4 times d2 sigma; with n = 2 of moving ranges (ASTM E2587). */
export function rangeLimits({ sigma }: ProcessBase, n = 2): ControlLimits {
  const { d2, D3, D4 } = chartConstants(n);
  const centre = d2 * sigma;
  return { centre, lower: D3 * centre, upper: D4 * centre };
}

/** Limits of standard deviations of n readings: B3 and B4 times c4 sigma (ASTM E2587). */
export function spreadLimits({ sigma }: ProcessBase, n: number): ControlLimits {
  const { c4, B3, B4 } = chartConstants(n);
  const centre = c4 * sigma;
  return { centre, lower: B3 * centre, upper: B4 * centre };
}

/** Places, from 0, of the points that lie outside of their limits: one pair for all, or one each. */
export function outside(
  points: readonly number[],
  limits: ControlLimits | readonly ControlLimits[],
): readonly number[] {
  const limitsAt = (at: number): ControlLimits => ('centre' in limits ? limits : limits[at]!);
  return points.flatMap((point, at) => {
    const { lower, upper } = limitsAt(at);
    return point < lower || point > upper ? [at] : [];
  });
}
