export type {
  Alloy,
  AlloyId,
  Constituent,
  NickelShare,
  SourcedFigure,
  Standing,
  TemperBand,
} from './alloy.js';
export { ALLOYS, alloy } from './alloys.js';
export { PREFERRED_CORE_DIAMETERS_M } from './core-sizes.js';
export { nickelPlatedDensityKgPerM3 } from './density-of-mixtures.js';
export {
  DIAMETER_TOLERANCES,
  diameterToleranceM,
  type ToleranceBand,
  type ToleranceFault,
  type ToleranceTable,
  workshopDiameterToleranceM,
} from './diameter-tolerance.js';
export { type MaterialCaution, materialCautions } from './hazards.js';
export type { Shelf, Source } from './source.js';
export { SOURCES, type SourceKey } from './sources.js';
export {
  STRENGTH_TABLES,
  type StrengthFault,
  type StrengthQuestion,
  type StrengthReading,
  type TensileStrength,
  tensileStrength,
} from './strength.js';
export type { StrengthRow, StrengthTable, StrengthTableId } from './strength-table.js';
export {
  metresPerKilogram,
  type SpoolContents,
  type SpoolFault,
  spoolContents,
  weighedUnitWeightKgPerM,
  wireUnitWeightKgPerM,
} from './wire-weight.js';
export { type WrapStrengthFault, wrapStrength } from './wrap-strength.js';
