import type { PlanScore } from './plan.js';

/** Below zero where `a` is the better score: lateness first, then the cost of changes, then calm, then the end of the last run. */
export const compareScores = (a: PlanScore, b: PlanScore): number =>
  a.weightedLateMinutes - b.weightedLateMinutes ||
  a.changeCostMinor - b.changeCostMinor ||
  a.movedLots - b.movedLots ||
  a.makespanMinutes - b.makespanMinutes;
