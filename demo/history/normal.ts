import type { Chance } from '../../src/core/foundation/index.js';

/** A draw from the normal distribution about 0 (Box and Muller, 1958: sqrt(-2 ln u) cos(2 pi v)). */
export const normal = (chance: Chance, deviation: number): number =>
  deviation * Math.sqrt(-2 * Math.log(1 - chance.next())) * Math.cos(2 * Math.PI * chance.next());
