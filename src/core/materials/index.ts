export type { Alloy, AlloyId, SourcedFigure, Standing, TemperBand } from './alloy.js';
export type { SourceKey } from './sources.js';
export type { StrengthTableId } from './strength.js';
