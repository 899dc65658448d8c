import type { Chance } from '../../../foundation/index.js';
import { normalDraw } from '../../../stats/index.js';

/** Log-normal about 1: what a shop has more or less of than was stated beforehand. */
export const factor = (chance: Chance): number => Math.exp(0.3 * normalDraw(chance));

/** Uniform, with a standard deviation of `u`. */
export const uniform = (chance: Chance, u: number): number => Math.sqrt(3) * u * (2 * chance.next() - 1);

/** Far off, to either side: 0.4 to 1.6 times the size. */
export const awry = (chance: Chance, size: number): number =>
  (chance.next() < 0.5 ? -1 : 1) * size * (0.4 + 1.2 * chance.next());
