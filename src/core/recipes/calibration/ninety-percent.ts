/** The 95 % point of the normal distribution: half of a 90 % interval in standard deviations. */
const NORMAL = 1.6448536269514722;

/**
 * Half of a 90 % interval in standard uncertainties where the noise is known by so many degrees of freedom: the 95 %
 * point of Student's t by the Cornish-Fisher expansion (M. Abramowitz & I. Stegun 1964, 26.7.5), to 0.1 % from 4
 * degrees on.
 */
export function ninetyPercentFactor(degrees: number): number {
  const x = NORMAL;
  const terms = [
    (x ** 3 + x) / 4,
    (5 * x ** 5 + 16 * x ** 3 + 3 * x) / 96,
    (3 * x ** 7 + 19 * x ** 5 + 17 * x ** 3 - 15 * x) / 384,
    (79 * x ** 9 + 776 * x ** 7 + 1482 * x ** 5 - 1920 * x ** 3 - 945 * x) / 92160,
  ];
  return terms.reduce((sum, term, power) => sum + term / degrees ** (power + 1), x);
}
