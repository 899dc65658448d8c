import { invariant } from '../../foundation/index.js';
import type { Tails } from '../tails.js';
import { deviance } from './deviance.js';
import { stirlingError } from './stirling-error.js';

const SMALLEST = 1e-300;
const MOST_TERMS = 100_000;

/** A share and what it leaves of 1, both given because either may be too small to be had from the other. */
export interface Parts {
  readonly x: number;
  readonly rest: number;
}

/**
 * Gamma(n+1) / (Gamma(k+1) Gamma(n-k+1)) x^k rest^(n-k): the binomial law's term, for any real 0 <= k <= n
 * (Loader 2000).
 */
export function binomialTerm(k: number, n: number, { x, rest }: Parts): number {
  const left = n - k;
  if (x === 0) return k === 0 ? 1 : 0;
  if (rest === 0) return left === 0 ? 1 : 0;
  if (k === 0) return Math.exp(n * Math.log1p(-x));
  if (left === 0) return Math.exp(n * Math.log(x));
  const exponent =
    stirlingError(n) - stirlingError(k) - stirlingError(left) - deviance(k, n * x) - deviance(left, n * rest);
  return Math.exp(exponent) * Math.sqrt(n / (2 * Math.PI * k * left));
}

/**
 * The regularised incomplete beta function: below I_x(a, b), above I_rest(b, a), a and b > 0. Continued fraction NIST
 * DLMF 8.17.22 by Lentz, from the side on which it converges fast, so that either tail keeps its digits.
 */
export function betaTails(parts: Parts, a: number, b: number): Tails {
  const { x, rest } = parts;
  invariant(a > 0 && b > 0 && x >= 0 && rest >= 0, `no incomplete beta function of ${x}, ${a} and ${b}`);
  if (x === 0) return { below: 0, above: 1 };
  if (rest === 0) return { below: 1, above: 0 };
  const n = a + b;
  if (x * (n + 2) < a + 1) {
    const below = Math.min(1, ((b * binomialTerm(a, n, parts)) / n) * fraction(x, a, b));
    return { below, above: 1 - below };
  }
  const other = { x: rest, rest: x };
  const above = Math.min(1, ((a * binomialTerm(b, n, other)) / n) * fraction(rest, b, a));
  return { below: 1 - above, above };
}

function fraction(x: number, a: number, b: number): number {
  let c = 1;
  let d = 1 / away(1 - ((a + b) * x) / (a + 1));
  let value = d;
  for (let m = 1; m < MOST_TERMS; m++) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    d = 1 / away(1 + even * d);
    c = away(1 + even / c);
    value *= d * c;
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    d = 1 / away(1 + odd * d);
    c = away(1 + odd / c);
    value *= d * c;
    if (Math.abs(d * c - 1) < 1e-16) break;
  }
  return value;
}

/** Lentz's guard: a nought in the fraction is put a little off. */
const away = (value: number): number => (Math.abs(value) < SMALLEST ? SMALLEST : value);
