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
  RunTraits,
} from './plan.js';
