import { invariant } from '../../foundation/index.js';

/**
 * Share of a standard normal distribution that lies below z; relative error below 1e-13 in either tail. J. F. Hart et
 * al., Computer approximations (1968), algorithm 5666, in the form of G. West, Wilmott (May 2005) 70-76; coefficients
 * from memory, checked against tables and against fifty digits. Beyond 3 Laplace's continued fraction (Abramowitz &
 * Stegun 1964, 26.2.14).
 */
export function normalBelow(z: number): number {
  const size = Math.abs(z);
  const tail = size > 38.6 ? 0 : halfSquareExp(size) * millsRatio(size);
  return z > 0 ? 1 - tail : tail;
}

export const normalAbove = (z: number): number => normalBelow(-z);

/** Share of a normal distribution that lies between two limits; exactly in or out where `u` is nought. */
export function normalBetween(low: number, high: number, about: { value: number; u: number }): number {
  if (about.u === 0) return about.value >= low && about.value <= high ? 1 : 0;
  return normalBelow((high - about.value) / about.u) - normalBelow((low - about.value) / about.u);
}

export const normalDensity = (z: number): number => Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);

/**
 * z below which lies this share of a standard normal distribution; relative error below 1e-12. Begun with Abramowitz &
 * Stegun 1964, 26.2.23 (to 4.5e-4), bettered by Halley's steps on the logarithm of the tail.
 */
export function normalQuantile(share: number): number {
  invariant(share > 0 && share < 1, `no z cuts off a share of ${share}`);
  if (share > 0.5) return -normalQuantile(1 - share);
  const t = Math.sqrt(-2 * Math.log(share));
  let z =
    (2.515517 + t * (0.802853 + t * 0.010328)) / (1 + t * (1.432788 + t * (0.189269 + t * 0.001308))) - t;
  for (let round = 0; round < 3; round++) {
    const below = normalBelow(z);
    const slope = normalDensity(z) / below;
    const off = Math.log(below / share) / slope;
    z -= off / (1 - (off * (-z - slope)) / 2);
  }
  return share === 0.5 ? 0 : z;
}

/** exp(-z^2/2), the square split so that rounding it costs no digits (W. J. Cody, Math. Comp. 23 (1969) 631). */
function halfSquareExp(z: number): number {
  const whole = Math.trunc(z * 16) / 16;
  return Math.exp((-whole * whole) / 2) * Math.exp((-(z - whole) * (z + whole)) / 2);
}

const ABOVE = [
  3.52624965998911e-2, 0.700383064443688, 6.37396220353165, 33.912866078383, 112.079291497871,
  221.213596169931, 220.206867912376,
];
const BELOW = [
  8.83883476483184e-2, 1.75566716318264, 16.064177579207, 86.7807322029461, 296.564248779674,
  637.333633378831, 793.826512519948, 440.413735824752,
];
/** Beyond this the continued fraction is the better of the two. */
const FAR_OUT = 3;
const FRACTION_TERMS = 40;

/** What is left above z, over exp(-z^2/2). */
function millsRatio(z: number): number {
  if (z < FAR_OUT) return polynomial(ABOVE, z) / polynomial(BELOW, z);
  let fraction = z;
  for (let numerator = FRACTION_TERMS; numerator > 0; numerator--) fraction = z + numerator / fraction;
  return 1 / fraction / Math.sqrt(2 * Math.PI);
}

const polynomial = (coefficients: readonly number[], z: number): number =>
  coefficients.reduce((sum, coefficient) => sum * z + coefficient, 0);
