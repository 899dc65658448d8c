import { invariant } from '../foundation/index.js';
import { findRoot } from './find-root.js';

/**
 * Share of a gamma distribution of this shape and unit rate that lies below `x`: the regularised lower incomplete gamma function
 * P(shape, x). By its power series for x < shape + 1, else by the continued fraction (modified Lentz), as Press et al., Numerical
 * Recipes (3rd ed. 2007), 6.2. Relative error about 1e-12.
 */
export function gammaBelow(x: number, shape: number): number {
  invariant(shape > 0 && Number.isFinite(shape), `a gamma distribution has a positive shape, not ${shape}`);
  if (x <= 0) return 0;
  const weight = Math.exp(shape * Math.log(x) - x - logGamma(shape));
  return x < shape + 1 ? weight * series(x, shape) : 1 - weight * continuedFraction(x, shape);
}

/** The value below which `share` of a gamma distribution of this shape and unit rate lies; `share` between 0 and 1. */
export function gammaQuantile(share: number, shape: number): number {
  invariant(share > 0 && share < 1, `a quantile is of a share between 0 and 1, not ${share}`);
  let high = shape + 10;
  while (gammaBelow(high, shape) < share) high *= 2;
  const root = findRoot({ f: (x) => gammaBelow(x, shape) - share, low: 0, high, tolerance: 0 });
  invariant(root !== undefined, 'what is bracketed is found');
  return root;
}

const MOST_TERMS = 10_000;
const SMALL = 1e-15;

function series(x: number, shape: number): number {
  let term = 1 / shape;
  let sum = term;
  for (let n = 1; n < MOST_TERMS && term > sum * SMALL; n++) {
    term *= x / (shape + n);
    sum += term;
  }
  return sum;
}

function continuedFraction(x: number, shape: number): number {
  const tiny = 1e-300;
  let b = x + 1 - shape;
  let c = 1 / tiny;
  let d = 1 / b;
  let h = d;
  for (let n = 1; n < MOST_TERMS; n++) {
    const a = -n * (n - shape);
    b += 2;
    d = a * d + b;
    d = 1 / (Math.abs(d) < tiny ? tiny : d);
    c = b + a / c;
    if (Math.abs(c) < tiny) c = tiny;
    const step = d * c;
    h *= step;
    if (Math.abs(step - 1) < SMALL) break;
  }
  return h;
}

/** Lanczos (1964), with the coefficients for g = 7, n = 9; relative error about 1e-15 for positive arguments. */
function logGamma(z: number): number {
  if (z < 0.5) return Math.log(Math.PI / Math.sin(Math.PI * z)) - logGamma(1 - z);
  const x = z - 1;
  const t = x + 7.5;
  const sum = LANCZOS.reduce(
    (total, coefficient, n) => total + coefficient / (x + n + 1),
    0.9999999999998099,
  );
  return 0.5 * Math.log(2 * Math.PI) + (x + 0.5) * Math.log(t) - t + Math.log(sum);
}

const LANCZOS = [
  676.5203681218851, -1259.1392167224028, 771.3234287776531, -176.6150291621406, 12.507343278686905,
  -0.13857109526572012, 9.984369578019572e-6, 1.5056327351493116e-7,
];
