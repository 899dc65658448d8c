export { type Calibration, calibrate, type Judged, recalibrated } from './calibrate.js';
export { CALIBRATED_RULE, USUAL_TOLERANCE_M } from './calibrated-rule.js';
export { calibratedSeat } from './calibrated-seat.js';
export {
  type CalibrationPoint,
  type CalibrationPoints,
  calibrationPoints,
  type PointBand,
} from './calibration-points.js';
export { CALIBRATION_PRIOR, type CalibrationPrior, type NoiseSpreads } from './calibration-prior.js';
export { type FamilyStanding, familyStandings } from './family-standing.js';
export type { MeasuredString, WireUsed } from './measured-string.js';
export { type NextMeasurement, nextMeasurements } from './next-measurement.js';
export { ninetyPercentFactor } from './ninety-percent.js';
export { type OddLot, type Outlier, oddLots, outliers } from './outliers.js';
export { predictString, type StringAsked, type StringPrediction } from './predict-string.js';
export { type RecipeAsked, type RecipeStanding, recipeStandings } from './recipe-standing.js';
export { familyKey } from './sample.js';
export { SEAT_UNKNOWNS, type SeatUnknown } from './seat-unknowns.js';
export { type SyntheticShop, syntheticShop } from './simulate/synthetic-shop.js';
export { type TaughtUnknown, taughtSeat } from './taught-seat.js';
export { TELLING, type Telling } from './told-by-string.js';
