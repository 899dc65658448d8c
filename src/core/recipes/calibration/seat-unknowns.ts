/**
 * What geometry leaves open and measured strings teach, in the order of every list of them here: the five figures of
 * a seat model, and by how much flattening changes with the logarithm of wrap tension against the sheet's.
 */
export const SEAT_UNKNOWNS = [
  'massSeat',
  'caliperSeat',
  'flattening',
  'extraGap',
  'axialShare',
  'tensionEffect',
] as const;

export type SeatUnknown = (typeof SEAT_UNKNOWNS)[number];

export const UNKNOWNS = SEAT_UNKNOWNS.length;

/** What is measured of a string, in the order of every list of them here. */
export const QUANTITIES = ['meanDiameter', 'largestDiameter', 'unitWeight', 'axialStiffness'] as const;

export type Quantity = (typeof QUANTITIES)[number];
