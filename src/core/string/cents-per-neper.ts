/** Cents in a natural-logarithm unit of frequency: turns d(ln f) into cents. Half of it is the 865.6 of handbooks. */
export const CENTS_PER_NEPER = 1200 / Math.LN2;
