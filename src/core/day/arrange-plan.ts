import { type CalendarDate, fail, type Result, succeed } from '../foundation/index.js';
import {
  type Lot,
  type PlacementReason,
  type Plan,
  type PlanMachine,
  type PlanProblem,
  type PlanScore,
  planInOrder,
  workingTime,
} from '../planning/index.js';
import { type StringSpec, stringKey } from '../sets/index.js';
import type { UnableReason } from '../winding/index.js';
import type { ClockTime, DayRun, DayRunUnderWay } from './day.js';
import type { LotOrder } from './lot-order.js';
import { knownKinds, makeLookUp } from './make.js';
import { movedByHand } from './moved-by-hand.js';
import { inOrderOfEnd, type RunUnderWay } from './run-under-way.js';
import { busyUntil, moment, onTheClock, problemOf } from './schedule.js';
import type { Shop } from './shop.js';
import { workUnderWay } from './work-under-way.js';

/** A lot of a plan that nobody began yet: it may stand elsewhere. */
export interface PlannedLot {
  readonly lotId: string;
  readonly machineId: string;
  readonly recipeId: string;
  readonly spec: StringSpec;
  readonly quantity: number;
  readonly due: CalendarDate;
  /** Orders that wait for it; none where it fills a bin. */
  readonly orderIds: readonly string[];
  /** Why it stands where it does now. */
  readonly reason: PlacementReason;
}

export interface ArrangeTask {
  readonly shop: Shop;
  readonly date: CalendarDate;
  /** Nothing begins before it; the day's start where left out. */
  readonly now?: ClockTime;
  /** On each machine in the order in which they stand now. */
  readonly lots: readonly PlannedLot[];
  readonly underWay: readonly RunUnderWay[];
}

/** The lots in an order, with the times that follow from it. */
export interface Arrangement {
  readonly runs: readonly DayRun[];
  readonly underWay: readonly DayRunUnderWay[];
  readonly score: PlanScore;
}

export type ArrangeFault =
  | { readonly code: 'machine-unknown'; readonly machineId: string }
  | { readonly code: 'machine-not-able'; readonly machineId: string; readonly lotId: string }
  | {
      readonly code: 'lots-differ';
      readonly missing: readonly string[];
      readonly unknown: readonly string[];
    };

export interface Arranger {
  readonly orderNow: LotOrder;
  /** Why a machine cannot make a lot; empty where it can. */
  readonly unable: (lotId: string, machineId: string) => readonly UnableReason[];
  readonly arrange: (order: LotOrder) => Result<Arrangement, ArrangeFault>;
}

/** Works out what follows when lots of a plan change places; each order that is tried costs but the walk along its lanes. */
export function arranger(task: ArrangeTask): Arranger {
  const { shop, date, lots: planned } = task;
  const makeOf = makeLookUp(shop, knownKinds({ ...shop, strings: [] }, planned));
  const lots = planned.map(asLot);
  const dayMinutes = Math.max(1, ...shop.machines.map(({ minutesPerDay }) => minutesPerDay));
  const time = workingTime({ ...shop.rules, start: date, dayMinutes });
  const at = moment(task, time, dayMinutes);
  const underWay = inOrderOfEnd(task.underWay);
  const before = workUnderWay({ shop, runs: underWay, ...at });
  const problem = notBefore(problemOf({ shop, lots, makeOf }, time, before), at.nowMinute);
  const orderNow = orderOf(shop, planned);
  const ids = new Set(underWay.map(({ id }) => id));
  return {
    orderNow,
    unable: (lotId, machineId) => {
      const lot = lots.find(({ id }) => id === lotId);
      const found = lot && makeOf(lot.stringKey).unable.find(({ machine }) => machine.id === machineId);
      return found?.reasons ?? [];
    },
    arrange: (order) => {
      const plan = planInOrder(
        problem,
        order.map(({ machineId, lotIds }) => ({ machineId, jobIds: lotIds })),
      );
      if (!plan.ok) return fail(inLots(plan.fault));
      const runs = plan.value.runs
        .filter(({ jobId }) => !ids.has(jobId))
        .map((run) => onTheClock(run, lots, time));
      return succeed({
        runs: withReasons(runs, planned, movedByHand(orderNow, order)),
        underWay: underWay.map((run) => busyUntil(run, plan.value, time)),
        score: plan.value.score,
      });
    },
  };
}

const asLot = ({ lotId, recipeId, spec, quantity, due, orderIds }: PlannedLot): Lot => ({
  id: lotId,
  recipeId,
  stringKey: stringKey(spec),
  quantity,
  orderLines: orderIds.map((_, at) => at + 1),
  due,
});

const orderOf = (shop: Shop, lots: readonly PlannedLot[]): LotOrder =>
  shop.machines.map(({ id: machineId }) => ({
    machineId,
    lotIds: lots.filter((lot) => lot.machineId === machineId).map(({ lotId }) => lotId),
  }));

/** What is past of the day is no longer to be had. The last shift has no end, so there is always one left. */
function notBefore(problem: PlanProblem, nowMinute: number): PlanProblem {
  const left = (shifts: PlanMachine['shifts']): PlanMachine['shifts'] =>
    shifts
      .filter(({ toMinute }, at) => toMinute > nowMinute || at === shifts.length - 1)
      .map(({ fromMinute, toMinute }) => ({
        fromMinute: Math.max(fromMinute, nowMinute),
        toMinute: Math.max(toMinute, nowMinute + 1),
      }));
  return {
    ...problem,
    machines: problem.machines.map((machine) => ({ ...machine, shifts: left(machine.shifts) })),
  };
}

type PlanFault = Extract<ReturnType<typeof planInOrder>, { readonly ok: false }>['fault'];

function inLots(fault: PlanFault): ArrangeFault {
  switch (fault.code) {
    case 'machine-not-able':
      return { code: fault.code, machineId: fault.machineId, lotId: fault.jobId };
    case 'jobs-differ':
      return { code: 'lots-differ', missing: fault.missing, unknown: fault.unknown };
    default:
      return fault;
  }
}

/**
 * What a person moved stands there by hand. Of the others the reason is found anew; that the rule weighed one lot before
 * another holds only where it did so before.
 */
function withReasons(
  runs: readonly DayRun[],
  planned: readonly PlannedLot[],
  moved: ReadonlySet<string>,
): readonly DayRun[] {
  const before = new Map(planned.map(({ lotId, reason }) => [lotId, reason]));
  const byHand: PlacementReason = { kind: 'by-hand' };
  return runs.map((run) => {
    const reason = before.get(run.lotId);
    const stays = run.reason.kind !== 'weighed' || isSame(run.reason, reason);
    const wasByHand = reason?.kind === 'by-hand';
    return { ...run, reason: moved.has(run.lotId) || wasByHand || !stays ? byHand : run.reason };
  });
}

const isSame = (one: Plan['runs'][number]['reason'], other: PlacementReason | undefined): boolean =>
  JSON.stringify(one) === JSON.stringify(other);
