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
export { machineFlaws } from './machine-flaws.js';
export { labelCode, NEW_STRINGS_BIN } from './packing-roll.js';
export { recipeFlaws } from './recipe-flaws.js';
export type { SetUpNow, Shop } from './shop.js';
export type { MachineLimits, NamedThing, ShopFlaw, WirePart } from './shop-flaw.js';
export { shopFlaws } from './shop-flaws.js';
export {
  type DayStage,
  type DayTask,
  type ResolvedDayTask,
  workOutDay,
  workOutResolved,
} from './work-out-day.js';
