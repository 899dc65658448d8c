import type { OrderInPlan, PlanView, SettledPlan } from '../../contract/index.js';
import {
  type Arrangement,
  arranger,
  type ClockTime,
  type Day,
  type DayRun,
  dayOfPlan,
} from '../../core/day/index.js';
import { byText, type CalendarDate } from '../../core/foundation/index.js';
import type { Lot, PlanScore } from '../../core/planning/index.js';
import type { ReadTransaction } from '../../store/index.js';
import { localClock } from '../local-clock.js';
import { type DayOfShop, dayOfShop } from '../orders/day-of-shop.js';
import {
  dayOf,
  type PlanRecord,
  type PlanStanding,
  planInForce,
  planStanding,
  type StandingLine,
} from '../orders/plan-standing.js';
import type { ShopBook } from '../shop/shop-book.js';
import type { RunRecord } from '../stock/live-runs.js';

/** A day's plan: the one in force with its runs, else the one that would be settled now. Nothing is written. */
export async function planSeen(tx: ReadTransaction, date: CalendarDate, now: string): Promise<PlanView> {
  const draft = await dayOfShop(tx, { date, now });
  const { day, open, book } = draft;
  const lines = [...day.orders, ...day.faults].map(({ line }) => [line, open.orderOf(line).id] as const);
  const view = {
    day,
    orderIds: Object.fromEntries(lines),
    machineIds: Object.fromEntries([...book.records.machine.byName].map(([name, { id }]) => [name, id])),
  };
  const plan = await planInForce(tx, date);
  if (!plan) return { ...view, orders: await ordersOf(tx, Object.values(view.orderIds)) };
  const standing = await planStanding(tx, { plan, book, now });
  const ids = [...Object.values(view.orderIds), ...plan.body.runs.flatMap(({ orderIds }) => orderIds)];
  return {
    ...view,
    day: settledDay(draft, standing, view.orderIds),
    orders: await ordersOf(tx, ids),
    settled: settledPlan(plan, standing, day.lots.length),
  };
}

async function ordersOf(
  { records }: ReadTransaction,
  ids: readonly string[],
): Promise<Readonly<Record<string, OrderInPlan>>> {
  const orders: Record<string, OrderInPlan> = {};
  for (const id of new Set(ids)) {
    const order = await records.get('order', id);
    if (order) orders[id] = { number: order.body.number, player: order.body.player, due: order.body.due };
  }
  return orders;
}

function settledPlan(
  { id, version, createdAt, body: { note } }: PlanRecord,
  { lines, task }: PlanStanding,
  lotsSince: number,
): SettledPlan {
  return {
    id,
    version,
    settledAt: createdAt,
    note,
    runs: Object.fromEntries(
      lines.flatMap(({ line, run }) =>
        run ? [[line.lotId, { id: run.id, name: run.body.name, state: run.state }] as const] : [],
      ),
    ),
    lotsSince,
    ...('lots' in task && !isOver(task) ? { movable: task } : {}),
  };
}

/** The day with the plan's runs in place of those that would be planned beside it, as they stand and go on from here. */
function settledDay({ day, book }: DayOfShop, standing: PlanStanding, orderIds: PlanView['orderIds']): Day {
  const { lines, underWay } = standing;
  const own = new Set(lines.flatMap(({ run }) => run?.id ?? []));
  const from = goingOn(standing, book);
  const runs = lines.flatMap((line) => dayRun(line, from, book));
  const shown = new Set(runs.map(({ lotId }) => lotId));
  return dayOfPlan({
    shop: book.shop,
    day: { ...day, underWay: (day.underWay ?? []).filter(({ runId }) => !own.has(runId)) },
    runs: runs.toSorted(bySetUp),
    lots: lines.filter(({ line }) => shown.has(line.lotId)).map((line) => lotOf(line, book, orderIds)),
    done: new Set(lines.flatMap(({ line, run }) => (run?.state === 'closed' ? [line.lotId] : []))),
    kinds: lines.flatMap(({ line, spec }) => {
      const recipeId = book.records.recipe.nameOf(line.recipeId);
      return recipeId === undefined ? [] : [{ spec, recipeId }];
    }),
    underWay: underWay.filter(({ id }) => !own.has(id)),
    score: from?.score ?? NO_SCORE,
  });
}

