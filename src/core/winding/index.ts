export type { Caution } from './cautions.js';
export { type ChangedPart, type ChangeOverWork, changeOver } from './change-over.js';
export { type DialFault, type DialSetting, dialForPitch, isDialTableUsable } from './dial-for-pitch.js';
export type { DriveSetting } from './drive-for-pitch.js';
export type { FirstOff } from './first-off.js';
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
export type { PastRun } from './past-run.js';
export { STARTING_PRACTICE, type WindingPractice } from './practice.js';
export { pulledWire } from './pulled-wire.js';
export { runMinutes } from './run-minutes.js';
export type { SetPoint } from './set-point.js';
export { type SetUpFault, type SetUpTask, setUp } from './set-up.js';
export type { LayerSetUp, SetUpSheet } from './set-up-sheet.js';
export { type SetUpTraits, traitsOf } from './set-up-traits.js';
export type { SpindleLimit } from './spindle-speed.js';
export type { StrengthBasis, StrengthBound } from './strength-bound.js';
export { type StringJob, type StringWork, stringWork } from './string-work.js';
export { tailSpeedMPerS } from './tail-speed.js';
export type { UnableReason } from './unable.js';
export { type SpanSegment, spanWoundTo, whirlHz } from './whirl.js';
export type { AssumedTension, WhirlCheck } from './whirl-check.js';
export { type WireUse, type WireUseOptions, wirePerString } from './wire-per-string.js';
