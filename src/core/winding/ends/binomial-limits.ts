import { findRoot } from '../../numeric/index.js';

/**
 * Exact limits of a share of which `good` of `tried` were seen: the shares at which as few, or as many, would be
 * seen with a chance of (1 - confidence) / 2 (C. J. Clopper, E. S. Pearson, Biometrika 26, 1934, 404).
 */
export function shareLimits(
  { good, tried }: { readonly good: number; readonly tried: number },
  confidence: number,
): { readonly low: number; readonly high: number } {
  const tail = (1 - confidence) / 2;
  return { low: lowerLimit(good, tried, tail), high: 1 - lowerLimit(tried - good, tried, tail) };
}

/** The share at which `good` or more of `tried` has no more than this chance. One limit alone, at confidence 1 - chance. */
export function lowerLimit(good: number, tried: number, chance: number): number {
  if (good === 0) return 0;
  const root = findRoot({
    f: (share) => chanceOfAtLeast(good, tried, share) - chance,
    low: 0,
    high: 1,
    tolerance: 1e-12,
  });
  return root ?? 0;
}

/** P(X >= good), X binomial. Terms in logarithms: no power falls to nought. */
function chanceOfAtLeast(good: number, tried: number, share: number): number {
  if (share <= 0) return 0;
  if (share >= 1) return 1;
  let logWays = 0;
  let sum = 0;
  for (let count = tried; count >= good; count--) {
    sum += Math.exp(logWays + count * Math.log(share) + (tried - count) * Math.log1p(-share));
    logWays += Math.log(count) - Math.log(tried - count + 1);
  }
  return Math.min(1, sum);
}
