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
  WirePull,
} from './day.js';
export type { Shop, ShopRules } from './shop.js';
