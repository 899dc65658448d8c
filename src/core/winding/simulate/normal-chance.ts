import type { Chance } from '../../foundation/index.js';
import { normalDraw } from '../../stats/index.js';

/** A draw whose logarithm is normal: `middle` times or over about 1 + `spread`. */
export const aboutDraw = (chance: Chance, middle: number, spread: number): number =>
  middle * Math.exp(spread * normalDraw(chance));

/** A draw from between two limits. */
export const betweenDraw = (chance: Chance, low: number, high: number): number =>
  low + (high - low) * chance.next();
