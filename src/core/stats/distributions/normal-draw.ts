import type { Chance } from '../../foundation/index.js';

/** A draw from a standard normal: G. E. P. Box & M. E. Muller, Ann. Math. Statist. 29 (1958) 610. */
export const normalDraw = (chance: Chance): number =>
  Math.sqrt(-2 * Math.log(1 - chance.next())) * Math.cos(2 * Math.PI * chance.next());
