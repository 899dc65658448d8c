import { invariant } from '../../foundation/index.js';
import { findRoot } from '../../numeric/index.js';
import type { Tails } from '../tails.js';

/** One of the two shares that a value cuts off, whichever is the exact one. */
export type TailShare = { readonly below: number } | { readonly above: number };

export interface QuantileSearch {
  /** Tails at a place on a scale that runs without ends, such as the logarithm. */
  readonly tailsAt: (place: number) => Tails;
  /** Somewhere in the middle of the distribution. */
  readonly start: number;
}

const FARTHEST = 800;

/**
 * The place where the tails are as asked: by Brent's method on the logarithm of the smaller tail, which is near to a
 * straight line where the distribution runs out. Exact to the last digits of the tail asked for.
 */
export function placeOfTail(asked: TailShare, { tailsAt, start }: QuantileSearch): number {
  const share = 'below' in asked ? asked.below : asked.above;
  invariant(share > 0 && share < 1, `no place cuts off a share of ${share}`);
  const byBelow = 'below' in asked === share <= 0.5;
  const target = Math.log(share <= 0.5 ? share : 1 - share);
  const f = (place: number): number => {
    const { below, above } = tailsAt(place);
    return byBelow ? Math.log(below) - target : target - Math.log(above);
  };
  const { low, high } = bracket(f, start);
  return findRoot({ f, low, high, tolerance: 0 })!;
}

/** Steps outward, each twice as long, until f, which rises, changes its sign. */
function bracket(f: (place: number) => number, start: number): { low: number; high: number } {
  const outward = f(start) < 0 ? 1 : -1;
  let near = start;
  for (let step = 0.5; step < FARTHEST; step *= 2) {
    const far = start + outward * step;
    if (outward * f(far) >= 0) return outward > 0 ? { low: near, high: far } : { low: far, high: near };
    near = far;
  }
  return outward > 0 ? { low: near, high: start + FARTHEST } : { low: start - FARTHEST, high: near };
}