/** What is not begun yet in the order in which it stands, worked out from this moment on; undefined where it cannot be. */
function goingOn({ task }: PlanStanding, { shop }: ShopBook): Arrangement | undefined {
  if ('lostLotId' in task || isOver(task)) return undefined;
  const { arrange, orderNow } = arranger({ shop, ...task });
  const arranged = arrange(orderNow);
  return arranged.ok ? arranged.value : undefined;
}

const isOver = ({ date, now }: { readonly date: CalendarDate; readonly now?: ClockTime }): boolean =>
  now !== undefined && date < now.date;

/** A run with its times: of what is begun as they were and will be, of the rest as they follow from here. */
function dayRun(
  { line, run, isMovable }: StandingLine,
  from: Arrangement | undefined,
  { records }: ShopBook,
): readonly DayRun[] {
  const machineId = records.machine.nameOf(run?.body.machineId ?? line.machineId);
  if (machineId === undefined || run?.state === 'abandoned') return [];
  const arranged = isMovable ? from?.runs.find(({ lotId }) => lotId === line.lotId) : undefined;
  if (arranged) return [arranged];
  const { orderIds: _orders, runId: _run, due, ...rest } = line;
  const recipeId = records.recipe.nameOf(line.recipeId) ?? line.recipeId;
  const planned = { ...rest, machineId, recipeId, ...clocksOf(line) };
  return [run && !isMovable ? asBegun(planned, { run, due, from }) : planned];
}

interface Begun {
  readonly run: RunRecord;
  readonly due: string;
  readonly from: Arrangement | undefined;
}

function asBegun(planned: DayRun, { run: { id, body }, due, from }: Begun): DayRun {
  const setUpFrom = body.startedAt === undefined ? planned.setUpFrom : localClock(body.startedAt);
  const expected = from?.underWay.find(({ runId }) => runId === id)?.to;
  const to = body.closedAt === undefined ? (expected ?? planned.to) : localClock(body.closedAt);
  const set = { date: setUpFrom.date, minute: setUpFrom.minute + planned.setUpMinutes };
  return {
    ...planned,
    setUpFrom,
    runFrom: earlier(set, to),
    to,
    lateMinutes: to.date > due ? Math.max(1, planned.lateMinutes) : 0,
  };
}

const earlier = (a: ClockTime, b: ClockTime): ClockTime =>
  a.date < b.date || (a.date === b.date && a.minute <= b.minute) ? a : b;

const bySetUp = ({ setUpFrom: a }: DayRun, { setUpFrom: b }: DayRun): number =>
  a.date === b.date ? a.minute - b.minute : byText(a.date, b.date);

const clocksOf = ({
  setUpFrom,
  runFrom,
  to,
}: StandingLine['line']): Pick<DayRun, 'setUpFrom' | 'runFrom' | 'to'> => ({
  setUpFrom: { ...setUpFrom, date: dayOf(setUpFrom.date) },
  runFrom: { ...runFrom, date: dayOf(runFrom.date) },
  to: { ...to, date: dayOf(to.date) },
});

function lotOf({ line }: StandingLine, { records }: ShopBook, orderIds: PlanView['orderIds']): Lot {
  const waiting = new Set(line.orderIds);
  return {
    id: line.lotId,
    recipeId: records.recipe.nameOf(line.recipeId) ?? line.recipeId,
    stringKey: line.stringKey,
    quantity: line.quantity,
    orderLines: Object.entries(orderIds).flatMap(([at, id]) => (waiting.has(id) ? [Number(at)] : [])),
    due: dayOf(line.due),
  };
}

const NO_SCORE: PlanScore = { weightedLateMinutes: 0, changeCostMinor: 0, movedLots: 0, makespanMinutes: 0 };
