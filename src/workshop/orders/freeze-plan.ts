import type { BodyOf, StoredRecord } from '../../contract/index.js';
import { freezePlan as definition } from '../../contract/index.js';
import { type Day, type DayRun, workOutResolved } from '../../core/day/index.js';
import { invariant, succeed } from '../../core/foundation/index.js';
import { type StringSpec, stringKey } from '../../core/sets/index.js';
import { PLAN_LIFE } from '../../core/stock/index.js';
import { planRun } from '../production/plan-run.js';
import { refuse } from '../refusal.js';
import { type ShopBook, shopBook } from '../shop/shop-book.js';
import { useCase, type Work } from '../use-case.js';
import { comingStrings } from './coming-strings.js';
import { type OpenOrders, openOrders } from './open-orders.js';
import { needDay } from './order-lines.js';
import { supersedePlans } from './supersede-plans.js';

/**
 * A day's plan, settled: what open orders and bins want beyond what lies there and is coming, on which machine
 * and when. Runs that start on the day become runs to start; those after it are kept in the plan to look at, and
 * are planned anew on their day.
 */
export const freezePlan = useCase(definition, async (work, { id, date: text, note = '' }) => {
  const { tx, now } = work;
  const date = needDay(text);
  const runsBefore = await supersedePlans(work, date);
  const book = await shopBook(tx);
  const open = await openOrders(tx, book);
  const strings = [...book.shop.strings, ...(await comingStrings(tx))];
  const shop = { ...book.shop, strings };
  const day = workOutResolved({ shop, date, orders: open.orders, faults: open.faults });
  const lines = day.plan.runs.map((run) => planLine(run, { day, book, open, newId: work.newId }));
  const body = { date, note, runs: lines };
  const plan = await tx.records.insert('plan', { id, state: PLAN_LIFE.initial, at: now, body });
  const specOf = specsByKey(open, strings);
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
  const machine = book.records.machine.byName.get(run.machineId);
  const recipe = book.records.recipe.byName.get(run.recipeId);
  const lot = day.lots.find(({ id }) => id === run.lotId);
  invariant(
    machine && recipe && lot,
    'the core plans with machines and recipes of the shop that it was given',
  );
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

/** Every kind that is planned is one that an order wants or a bin is kept filled with. */
function specsByKey(
  { orders }: OpenOrders,
  strings: readonly { readonly spec: StringSpec }[],
): (key: string) => StringSpec {
  const specs = new Map(
    [...strings, ...orders.flatMap((order) => order.strings)].map(({ spec }) => [stringKey(spec), spec]),
  );
  return (key) => {
    const spec = specs.get(key);
    invariant(spec, `the kind of string "${key}" is wanted by an order or a bin`);
    return spec;
  };
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
