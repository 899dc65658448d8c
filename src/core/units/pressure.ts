import { NEWTONS_PER_POUND_FORCE } from './force.js';
import { METRES_PER_INCH } from './length.js';

/** Exact: 1000 pounds-force on a square inch. */
const PASCALS_PER_KSI = (1000 * NEWTONS_PER_POUND_FORCE) / METRES_PER_INCH ** 2;

/** Pascals of a stress in thousands of pounds-force a square inch. */
export const pascalsFromKsi = (ksi: number): number => ksi * PASCALS_PER_KSI;

/** Thousands of pounds-force a square inch of a stress in pascals. */
export const ksiFromPascals = (stressPa: number): number => stressPa / PASCALS_PER_KSI;
