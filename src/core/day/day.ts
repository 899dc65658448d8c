import type { CalendarDate } from '../foundation/index.js';
import type { OrderFault, ResolvedOrder } from '../orders/index.js';
import type { Lot, PlacementReason, PlanScore } from '../planning/index.js';
import type { SetUpSheet } from '../winding/index.js';

/** A day's work: what an orders file turns into. Plain data in SI units; money in minor units. */
export interface Day {
  readonly shop: {
    readonly name: string;
    readonly invented: boolean;
    readonly currency: string;
    readonly minorDigits: number;
  };
  readonly date: CalendarDate;
  readonly orders: readonly DayOrder[];
  /** Lines that could not go on. Every line of the file is in `orders` or here. */
  readonly faults: readonly OrderFault[];
  readonly lots: readonly Lot[];
  /** What bins lack and cannot be made now. */
  readonly unmade: readonly UnmadeLot[];
  readonly plan: DayPlan;
  /** Runs settled before, which the plan stands behind; left out where no records of runs were given. */
  readonly underWay?: readonly DayRunUnderWay[];
  /** One for every run that starts on the day, in the order of `plan.runs`. */
  readonly sheets: readonly SetUpSheet[];
  readonly wirePulls: readonly WirePull[];
  readonly roll: PackingRoll;
  readonly costs: DayCosts;
}

export interface DayOrder extends ResolvedOrder {
  /** From the shelf now, or when the last leaves its machine of the lots made for it and of the runs under way that it waits for. */
  readonly readyAt: 'now' | { readonly date: CalendarDate; readonly lotIds: readonly string[] };
  /** Calendar days after the due date; 0 in time. */
  readonly daysLate: number;
  /** Why it is late, where it is. */
  readonly lateBecause?: LateReason;
  readonly costMinor: number;
}

export type LateReason =
  | { readonly kind: 'due-already-past'; readonly due: CalendarDate }
  | { readonly kind: 'machine-full'; readonly machineId: string; readonly lotId: string }
  | { readonly kind: 'too-short-notice'; readonly lotId: string; readonly minutesNeeded: number }
  /** Of a run that was settled before this plan. */
  | { readonly kind: 'waits-for-run'; readonly machineId: string; readonly run: string };

/** Strings that would have filled a bin, and why they are not made: what no recipe makes, no machine, too little wire. */
export interface UnmadeLot {
  readonly stringKey: string;
  readonly quantity: number;
  readonly because: 'recipe' | 'machine' | 'wire';
  readonly wireId?: string;
  readonly shortKg?: number;
}

export interface DayPlan {
  readonly runs: readonly DayRun[];
  readonly score: PlanScore;
  /** Share of each machine's minutes of the day that is taken, and good strings it makes that day. */
  readonly machines: readonly MachineDay[];
}

export interface MachineDay {
  readonly machineId: string;
  readonly name: string;
  readonly stringsToday: number;
  readonly busyShareToday: number;
}

/** A run with its place on the clock. */
export interface DayRun {
  readonly lotId: string;
  readonly machineId: string;
  readonly recipeId: string;
  readonly stringKey: string;
  readonly quantity: number;
  readonly scrapStrings: number;
  readonly setUpFrom: ClockTime;
  readonly runFrom: ClockTime;
  readonly to: ClockTime;
  readonly setUpMinutes: number;
  readonly lateMinutes: number;
  readonly reason: PlacementReason;
}

/** A run that was planned or under way before this plan, and until when its machine is busy with it. */
export interface DayRunUnderWay {
  readonly runId: string;
  /** As the floor calls it. */
  readonly name: string;
  readonly machineId: string;
  readonly stringKey: string;
  /** Good strings that it brings. */
  readonly quantity: number;
  /** From when on in this plan; its set-up, where that is still to be done. */
  readonly from: ClockTime;
  /** When it is expected to end; the plan's start where it is ended before. */
  readonly to: ClockTime;
}

/** Local wall-clock time in the shop. */
export interface ClockTime {
  readonly date: CalendarDate;
  /** Minutes after midnight. */
  readonly minute: number;
}

/** Wire to carry to the machines on the day, from which spool, by weight. */
export interface WirePull {
  readonly wireId: string;
  readonly neededKg: number;
  readonly neededM: number;
  readonly spools: readonly {
    readonly spoolId: string;
    readonly lot: string;
    readonly takeKg: number;
    readonly leavesKg: number;
  }[];
  /** What no spool can give; 0 where there is enough. */
  readonly shortKg: number;
  readonly runs: readonly string[];
}

/** Orders to pack together, bins walked once. */
export interface PackingRoll {
  /** In walking order. */
  readonly stops: readonly RollStop[];
  readonly sets: readonly PackedSet[];
}

export interface RollStop {
  readonly binId: string;
  readonly walkOrder: number;
  readonly picks: readonly {
    readonly stringKey: string;
    readonly count: number;
    readonly forLines: readonly number[];
  }[];
}

export interface PackedSet {
  readonly line: number;
  readonly orderId: string;
  readonly player: string;
  readonly setName: string;
  readonly quantity: number;
  readonly state: 'pack-now' | 'after-winding';
  readonly strings: readonly {
    readonly position: number;
    readonly stringKey: string;
    readonly binId: string;
  }[];
  /** What the label's code reads as: `TW1:order:line`. */
  readonly labelCode: string;
}

export interface DayCosts {
  readonly wireMinor: number;
  readonly endsMinor: number;
  readonly packMinor: number;
  readonly labourMinor: number;
  readonly overheadMinor: number;
  readonly scrapMinor: number;
  readonly totalMinor: number;
}
