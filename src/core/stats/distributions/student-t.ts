import { betaTails } from '../special/beta-tails.js';
import { betaParts } from './beta.js';
import type { Continuous } from './continuous.js';

/**
 * Student's t with this many degrees of freedom (any positive number): beyond |t| lies half of I_x(degrees/2, 1/2),
 * x = degrees/(degrees + t^2), to either side (Abramowitz & Stegun 1964, 26.7.1).
 */
export function studentT(degrees: number): Continuous {
  const beyond = (t: number): number => {
    const sum = degrees + t * t;
    return betaTails({ x: degrees / sum, rest: (t * t) / sum }, degrees / 2, 0.5).below / 2;
  };
  const below = (t: number): number => (t <= 0 ? beyond(t) : 1 - beyond(t));
  const quantile = (share: number): number => {
    if (share === 0.5) return 0;
    if (share > 0.5) return -quantile(1 - share);
    const { x, rest } = betaParts({ below: 2 * share }, degrees / 2, 0.5);
    return -Math.sqrt((degrees * rest) / x);
  };
  return {
    below,
    above: (t) => below(-t),
    quantile,
    quantileAbove: (share) => -quantile(share),
  };
}
