/** Degrees of an angle in radians. */
export const degreesFromRadians = (angleRad: number): number => (angleRad * 180) / Math.PI;
