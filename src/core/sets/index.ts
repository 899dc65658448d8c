export { type BentAt, bendForceN } from './bend-force.js';
export { chooseSets, type SetWish } from './choose-sets.js';
export type { ChosenSet, ChosenString, GivenUp, SetDifference, SetMeasure } from './chosen-set.js';
export { type FanGeometry, type FanLengths, fanGeometry, fanScaleLengthsM, fretDistanceM } from './fan.js';
export { type FreeGauge, freeGauges } from './free-gauge.js';
export type { Instrument, Tuning } from './instrument.js';
export { type NeckLines, neckLines } from './neck-lines.js';
export type { NoSetFault } from './no-set-fault.js';
export { type ParsedTuning, parseTuning, type TuningFault } from './parse-tuning.js';
export { type SetPosition, usualStretchingLengthM } from './set-position.js';
export type { NeighbourRule, SetRules } from './set-rules.js';
export {
  type LikedSet,
  type SetTargets,
  type TargetFault,
  type TargetQuestion,
  type TargetWish,
  targetsFor,
} from './set-targets.js';
export { type SetWeights, USUAL_WEIGHTS } from './set-weights.js';
export { type CandidateStanding, candidateOf, type StringCandidate } from './string-candidate.js';
export { readStringKey, type StringEnd, type StringSet, type StringSpec, stringKey } from './string-set.js';
export { USUAL_TUNINGS, usualTuning } from './usual-tunings.js';
export { wantedKind } from './wanted-kind.js';
