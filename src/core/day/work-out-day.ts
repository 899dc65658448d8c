import type { CalendarDate } from '../foundation/index.js';
import { daysBetween, invariant } from '../foundation/index.js';
import {
  type OrderFault,
  type OrderLine,
  type ReadOrders,
  type ResolvedOrder,
  resolver,
  underHeading,
} from '../orders/index.js';
import { dispatch, type Lateness, type Planner } from '../planning/index.js';
import { type SetUpSheet, setUp, traitsOf } from '../winding/index.js';
import type { Day, DayOrder, DayRun, LateReason } from './day.js';
import { type CostOf, costLookUp, dayCosts, orderCostMinor } from './day-costs.js';
import { knownKinds, type MakeOf, makeLookUp } from './make.js';
import { type NetWork, netWork } from './net-work.js';
import { packingRoll } from './packing-roll.js';
import { type Schedule, schedule } from './schedule.js';
import type { Shop } from './shop.js';
import { wirePulls } from './wire-pulls.js';

export interface DayTask extends DayBasis {
  readonly read: ReadOrders;
}

/** A day's task whose orders are strings already. */
export interface ResolvedDayTask extends DayBasis {
  /** Each with a line number of its own. */
  readonly orders: readonly ResolvedOrder[];
  /** Of what could not be resolved. */
  readonly faults: readonly OrderFault[];
}

interface DayBasis {
  readonly shop: Shop;
  readonly date: CalendarDate;
  /** The dispatching rule where left out. */
  readonly planner?: Planner;
  readonly seed?: number;
  readonly iterations?: number;
  /** Told how far the work is, from 0 to 1, and at what. */
  readonly onProgress?: (share: number, stage: DayStage) => void;
}

export type DayStage = 'resolving' | 'planning' | 'writing';

/**
 * A day's work from a file of orders: each line resolved to strings and recipes, set against the shelf,
 * turned into lots, put on machines; with a set-up sheet for every run of the day, the wire to pull, the roll
 * to pack, what is late and why, and what it costs. Every line that was read ends in `orders` or `faults`.
 */
export function workOutDay(task: DayTask): Day {
  const { resolved, faults } = resolveAll(task);
  return workOutResolved({ ...task, orders: resolved, faults: [...task.read.faults, ...faults] });
}

/** The same from orders that are strings already, as a shop keeps them. */
export function workOutResolved(task: ResolvedDayTask): Day {
  const { shop, date, orders: resolved } = task;
  const kinds = knownKinds(
    shop,
    resolved.flatMap(({ strings }) => strings),
  );
  const makeOf = makeLookUp(shop, kinds);
  const work = netWork({ shop, orders: resolved, date, kinds, makeOf });
  task.onProgress?.(0.7, 'planning');
  const planned = schedule({
    shop,
    date,
    makeOf,
    lots: work.lots,
    planner: task.planner ?? dispatch,
    effort: { seed: task.seed ?? 1, iterations: task.iterations ?? 0 },
  });
  task.onProgress?.(0.9, 'writing');
  const costOf = costLookUp(shop, makeOf);
  const orders = work.orders.map((order) => dayOrder({ order, work, planned, date, shop, costOf }));
  const today = planned.plan.runs.filter(({ setUpFrom }) => setUpFrom.date === date);
  const roll = packingRoll(shop, orders, work.net, date);
  return {
    shop: {
      name: shop.name,
      invented: shop.invented,
      currency: shop.rates.currency,
      minorDigits: shop.rates.minorDigits,
    },
    date,
    orders,
    faults: [...task.faults, ...work.faults].sort((a, b) => a.line - b.line),
    lots: work.lots,
    unmade: work.unmade,
    plan: planned.plan,
    sheets: sheetsOf(shop, today, planned.plan.runs, makeOf),
    wirePulls: wirePulls(shop, today, makeOf),
    roll,
    costs: dayCosts(shop, today, roll, costOf),
  };
}

