import type { BodyOf, StoredRecord } from '../../contract/index.js';
import { rearrangePlan as definition, type InputOf } from '../../contract/index.js';
import {
  type Arrangement,
  type Arranger,
  arranger,
  type DayRun,
  type LotOrder,
} from '../../core/day/index.js';
import { invariant, succeed } from '../../core/foundation/index.js';
import { PLAN_LIFE } from '../../core/stock/index.js';
import { localClock } from '../local-clock.js';
import { abandonRun } from '../production/abandon-run.js';
import { planRun } from '../production/plan-run.js';
import { recordAsSeen } from '../record-change.js';
import { refuse } from '../refusal.js';
import { type ShopBook, shopBook } from '../shop/shop-book.js';
import { useCase, type Work } from '../use-case.js';
import { type PlanLine, type PlanRecord, planStanding, type StandingLine } from './plan-standing.js';

/**
 * The runs of a plan that nobody began, in another order or on other machines. Their times are worked out anew behind what
 * is under way; what is begun stays as it is. A run that now begins on a later day is given up until that day is planned,
 * one that comes to this day is planned.
 */
export const rearrangePlan = useCase(definition, async (work, { planId, expectedVersion, lanes }) => {
  const { tx, now } = work;
  const plan = await recordAsSeen(tx, 'plan', { id: planId, expectedVersion });
  mustBeOpen(plan, now);
  const book = await shopBook(tx);
  const { lines, task } = await planStanding(tx, { plan, book, now });
  if ('lostLotId' in task) return refuse({ code: 'rearrange.recipe-retired', lotId: task.lostLotId });
  const arranged = arrange(arranger({ shop: book.shop, ...task }), orderTold(lanes, book), lines);
  const runs: StoredRecord<BodyOf<'run'>>[] = [];
  const put: PlanLine[] = lines.filter(({ isMovable }) => !isMovable).map(({ line }) => line);
  for (const run of arranged.runs) {
    const standing = lines.find(({ line }) => line.lotId === run.lotId);
    invariant(standing, 'the core arranges the lots that it was given');
    const moved = await moveLine(work, { plan, standing, run, book });
    put.push(moved.line);
    if (moved.run) runs.push(moved.run);
  }
  const body = { ...plan.body, runs: put.toSorted(bySetUp), ...underWayOf(arranged, book) };
  const kept = await tx.records.update('plan', { id: planId, expectedVersion, body, at: now });
  return succeed({ plan: kept, runs });
});

function mustBeOpen({ state, body: { date } }: PlanRecord, now: string): void {
  if (state !== PLAN_LIFE.initial) refuse({ code: 'rearrange.not-in-force', date });
  if (date < localClock(now).date) refuse({ code: 'rearrange.day-over', date });
}

const orderTold = (lanes: InputOf<typeof definition>['lanes'], { records }: ShopBook): LotOrder =>
  lanes.map(({ machineId, lotIds }) => ({
    machineId:
      records.machine.nameOf(machineId) ?? refuse({ code: 'record.missing', kind: 'machine', id: machineId }),
    lotIds,
  }));

/** Lots that were begun while somebody moved them are named as such. */
function arrange(
  { arrange, unable }: Arranger,
  order: LotOrder,
  lines: readonly StandingLine[],
): Arrangement {
  const arranged = arrange(order);
  if (arranged.ok) return arranged.value;
  const { fault } = arranged;
  if (fault.code === 'lots-differ') {
    const stuck = new Set(lines.filter(({ isMovable }) => !isMovable).map(({ line }) => line.lotId));
    return refuse({
      code: 'rearrange.lots-differ',
      begun: fault.unknown.filter((lotId) => stuck.has(lotId)),
      missing: fault.missing,
      unknown: fault.unknown.filter((lotId) => !stuck.has(lotId)),
    });
  }
  invariant(fault.code === 'machine-not-able', 'machines are looked up before');
  const { machineId: machine, lotId } = fault;
  return refuse({ code: 'rearrange.machine-not-able', machine, lotId, reasons: unable(lotId, machine) });
}

interface LineMove {
  readonly plan: PlanRecord;
  readonly standing: StandingLine;
  readonly run: DayRun;
  readonly book: ShopBook;
}

interface MovedLine {
  readonly line: PlanLine;
  /** The run where it was changed, planned or given up. */
  readonly run?: StoredRecord<BodyOf<'run'>>;
}

async function moveLine(work: Work, { plan, standing, run, book }: LineMove): Promise<MovedLine> {
  const { line: before, run: planned } = standing;
  const machine = book.records.machine.byName.get(run.machineId);
  invariant(machine, 'the core plans with machines of the shop that it was given');
  const { runId: _, ...rest } = before;
  const { setUpFrom, runFrom, to, setUpMinutes, scrapStrings, lateMinutes } = run;
  const line: PlanLine = {
    ...rest,
    machineId: machine.id,
    ...{ setUpFrom, runFrom, to, setUpMinutes, scrapStrings, lateMinutes },
    reason: run.reason as PlanLine['reason'],
  };
  const isOfTheDay = setUpFrom.date === plan.body.date;
  if (!isOfTheDay) return { line, ...(planned ? { run: await giveUp(work, planned) } : {}) };
  if (!planned) {
    const made = await planAnew(work, plan, { ...standing, line });
    return { line: { ...line, runId: made.id }, run: made };
  }
  if (planned.body.machineId === machine.id) return { line: { ...line, runId: planned.id } };
  const body = { ...planned.body, machineId: machine.id };
  const { id, version: expectedVersion } = planned;
  const moved = await work.tx.records.update('run', { id, expectedVersion, body, at: work.now });
  return { line: { ...line, runId: planned.id }, run: moved };
}

async function giveUp(work: Work, { id: runId, version: expectedVersion }: StoredRecord<BodyOf<'run'>>) {
  const reason = 'it was put on a later day';
  const done = await abandonRun.run(work, { runId, expectedVersion, reason });
  return done.ok ? done.value.run : refuse(done.fault);
}

async function planAnew(
  work: Work,
  { id: planId, body: { date } }: PlanRecord,
  { line, spec }: StandingLine,
) {
  const { recipeId, machineId, quantity } = line;
  const named = await work.tx.records.list('run', { search: `${date} run`, limit: 500 });
  const done = await planRun.run(work, {
    id: work.newId(),
    name: `${date} run ${named.items.length + 1}`,
    ...{ recipeId, machineId, spec, quantity, planId },
  });
  return done.ok ? done.value : refuse(done.fault);
}

const bySetUp = ({ setUpFrom: a }: PlanLine, { setUpFrom: b }: PlanLine): number =>
  a.date === b.date ? a.minute - b.minute : a.date.localeCompare(b.date);

/** What the plan stands behind, as far as it is not of the plan itself. */
function underWayOf({ underWay }: Arrangement, { records }: ShopBook): Pick<BodyOf<'plan'>, 'underWay'> {
  const runs = underWay.flatMap((run) => {
    const machine = records.machine.byName.get(run.machineId);
    return machine ? [{ ...run, machineId: machine.id }] : [];
  });
  return runs.length > 0 ? { underWay: runs } : {};
}
