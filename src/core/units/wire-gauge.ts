/** AWG 36 is 0.005 in, and 39 steps up from it (0000, n = -3) are 92 times that: ASTM B258. */
const AWG_36_DIAMETER_M = 0.000127;
const AWG_SPAN_RATIO = 92;
const AWG_SPAN_STEPS = 39;

/**
 * Diameter, m, of American Wire Gauge `n`: d = 0.127 mm * 92^((36 - n)/39) (ASTM B258). 00 is n = -1.
 * For display only, and for copper alloys only: steel wire has other gauges, and a string's gauge is its
 * diameter in thousandths of an inch.
 */
export const diameterMFromAwg = (n: number): number =>
  AWG_36_DIAMETER_M * AWG_SPAN_RATIO ** ((36 - n) / AWG_SPAN_STEPS);

/** American Wire Gauge, a fraction where between two numbers, of a diameter in metres (ASTM B258). Display only. */
export const awgFromDiameterM = (diameterM: number): number =>
  36 - (AWG_SPAN_STEPS * Math.log(diameterM / AWG_36_DIAMETER_M)) / Math.log(AWG_SPAN_RATIO);
