export { type Bend, bend, bendPullN, bentRatio } from './bend.js';
export {
  bodyOf,
  type CorePiece,
  corePiece,
  type StringBody,
  stringBody,
  wrapPiece,
} from './body.js';
export { breakingFrequencyHz, semitonesToBreaking } from './breaking.js';
export type {
  Construction,
  CoreWire,
  FamilySeat,
  PlainConstruction,
  SeatFamily,
  SeatModel,
  WoundConstruction,
  WrapBand,
  WrapLayer,
} from './construction.js';
export type { ConstructionFault, Piece } from './construction-fault.js';
export { sectionAreaM2, sectionSecondMomentM4 } from './core-section.js';
export { CORRELATED_FIGURES } from './correlated-seat.js';
export { decayDecibelsPerS, decayPerS, type StringLosses } from './decay.js';
export { type StringEstimates, stringEstimates } from './estimates.js';
export { type Feel, type FeelConditions, feel } from './feel.js';
export {
  type Action,
  actionFromTwelfthFret,
  type FrettedString,
  frettingErrorCents,
  type SetBack,
} from './fretting.js';
export { acrossCornersM } from './hexagon.js';
export { type NeckLoad, neckLoad } from './neck-load.js';
export { partialsHz, type StringEnds } from './partials.js';
export { centsPerMmPulled, pullCents, pullForCentsM, vibratoArmFallCents } from './pulled-through.js';
export { PRIOR_SEAT, type SeatFigures, seatFigures } from './seat.js';
export { seatFamilyOf, seatFor, seatOnMachine } from './seat-family.js';
export { type FittedSetBack, setBacks } from './set-back.js';
export { type PushedString, pushAside, type SidePush } from './side-push.js';
export { bendingParameter, inharmonicityOf, type StiffString } from './stiffness.js';
export { pulledFrequencyHz, type Sounding, type StretchedString, stretch, tensionN } from './stretched.js';
export { temperatureCentsPerK } from './temperature.js';
export { coreSize, wrapSize } from './wire-uncertainty.js';
export {
  touchingPitchM,
  type WoundLayer,
  type WrapPiece,
  wireLengthPerLength,
  wrapMassFromDiameterKgPerM,
} from './wrap.js';
