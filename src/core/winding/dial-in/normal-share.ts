/**
 * Share of a standard normal distribution that lies below z; absolute error below 1e-14. J. F. Hart et al.,
 * Computer Approximations (1968), algorithm 5666, in the form of G. West, Wilmott (May 2005) 70-76; coefficients
 * from memory, checked against tables.
 */
export function normalBelow(z: number): number {
  const size = Math.abs(z);
  const tail = size > 37 ? 0 : Math.exp((-size * size) / 2) * millsRatio(size);
  return z > 0 ? 1 - tail : tail;
}

/** Share of a normal distribution that lies between two limits; exactly in or out where `u` is nought. */
export function normalBetween(low: number, high: number, about: { value: number; u: number }): number {
  if (about.u === 0) return about.value >= low && about.value <= high ? 1 : 0;
  return normalBelow((high - about.value) / about.u) - normalBelow((low - about.value) / about.u);
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
const FAR_OUT = 7.07106781186547;

/** What is left above z, over exp(-z^2/2). */
function millsRatio(z: number): number {
  if (z < FAR_OUT) return polynomial(ABOVE, z) / polynomial(BELOW, z);
  const fraction = [4, 3, 2, 1].reduce((below, numerator) => z + numerator / below, z + 0.65);
  return 1 / fraction / Math.sqrt(2 * Math.PI);
}

const polynomial = (coefficients: readonly number[], z: number): number =>
  coefficients.reduce((sum, coefficient) => sum * z + coefficient, 0);
