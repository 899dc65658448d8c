/**
 * Degrees of freedom of the tails that measurements are believed to have: heavy enough that a misread micrometer
 * moves little, light enough that ordinary strings count almost in full. Our own choice.
 */
const TAIL_DEGREES = 6;

/**
 * How much a measurement counts that lies so many squared standard deviations off: (nu + 1) / (nu + squares), the
 * weight of Student's t in EM (K. L. Lange, R. J. A. Little & J. M. G. Taylor, J. Am. Stat. Assoc. 84 (1989) 881),
 * never more than 1: nearness to what is expected is no merit.
 */
export const tailWeight = (squares: number): number =>
  Math.min(1, (TAIL_DEGREES + 1) / (TAIL_DEGREES + squares));

/** Beyond so many standard deviations a measurement is flagged: 1 in 1000 of ordinary ones. */
export const FLAGGED_BEYOND = 3.29;
