/** Exact by the international yard and pound agreement of 1959. */
export const METRES_PER_INCH = 0.0254;

/** Metres of `thou` thousandths of an inch. */
export const metresFromThou = (thou: number): number => (thou * METRES_PER_INCH) / 1000;

/** Thousandths of an inch of a length in metres. */
export const thouFromMetres = (lengthM: number): number => (lengthM / METRES_PER_INCH) * 1000;

/** Metres of a length in inches. */
export const metresFromInches = (inches: number): number => inches * METRES_PER_INCH;

/** Inches of a length in metres. */
export const inchesFromMetres = (lengthM: number): number => lengthM / METRES_PER_INCH;

/** Metres of a length in millimetres. */
export const metresFromMillimetres = (millimetres: number): number => millimetres / 1000;

/** Millimetres of a length in metres. */
export const millimetresFromMetres = (lengthM: number): number => lengthM * 1000;
