import { invariant } from '../../foundation/index.js';
import type { Tails } from '../tails.js';
import { deviance } from './deviance.js';
import { stirlingError } from './stirling-error.js';

const SMALLEST = 1e-300;
const MOST_TERMS = 200_000;

/** x^a e^-x / Gamma(a + 1): the Poisson law's term, for any a >= 0 and x > 0 (Loader 2000). */
export const poissonTerm = (a: number, x: number): number =>
  a === 0 ? Math.exp(-x) : Math.exp(-stirlingError(a) - deviance(a, x)) / Math.sqrt(2 * Math.PI * a);

/**
 * The regularised incomplete gamma functions: below P(a, x), above Q(a, x), a > 0, x >= 0. Series (NIST DLMF 8.11.4)
 * left of the middle, continued fraction (8.9.2, by Lentz) right of it, so that either tail keeps its digits.
 */
export function gammaTails(a: number, x: number): Tails {
  invariant(a > 0 && x >= 0, `no incomplete gamma function of ${a} and ${x}`);
  if (x === 0) return { below: 0, above: 1 };
  if (x === Number.POSITIVE_INFINITY) return { below: 1, above: 0 };
  if (x < a + 1) {
    const below = Math.min(1, poissonTerm(a, x) * series(a, x));
    return { below, above: 1 - below };
  }
  const above = Math.min(1, poissonTerm(a, x) * a * fraction(a, x));
  return { below: 1 - above, above };
}

/** 1 + x/(a+1) + x^2/((a+1)(a+2)) + ... */
function series(a: number, x: number): number {
  let term = 1;
  let sum = 1;
  for (let n = 1; n < MOST_TERMS && term > sum * 1e-17; n++) {
    term *= x / (a + n);
    sum += term;
  }
  return sum;
}

/** 1/(x+1-a - 1(1-a)/(x+3-a - 2(2-a)/(x+5-a - ...))) */
function fraction(a: number, x: number): number {
  let b = x + 1 - a;
  let c = 1 / SMALLEST;
  let d = 1 / b;
  let value = d;
  for (let n = 1; n < MOST_TERMS; n++) {
    const numerator = -n * (n - a);
    b += 2;
    d = 1 / away(numerator * d + b);
    c = away(b + numerator / c);
    value *= d * c;
    if (Math.abs(d * c - 1) < 1e-16) break;
  }
  return value;
}

/** Lentz's guard: a nought in the fraction is put a little off. */
const away = (value: number): number => (Math.abs(value) < SMALLEST ? SMALLEST : value);
