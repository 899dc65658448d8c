export { type Caution, cautionsFor } from './cautions.js';
export { CAUTIONS_EDITION, type CautionsKnown, cautionsToRead } from './cautions-known.js';
export { type ChangeOverWork, changeOver } from './change-over.js';
export type { ChangedPart } from './changed-part.js';
export { type DialFault, type DialSetting, dialForPitch, isDialTableUsable } from './dial-for-pitch.js';
export { dialInAdvice } from './dial-in/advice.js';
export { type Belief, learn, type Observation, processError, processResponse } from './dial-in/belief.js';
export type { DialIn, DialInStep } from './dial-in/dial-in.js';
export { type DialInAim, USUAL_AIM } from './dial-in/dial-in-aim.js';
export type { DialInAdvice, DialInDecision, DialInOdds, DialInReason } from './dial-in/dial-in-decision.js';
export type { Doubt } from './dial-in/doubtful-string.js';
export { type FirstBelief, firstBelief } from './dial-in/first-belief.js';
export { type Knob, type KnobMove, moveTo, nearestSetting } from './dial-in/knob.js';
export type { PastDialIn, PastPosition, PastString } from './dial-in/past-dial-in.js';
export { type PublishedRule, ruleGain } from './dial-in/published-rules.js';
export { rememberDialIn } from './dial-in/remember-dial-in.js';
export type { RunToDialIn } from './dial-in/run-to-dial-in.js';
export {
  type PitchAdvice,
  type PitchLook,
  type PitchRange,
  pitchAdvice,
  type TurnsSeen,
} from './dial-in/traverse-pitch.js';
export type { DriveSetting } from './drive-for-pitch.js';
export { endsByCertificate } from './ends/by-certificate.js';
export { censoredLogLikelihood, censoredMean } from './ends/censored-normal.js';
export { coreEndSheet } from './ends/core-end-work.js';
export {
  CHECKED_IN_ORDER,
  type CheckedThing,
  type EndCheck,
  type EndFinding,
  judgeEndCheck,
  type Seat,
} from './ends/end-check.js';
export {
  type EndedPiece,
  type ImpossibleReading,
  impossibleReading,
  possibleReading,
} from './ends/end-check-limits.js';
export type { EndMaking } from './ends/end-making.js';
export { type EndPull, gaveWay, judgePull, type PullOutcome, shareOf } from './ends/end-pull.js';
export type { EndSheet } from './ends/end-sheet.js';
export { type JointStrength, jointStrength } from './ends/joint-strength.js';
export { goodInARowFor, type PiecesToPull, piecesToPull } from './ends/pieces-to-pull.js';
export { PROOF_SHARE, type PullTest, pullTest } from './ends/pull-test.js';
export { pullsOf, standingChecks, type WrittenCheck } from './ends/standing-checks.js';
export { pullLeftBehind } from './ends/tail-friction.js';
export type { FirstOff } from './first-off.js';
export { type SmallestSample, smallestSample } from './first-off-protocol.js';
export type { OwnSpread } from './first-off-spreads.js';
export type { LeanedOn } from './lean-on-runs.js';
export { CHANGE_KINDS, type ChangeKind, changeKind } from './learn-changes/change-kind.js';
export { afterCounts, type Gamma, gammaMean } from './learn-changes/gamma-poisson.js';
export {
  type ChangeLearned,
  LEAST_SET_UPS,
  type LearnedFigure,
  learnChanges,
  learnedOf,
} from './learn-changes/learn-changes.js';
export type { PastSetUp } from './learn-changes/past-set-up.js';
export type {
  ChangeMinutes,
  ChangeScrap,
  CuttingBench,
  DialRow,
  GearWinder,
  Machine,
  ServoWinder,
  WindingMachine,
} from './machine.js';
export { machineAble } from './machine-able.js';
export { type MachineKnob, machineKnob } from './machine-knob.js';
export {
  asDialReading,
  type DialQuantity,
  type DialReading,
  type DialValue,
  dialForPull,
  dialsToRead,
  dialTableOf,
  isPullTableUsable,
  type MeasuredTable,
  measuredTable,
  type NextDial,
  nextDial,
  type PullRow,
  pullAtDial,
  type ReadOff,
  type TableDrift,
  type TurnsToCount,
  tableDrift,
  turnsToCount,
  valueRead,
  withDialTable,
} from './measure-dial/index.js';
export type { PastRun } from './past-run.js';
export { STARTING_PRACTICE, type WindingPractice } from './practice.js';
export { pulledWire } from './pulled-wire.js';
export {
  dialInFamily,
  dialInOfRun,
  pastOfRun,
  type RunAtMachine,
  type TriedString,
  wantedDiameterM,
} from './run-dial-in.js';
export { runMinutes } from './run-minutes.js';
export type { SetPoint } from './set-point.js';
export { type SetUpFault, type SetUpTask, setUp } from './set-up.js';
export type { LayerSetUp, SetUpSheet } from './set-up-sheet.js';
export { type SetUpTraits, traitsOf } from './set-up-traits.js';
export {
  type MachineCharacter,
  SIMULATED_MACHINES,
  type SimulatedKind,
} from './simulate/machine-character.js';
export { familyOffsetM, type SimulatedMachine, simulatedMachine } from './simulate/simulated-machine.js';
export { type RunTruth, type SimulatedRun, simulatedRun } from './simulate/simulated-run.js';
export type { SpindleLimit } from './spindle-speed.js';
export type { StrengthBasis, StrengthBound } from './strength-bound.js';
export { type DiameterReading, looksOf } from './string-looks.js';
export { type StringJob, type StringWork, stringWork } from './string-work.js';
export { tailSpeedMPerS } from './tail-speed.js';
export { pitchRangeOf, turnsAdvice } from './turns-advice.js';
export type { UnableReason } from './unable.js';
export {
  type DialFit,
  type Drift,
  dialFit,
  type FirstString,
  type MachineWear,
  machineWear,
  type ReadOfRun,
  type ShiftWithinRuns,
  shiftsWithinRuns,
  type WearFound,
  type WearPoint,
  type WearVerdict,
  withoutShifts,
} from './wear/index.js';
export { type SpanSegment, spanWoundTo, whirlHz } from './whirl.js';
export type { AssumedTension, WhirlCheck } from './whirl-check.js';
export { type WireUse, type WireUseOptions, wirePerString } from './wire-per-string.js';
