export { type DanglingReference, danglingReferences } from './dangling.js';
export type {
  ClockTime,
  Day,
  DayCosts,
  DayOrder,
  DayPlan,
  DayRun,
  LateReason,
  MachineDay,
  PackedSet,
  PackingRoll,
  RollStop,
  UnmadeLot,
  WirePull,
} from './day.js';
export { labelCode, NEW_STRINGS_BIN } from './packing-roll.js';
export type { SetUpNow, Shop } from './shop.js';
export { type DayStage, type DayTask, workOutDay } from './work-out-day.js';
