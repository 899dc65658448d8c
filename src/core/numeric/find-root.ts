import { invariant } from '../foundation/index.js';

export interface RootSearch {
  readonly f: (x: number) => number;
  /** Ends of the interval, in either order. */
  readonly low: number;
  readonly high: number;
  /** How near to the root the answer lies, in units of x, on top of rounding. */
  readonly tolerance: number;
}

/** Each step at least halves the interval every third time: more than enough for any double. */
const MOST_STEPS = 400;

/**
 * Where a continuous `f` crosses zero between `low` and `high`, to within `tolerance`; undefined where f has the
 * same sign at both ends. Bisection, secant and inverse quadratic steps, the safest first (R. P. Brent, Algorithms
 * for Minimization without Derivatives, 1973, ch. 4).
 */
export function findRoot({ f, low, high, tolerance }: RootSearch): number | undefined {
  invariant(tolerance >= 0, `a root was sought to a tolerance of ${tolerance}`);
  let a = low;
  let b = high;
  let fa = f(a);
  let fb = f(b);
  if (fa === 0) return a;
  if (fb === 0) return b;
  // Signs rather than a product, which could underflow; NaN at either end is refused too.
  if (Math.sign(fa) * Math.sign(fb) !== -1) return undefined;
  let c = a;
  let fc = fa;
  let step = b - a;
  let stepBefore = step;
  for (let count = 0; count < MOST_STEPS; count++) {
    if (fb > 0 === fc > 0) {
      c = a;
      fc = fa;
      step = b - a;
      stepBefore = step;
    }
    // b is the best point so far, c the one across the root, a the one before b.
    if (Math.abs(fc) < Math.abs(fb)) {
      [a, b, c] = [b, c, b];
      [fa, fb, fc] = [fb, fc, fb];
    }
    const nearest = 2 * Number.EPSILON * Math.abs(b) + tolerance / 2;
    const half = (c - b) / 2;
    if (Math.abs(half) <= nearest || fb === 0) return b;
    const wished = interpolatedStep({ a, b, c, fa, fb, fc });
    const trusted =
      Math.abs(stepBefore) >= nearest &&
      Math.abs(fa) > Math.abs(fb) &&
      wished / half > 0 &&
      Math.abs(wished) < Math.min(1.5 * Math.abs(half) - nearest / 2, Math.abs(stepBefore) / 2);
    stepBefore = trusted ? step : half;
    step = trusted ? wished : half;
    a = b;
    fa = fb;
    b += Math.abs(step) > nearest ? step : Math.sign(half) * nearest;
    fb = f(b);
  }
  return b;
}

interface Points {
  readonly a: number;
  readonly b: number;
  readonly c: number;
  readonly fa: number;
  readonly fb: number;
  readonly fc: number;
}

/** From b to where the secant, or with three points the inverse parabola, meets zero. */
function interpolatedStep({ a, b, c, fa, fb, fc }: Points): number {
  const s = fb / fa;
  if (a === c) return ((b - c) * s) / (1 - s);
  const q = fa / fc;
  const r = fb / fc;
  return (s * ((c - b) * q * (q - r) - (b - a) * (r - 1))) / -((q - 1) * (r - 1) * (s - 1));
}
