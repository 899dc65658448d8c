import type { CalendarDate } from '../foundation/index.js';
import { invariant } from '../foundation/index.js';
import {
  type OrderFault,
  type OrderLine,
  type ReadOrders,
  type ResolvedOrder,
  resolver,
  underHeading,
} from '../orders/index.js';
import { dispatch, type Planner } from '../planning/index.js';
import { reserveWire, type StringStock } from '../stock/index.js';
import { type SetUpSheet, type SetUpTraits, setUp, traitsOf } from '../winding/index.js';
import type { ClockTime, Day, DayRun } from './day.js';
import { costLookUp, dayCosts, orderCostMinor } from './day-costs.js';
import { knownKinds, type MakeOf, makeLookUp } from './make.js';
import { netWork } from './net-work.js';
import { packingRoll } from './packing-roll.js';
import { readiness } from './readiness.js';
import { inOrderOfEnd, type RunUnderWay, stringsToCome, wireStillTaken } from './run-under-way.js';
import { schedule } from './schedule.js';
import type { Shop } from './shop.js';
import { whatIsKnown } from './what-is-known.js';
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
  /** Strings that were made and only have to be let onto the shelf. */
  readonly inCheck?: readonly StringStock[];
  /** Runs that were settled before: what they bring counts, what they need is not free. */
  readonly underWay?: readonly RunUnderWay[];
  /** When it is worked out; at the start of the day where left out. Runs under way go on between then and the day. */
  readonly now?: ClockTime;
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

/** The same from orders that are strings already and runs that are under way, as a shop keeps them. */
export function workOutResolved(task: ResolvedDayTask): Day {
  const { date, orders: resolved, inCheck = [], now } = task;
  const underWay = inOrderOfEnd(task.underWay ?? []);
  const coming = [...inCheck, ...underWay.map(stringsToCome)];
  const shop = withFreeWire(task.shop, underWay);
  const kinds = knownKinds(
    { ...shop, strings: [...shop.strings, ...coming] },
    resolved.flatMap(({ strings }) => strings),
  );
  const makeOf = makeLookUp(shop, kinds);
  const work = netWork({ shop, orders: resolved, date, kinds, makeOf, coming });
  task.onProgress?.(0.7, 'planning');
  const planned = schedule({
    shop,
    date,
    makeOf,
    lots: work.lots,
    underWay,
    ...(now ? { now } : {}),
    planner: task.planner ?? dispatch,
    effort: { seed: task.seed ?? 1, iterations: task.iterations ?? 0 },
  });
  task.onProgress?.(0.9, 'writing');
  const costOf = costLookUp(shop, makeOf);
  const readyOf = readiness(work, planned, date);
  const orders = work.orders.map((order) => ({
    ...order,
    ...readyOf(order),
    costMinor: orderCostMinor(shop, order, costOf),
  }));
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
    ...(task.underWay ? { underWay: planned.underWay } : {}),
    sheets: sheetsOf({ shop, makeOf, underWay, all: planned.plan.runs }, today),
    wirePulls: wirePulls(shop, today, makeOf),
    roll,
    costs: dayCosts(shop, today, roll, costOf),
  };
}

/** The shop with the wire on its spools that runs under way leave for others. */
export const withFreeWire = (shop: Shop, underWay: readonly RunUnderWay[]): Shop => ({
  ...shop,
  spools: reserveWire(
    shop.spools,
    underWay.flatMap((run) => wireStillTaken(run, shop)),
  ),
});

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

export interface SheetTask {
  readonly shop: Shop;
  readonly makeOf: MakeOf;
  readonly underWay: readonly RunUnderWay[];
  /** Every run of the plan. */
  readonly all: readonly DayRun[];
}

/** A sheet for each run of the day, which knows what its machine ran before. */
export function sheetsOf(task: SheetTask, today: readonly DayRun[]): readonly SetUpSheet[] {
  const { shop, makeOf } = task;
  return today.map((run) => {
    const { recipe, spec } = makeOf(run.stringKey);
    const machine = shop.machines.find(({ id }) => id === run.machineId);
    invariant(machine, 'a run is planned on a machine of the shop');
    const before = traitsBefore(task, run);
    const sheet = setUp({
      machine,
      recipe,
      spec,
      lotId: run.lotId,
      quantity: run.quantity,
      ...(before ? { from: before } : {}),
      ...whatIsKnown(shop),
    });
    invariant(sheet.ok, 'a run is planned only on a machine able to make it');
    return sheet.value;
  });
}

function traitsBefore({ shop, makeOf, underWay, all }: SheetTask, run: DayRun): SetUpTraits | undefined {
  const { machineId } = run;
  const lane = all.filter((each) => each.machineId === machineId);
  const before = lane[lane.indexOf(run) - 1];
  if (before) {
    const { recipe, spec } = makeOf(before.stringKey);
    return traitsOf(recipe, spec.lengthM);
  }
  const standing = underWay.filter((each) => each.machineId === machineId).at(-1);
  if (standing) return traitsOf(standing.recipe, standing.spec.lengthM);
  const now = shop.setUpNow.find((each) => each.machineId === machineId);
  const recipe = now && shop.recipes.find(({ id }) => id === now.recipeId);
  return recipe ? traitsOf(recipe, now.lengthM) : undefined;
}
