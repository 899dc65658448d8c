import type { CalendarDate } from '../foundation/index.js';
import type { SetUpTraits } from '../winding/index.js';

/** Strings of one kind to be made together: the unit of planning. */
export interface Lot {
  readonly id: string;
  readonly recipeId: string;
  /** The kind of string, as `stringKey` words it. */
  readonly stringKey: string;
  /** Good strings wanted, rounded up to the shop's lot size. */
  readonly quantity: number;
  /** Lines of the orders file that wait for it; empty where it only fills a bin. */
  readonly orderLines: readonly number[];
  readonly due: CalendarDate;
}

/**
 * A lot as the planner sees it. Times are working minutes since the plan's start: one axis for the shop, a
 * day on it as long as the longest machine's day.
 */
export interface PlanJob {
  readonly id: string;
  readonly traits: SetUpTraits;
  /** Machines that can make it and how long each takes without set-up. Empty is refused before planning. */
  readonly eligible: readonly { readonly machineId: string; readonly processMinutes: number }[];
  /** Set-up does not begin before this minute: wire arrives, core is prepared. */
  readonly releaseMinute: number;
  /** Promised: lateness past it counts first. Left out where the lot only fills a bin. */
  readonly dueMinute?: number;
  /** Weight of a minute's lateness: the orders that wait. */
  readonly weight: number;
  /** Under way: stays on its machine at the head of its lane, in this order. */
  readonly frozen?: { readonly machineId: string; readonly order: number };
  /** Where it stands in the plan in force: people count on it, so it is moved only for a reason. */
  readonly inForce?: { readonly machineId: string; readonly afterJobId?: string };
}

export interface PlanMachine {
  readonly id: string;
  /** What is set up now; left out where nothing is. */
  readonly setUp?: SetUpTraits;
  /**
   * Shifts as working minutes from the plan's start, ascending, apart; a run may pause between them. At
   * least one. The last is open-ended: work that fits nowhere else is planned behind it, never dropped.
   */
  readonly shifts: readonly { readonly fromMinute: number; readonly toMinute: number }[];
  readonly changeOver: ChangeOver;
}

/** Minutes and scrap of changing from one run to the next; `from` is left out at a cold start. */
export type ChangeOver = (
  from: SetUpTraits | undefined,
  to: SetUpTraits,
) => { readonly minutes: number; readonly scrapStrings: number; readonly costMinor: number };

export interface PlanProblem {
  readonly jobs: readonly PlanJob[];
  readonly machines: readonly PlanMachine[];
}

export interface PlanEffort {
  readonly seed: number;
  /** Stop after this many iterations of improvement; the same seed and count give the same plan. */
  readonly iterations: number;
  /** Asked between iterations; true stops with the best so far. */
  readonly shouldStop?: () => boolean;
  readonly onProgress?: (share: number, best: PlanScore) => void;
}

/** Compared in order: lateness first, then the cost of changes, then calm, then the end of the last run. */
export interface PlanScore {
  readonly weightedLateMinutes: number;
  readonly changeCostMinor: number;
  /** Lots on another machine, or behind another lot, than in the plan in force. */
  readonly movedLots: number;
  readonly makespanMinutes: number;
}

export interface PlannedRun {
  readonly jobId: string;
  readonly machineId: string;
  readonly setUpFromMinute: number;
  readonly runFromMinute: number;
  readonly toMinute: number;
  /** Working minutes; the clock may show more where a shift ends in between. */
  readonly setUpMinutes: number;
  readonly scrapStrings: number;
  readonly lateMinutes: number;
  /** Why it stands here: facts from which each surface makes its sentence. */
  readonly reason: PlacementReason;
}

export type PlacementReason =
  | { readonly kind: 'frozen' }
  | { readonly kind: 'due-first'; readonly dueMinute: number }
  | { readonly kind: 'same-set-up'; readonly keeps: readonly ('core' | 'wrap' | 'alloy' | 'length')[] }
  | { readonly kind: 'released'; readonly releaseMinute: number }
  | { readonly kind: 'only-machine' }
  /** Due, work and set-up weighed together put it before a lot that is due earlier. */
  | { readonly kind: 'weighed'; readonly aheadOf: string }
  | { readonly kind: 'fills-bin' }
  /** A person put it there, or put another out of its way. */
  | { readonly kind: 'by-hand' };

export interface Plan {
  /** In the order in which set-up begins. */
  readonly runs: readonly PlannedRun[];
  readonly score: PlanScore;
}

/** What every planner is: the dispatching rule of today and any optimiser after it. */
export type Planner = (problem: PlanProblem, effort: PlanEffort) => Plan;
