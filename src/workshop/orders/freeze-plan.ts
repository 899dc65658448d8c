import type { BodyOf, StoredRecord } from '../../contract/index.js';
import { freezePlan as definition } from '../../contract/index.js';
import type { Day, DayRun } from '../../core/day/index.js';
import { invariant, succeed } from '../../core/foundation/index.js';
import { PLAN_LIFE } from '../../core/stock/index.js';
import { planRun } from '../production/plan-run.js';
import { refuse } from '../refusal.js';
import type { ShopBook } from '../shop/shop-book.js';
import { useCase, type Work } from '../use-case.js';
import { dayOfShop } from './day-of-shop.js';
import type { OpenOrders } from './open-orders.js';
import { needDay } from './order-lines.js';
import { supersedePlans } from './supersede-plans.js';

/**
 * A day's plan, settled: what open orders and bins want beyond what lies there and is coming, on which machine
 * and when, behind runs that were settled before. Runs that start on the day become runs to start; those after it are
 * kept in the plan to look at, and are planned anew on their day.
 */
export const freezePlan = useCase(definition, async (work, { id, date: text, note = '' }) => {
  const { tx, now } = work;
  const date = needDay(text);
  const runsBefore = await supersedePlans(work, date);
  const { day, book, open, specOf } = await dayOfShop(tx, { date, now });
  const lines = day.plan.runs.map((run) => planLine(run, { day, book, open, newId: work.newId }));
  const underWay = (day.underWay ?? []).map((run) => ({ ...run, machineId: machineOf(run, book).id }));
  const body = { date, note, runs: lines, ...(underWay.length > 0 ? { underWay } : {}) };
  const plan = await tx.records.insert('plan', { id, state: PLAN_LIFE.initial, at: now, body });
  const runs: StoredRecord<BodyOf<'run'>>[] = [];
  for (const line of lines) {
    if (line.runId === undefined) continue;
    const name = `${date} run ${runsBefore + runs.length + 1}`;
    runs.push(
      await runToStart(work, { ...line, id: line.runId, name, planId: id, spec: specOf(line.stringKey) }),
    );
  }
  return succeed({ plan, runs, ...whatIsNotInTime(day, open) });
});

type PlanLine = BodyOf<'plan'>['runs'][number];

interface LineTask {
  readonly day: Day;
  readonly book: ShopBook;
  readonly open: OpenOrders;
  readonly newId: () => string;
}

/** A run of the plan with the records that it is about. */
function planLine(run: DayRun, { day, book, open, newId }: LineTask): PlanLine {
  const machine = machineOf(run, book);
  const recipe = book.records.recipe.byName.get(run.recipeId);
  const lot = day.lots.find(({ id }) => id === run.lotId);
  invariant(recipe && lot, 'the core plans with recipes of the shop that it was given');
  const orderIds = [...new Set(lot.orderLines.map((line) => open.orderOf(line).id))];
  const runId = run.setUpFrom.date === day.date ? newId() : undefined;
  return {
    ...run,
    machineId: machine.id,
    recipeId: recipe.id,
    reason: run.reason as PlanLine['reason'],
    due: lot.due,
    orderIds,
    ...(runId === undefined ? {} : { runId }),
  };
}

function machineOf({ machineId }: { readonly machineId: string }, { records }: ShopBook) {
  const machine = records.machine.byName.get(machineId);
  invariant(machine, 'the core plans with machines of the shop that it was given');
  return machine;
}

async function runToStart(work: Work, run: Parameters<typeof planRun.run>[1]) {
  const { id, name, recipeId, machineId, spec, quantity, planId } = run;
  const done = await planRun.run(work, {
    id,
    name,
    recipeId,
    machineId,
    spec,
    quantity,
    ...(planId === undefined ? {} : { planId }),
  });
  return done.ok ? done.value : refuse(done.fault);
}

/** What the owner must be told of: orders late, orders left out, bins that stay low. */
function whatIsNotInTime({ orders, faults, unmade }: Day, { orderOf }: OpenOrders) {
  const late = new Map<string, { orderId: string; number: string; daysLate: number }>();
  for (const { line, daysLate } of orders) {
    const { id: orderId, body } = orderOf(line);
    if (daysLate > (late.get(orderId)?.daysLate ?? 0))
      late.set(orderId, { orderId, number: body.number, daysLate });
  }
  return {
    late: [...late.values()],
    leftOut: faults.map(({ line, code, facts }) => ({
      orderId: orderOf(line).id,
      number: orderOf(line).body.number,
      code,
      facts: facts as Record<string, string | number | string[] | number[]>,
    })),
    unmade: unmade.map(({ stringKey: key, quantity, because }) => ({ stringKey: key, quantity, because })),
  };
}