function resolveAll({ shop, read, onProgress }: DayTask): {
  readonly resolved: readonly ResolvedOrder[];
  readonly faults: Day['faults'];
} {
  const resolve = resolver(shop);
  const resolved: ResolvedOrder[] = [];
  const faults: Day['faults'][number][] = [];
  read.lines.forEach((line: OrderLine, at) => {
    const resolution = resolve(line);
    if (resolution.ok) resolved.push(resolution.value);
    else faults.push(...resolution.fault.map((fault) => underHeading(fault, read.columns)));
    onProgress?.((0.7 * (at + 1)) / read.lines.length, 'resolving');
  });
  return { resolved, faults };
}

interface DayOrderTask {
  readonly order: ResolvedOrder;
  readonly work: NetWork;
  readonly planned: Schedule;
  readonly date: CalendarDate;
  readonly shop: Shop;
  readonly costOf: CostOf;
}

/** An order is ready when the last of the lots that it waits for leaves its machine. */
function dayOrder({ order, work, planned, date, shop, costOf }: DayOrderTask): DayOrder {
  const lotIds = new Set(
    work.lots.filter(({ orderLines }) => orderLines.includes(order.line)).map(({ id }) => id),
  );
  const runs = planned.plan.runs.filter(({ lotId }) => lotIds.has(lotId));
  const last = runs.reduce<DayRun | undefined>(
    (latest, run) => (latest && isAfter(latest, run) ? latest : run),
    undefined,
  );
  const readyOn = last ? last.to.date : date;
  const daysLate = Math.max(0, daysBetween(order.due, readyOn));
  const because = daysLate > 0 ? lateReason(order, last, planned.lateBecause, date) : undefined;
  return {
    ...order,
    readyAt: last ? { date: readyOn, lotIds: [...lotIds] } : 'now',
    daysLate,
    ...(because ? { lateBecause: because } : {}),
    costMinor: orderCostMinor(shop, order, costOf),
  };
}

const isAfter = (a: DayRun, b: DayRun): boolean =>
  a.to.date > b.to.date || (a.to.date === b.to.date && a.to.minute >= b.to.minute);

function lateReason(
  order: ResolvedOrder,
  last: DayRun | undefined,
  lateBecause: ReadonlyMap<string, Lateness>,
  date: CalendarDate,
): LateReason {
  if (order.due < date || !last) return { kind: 'due-already-past', due: order.due };
  const lotLate = lateBecause.get(last.lotId);
  return lotLate?.kind === 'too-short-notice'
    ? { kind: 'too-short-notice', lotId: last.lotId, minutesNeeded: lotLate.minutesNeeded }
    : { kind: 'machine-full', machineId: last.machineId, lotId: last.lotId };
}

/** A sheet for each run of the day, which knows what its machine ran before. */
function sheetsOf(
  shop: Shop,
  today: readonly DayRun[],
  all: readonly DayRun[],
  makeOf: MakeOf,
): readonly SetUpSheet[] {
  return today.map((run) => {
    const { recipe, spec } = makeOf(run.stringKey);
    const machine = shop.machines.find(({ id }) => id === run.machineId);
    invariant(machine, 'a run is planned on a machine of the shop');
    const before = traitsBefore(shop, run, all, makeOf);
    const sheet = setUp({
      machine,
      recipe,
      spec,
      lotId: run.lotId,
      quantity: run.quantity,
      ...(before ? { from: before } : {}),
      ...(shop.seat ? { seat: shop.seat } : {}),
    });
    invariant(sheet.ok, 'a run is planned only on a machine able to make it');
    return sheet.value;
  });
}

function traitsBefore(shop: Shop, run: DayRun, all: readonly DayRun[], makeOf: MakeOf) {
  const lane = all.filter(({ machineId }) => machineId === run.machineId);
  const before = lane[lane.indexOf(run) - 1];
  if (before) {
    const { recipe, spec } = makeOf(before.stringKey);
    return traitsOf(recipe, spec.lengthM);
  }
  const now = shop.setUpNow.find(({ machineId }) => machineId === run.machineId);
  const recipe = now && shop.recipes.find(({ id }) => id === now.recipeId);
  return recipe ? traitsOf(recipe, now.lengthM) : undefined;
}
