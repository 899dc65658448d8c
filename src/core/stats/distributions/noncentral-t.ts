import { findRoot, integrate } from '../../numeric/index.js';
import { poissonTerm } from '../special/gamma-tails.js';
import { normalBelow, normalQuantile } from './normal.js';

/** Standard deviations of a chi distribution beyond which nothing is left. */
const FAR = 12;

export interface NoncentralT {
  readonly degrees: number;
  /** The shift of the numerator. */
  readonly shift: number;
}

/**
 * Share below t of (Z + shift)/sqrt(chi-square/degrees): the normal share averaged over the spread that might have been
 * found, INT Phi(t s - shift) f(s) ds (N. Johnson, S. Kotz & N. Balakrishnan, Continuous univariate distributions 2,
 * 2nd ed. 1995, 31.1). Absolute error below 1e-12.
 */
export const noncentralTBelow = (t: number, { degrees, shift }: NoncentralT): number =>
  overSpread(degrees, (s) => normalBelow(t * s - shift));

/** The t below which this share lies; relative error below 1e-9. */
export function noncentralTQuantile(share: number, at: NoncentralT): number {
  const z = normalQuantile(share);
  const middle = at.shift + z;
  let reach = 2 + Math.abs(middle);
  const off = (t: number): number => noncentralTBelow(t, at) - share;
  while (off(middle + reach) < 0) reach *= 2;
  let under = 2 + Math.abs(middle);
  while (off(middle - under) > 0) under *= 2;
  return findRoot({ f: off, low: middle - under, high: middle + reach, tolerance: 1e-12 })!;
}

/**
 * Mean of f(s) where s is a standard deviation found with so many degrees of freedom, in units of the true one: density
 * of s is that of chi over sqrt(degrees).
 */
export function overSpread(degrees: number, f: (s: number) => number, tolerance = 1e-12): number {
  const half = degrees / 2;
  // With h half of the degrees: 2 h^h s^(2h-1) exp(-h s^2) / Gamma(h), a Poisson term times 2h/s.
  const density = (s: number): number => (s === 0 ? 0 : (2 * half * poissonTerm(half, half * s * s)) / s);
  const width = 1 / Math.sqrt(2 * degrees);
  const low = Math.max(0, 1 - FAR * width);
  const high = 1 + FAR * Math.max(width, 1 / degrees);
  return integrate({ f: (s) => f(s) * density(s), low, high, pieces: 2, tolerance });
}
