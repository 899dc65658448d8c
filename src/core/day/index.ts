export {
  type ArrangeFault,
  type Arrangement,
  type Arranger,
  type ArrangeTask,
  arranger,
  type PlannedLot,
} from './arrange-plan.js';
export {
  type ArrangementEffects,
  arrangementEffects,
  type BeforeAndAfter,
  type MovedRun,
} from './arrangement-effects.js';
export type {
  ClockTime,
  Day,
  DayCosts,
  DayOrder,
  DayPlan,
  DayRun,
  DayRunUnderWay,
  LateReason,
  MachineDay,
  PackedSet,
  PackingRoll,
  RollStop,
  UnmadeLot,
  WirePull,
} from './day.js';
export { type DayOfPlanTask, dayOfPlan } from './day-of-plan.js';
export type { LotOrder } from './lot-order.js';
export { machineFlaws } from './machine-flaws.js';
export { labelCode, NEW_STRINGS_BIN } from './packing-roll.js';
export { recipeFlaws } from './recipe-flaws.js';
export type { RunUnderWay } from './run-under-way.js';
export type { SetUpNow, Shop } from './shop.js';
export type { MachineLimits, NamedThing, ShopFlaw, WirePart } from './shop-flaw.js';
export { shopFlaws } from './shop-flaws.js';
export { whatIsKnown } from './what-is-known.js';
export {
  type DayStage,
  type DayTask,
  type ResolvedDayTask,
  workOutDay,
  workOutResolved,
} from './work-out-day.js';
