import type { Chance } from '../../../foundation/index.js';

/** A draw from the standard normal distribution (G. E. P. Box & M. E. Muller, Ann. Math. Stat. 29 (1958) 610). */
export const normal = (chance: Chance): number =>
  Math.sqrt(-2 * Math.log(1 - chance.next())) * Math.cos(2 * Math.PI * chance.next());

/** Log-normal about 1: what a shop has more or less of than was stated beforehand. */
export const factor = (chance: Chance): number => Math.exp(0.3 * normal(chance));

/** Uniform, with a standard deviation of `u`. */
export const uniform = (chance: Chance, u: number): number => Math.sqrt(3) * u * (2 * chance.next() - 1);

/** Far off, to either side: 0.4 to 1.6 times the size. */
export const awry = (chance: Chance, size: number): number =>
  (chance.next() < 0.5 ? -1 : 1) * size * (0.4 + 1.2 * chance.next());
