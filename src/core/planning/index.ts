export { type AtcsInput, type AtcsScale, atcsIndex, atcsScale } from './atcs.js';
export {
  type DailyCapacity,
  dailyCapacity,
  grossesFromStrings,
  STRINGS_PER_GROSS,
  stringsFromGrosses,
} from './capacity.js';
export { checkLane } from './check-lane.js';
export { checkPlan, type PlanCheck, type PlanFault } from './check-plan.js';
export { dispatch } from './dispatch.js';
export { type Lateness, whyLate } from './lateness.js';
export { type Lots, type LotWishes, lotsFor } from './lots.js';
export { type NetDemand, netDemand, stringDemand } from './net-demand.js';
export { type PlanBound, planBound } from './optimise/lower-bound.js';
export { optimise } from './optimise/optimise.js';
export type {
  ChangeOver,
  Lot,
  PlacementReason,
  Plan,
  PlanEffort,
  PlanJob,
  PlanMachine,
  PlannedRun,
  Planner,
  PlanProblem,
  PlanScore,
} from './plan.js';
export { type LaneOrder, type LaneOrderFault, planInOrder } from './plan-in-order.js';
export { compareScores } from './score.js';
export { busyMinutesWithin, type PlanWindow, stringsMadeWithin } from './work-done.js';
export {
  type ShiftsWanted,
  type WorkingClock,
  type WorkingDays,
  type WorkingTime,
  workingTime,
} from './working-time.js';
