/** How long wire lasts. */
export interface WireUse {
  readonly onHandKg: number;
  /** Taken off spools in the days that were looked at. */
  readonly usedKg: number;
  readonly overDays: number;
}

/** Days until the spools are empty if use goes on as it was; endless where none was used. Days = on hand / (used / days). */
export const coverDays = ({ onHandKg, usedKg, overDays }: WireUse): number =>
  usedKg <= 0 ? Number.POSITIVE_INFINITY : Math.max(0, onHandKg) / (usedKg / overDays);

/**
 * Days of cover below which wire is to be ordered where the shop has settled nothing: three weeks, by which most makers of
 * fine wire deliver. Common practice, no source.
 */
export const WIRE_COVER_PRACTICE_DAYS = 21;
