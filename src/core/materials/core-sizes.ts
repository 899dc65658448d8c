import { ASTM_A228 } from './a228.js';

/** The preferred diameters of music wire: the sizes that ASTM A228 lists, in metres, rising. */
export const PREFERRED_CORE_DIAMETERS_M: readonly number[] = ASTM_A228.rows.map(({ diameterM }) => diameterM);
