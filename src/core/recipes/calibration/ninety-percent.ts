import { studentT } from '../../stats/index.js';

/** Half of a 90 % interval in standard uncertainties where the noise is known by so many degrees of freedom. */
export const ninetyPercentFactor = (degrees: number): number => studentT(degrees).quantile(0.95);
