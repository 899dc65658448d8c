export { degreesFromRadians } from './angle.js';
export { formatDecimal, formatTrimmed } from './decimal.js';
export {
  kilogramsForceFromNewtons,
  newtonsFromKilogramsForce,
  newtonsFromPoundsForce,
  poundsForceFromNewtons,
} from './force.js';
export {
  type ForceUnit,
  formatClock,
  formatForce,
  formatFraction,
  formatGauge,
  formatMillimetres,
  formatThou,
  formatUnitWeight,
} from './format.js';
export {
  inchesFromMetres,
  METRES_PER_INCH,
  metresFromInches,
  metresFromMillimetres,
  metresFromThou,
  millimetresFromMetres,
  thouFromMetres,
} from './length.js';
export { formatMoney, roundHalfEvenMinor, shareMinor } from './money.js';
export { parseForce, STRING_PULL_RANGE_N } from './parse-force.js';
export { GAUGE_RANGE_THOU, parseGauge } from './parse-gauge.js';
export { type GaugeWithKind, parseGaugeWithKind } from './parse-gauge-with-kind.js';
export { type LengthRange, parseLength, SCALE_LENGTH_RANGE_M } from './parse-length.js';
export { MIDI_RANGE, type NoteReading, parsePitch } from './parse-pitch.js';
export {
  centsBetween,
  frequencyHz,
  nearestPitch,
  type Pitch,
  STANDARD_REFERENCE_HZ,
  semitoneRatio,
} from './pitch.js';
export { type NoteClass, noteClassName, noteClassOf, pitchName } from './pitch-name.js';
export { ksiFromPascals, pascalsFromKsi } from './pressure.js';
export { type QuantityText, readQuantity } from './quantity-text.js';
export type { ExpectedQuantity, UnitFault, UnitReading } from './unit-fault.js';
export { awgFromDiameterM, diameterMFromAwg } from './wire-gauge.js';
