import { CENTS_PER_NEPER } from './cents-per-neper.js';
import type { StretchedString } from './stretched.js';

/**
 * Cents that a string's pitch moves per kelvin of warming, negative when it falls: with the ends held,
 * df/f = -(kappa/2) (alpha_string - alpha_frame) dTheta. A frame that does not expand (0) gives the largest
 * fall: real necks expand and creep.
 */
export const temperatureCentsPerK = (
  string: Pick<StretchedString, 'kappa' | 'body'>,
  frameExpansionPerK = 0,
): number => (-CENTS_PER_NEPER / 2) * string.kappa * (string.body.expansionPerK - frameExpansionPerK);
