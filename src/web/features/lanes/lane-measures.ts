/** Measures of the lanes, in pixels. */
export const LANE = {
  axisHeight: 34,
  height: 74,
  nameWidth: 184,
  narrowNameWidth: 156,
  barTop: 10,
  barHeight: 36,
  /** How wide a letter is at most, for what fits into a bar. */
  letter: 8.5,
  smallLetter: 6.4,
} as const;
