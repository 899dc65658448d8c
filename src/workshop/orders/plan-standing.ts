import type { BodyOf, StoredRecord } from '../../contract/index.js';
import type { ArrangeTask, PlannedLot, RunUnderWay } from '../../core/day/index.js';
import { type CalendarDate, calendarDate, invariant } from '../../core/foundation/index.js';
import { readStringKey, type StringSpec } from '../../core/sets/index.js';
import { PLAN_LIFE, RUN_LIFE } from '../../core/stock/index.js';
import type { ReadTransaction } from '../../store/index.js';
import { localClock } from '../local-clock.js';
import type { ShopBook } from '../shop/shop-book.js';
import type { RunRecord } from '../stock/live-runs.js';
import { runsUnderWay } from './runs-under-way.js';

export type PlanRecord = StoredRecord<BodyOf<'plan'>>;
export type PlanLine = PlanRecord['body']['runs'][number];

/** A line of a plan as it stands at this moment. */
export interface StandingLine {
  readonly line: PlanLine;
  readonly spec: StringSpec;
  /** The run that is to make it; left out where it is planned for a later day. */
  readonly run?: RunRecord;
  /** Nobody began it: it may stand elsewhere. */
  readonly isMovable: boolean;
}

/** A plan beside the shop as it stands now. */
export interface PlanStanding {
  readonly lines: readonly StandingLine[];
  /** Runs that stand before the plan: begun ones of its own, and those of others. */
  readonly underWay: readonly RunUnderWay[];
  /** What of it can be moved; a lot's id where it has no recipe or machine any more, and nothing can. */
  readonly task: Omit<ArrangeTask, 'shop'> | { readonly lostLotId: string };
}

/** The plan in force for a day. */
export async function planInForce(
  { records }: Pick<ReadTransaction, 'records'>,
  date: CalendarDate,
): Promise<PlanRecord | undefined> {
  const [plan] = await records.all('plan', { date, state: PLAN_LIFE.initial });
  return plan;
}

/** Looks at a plan: which of its lots are begun, which can be moved, and what they stand behind. */
export async function planStanding(
  tx: ReadTransaction,
  { plan, book, now }: { readonly plan: PlanRecord; readonly book: ShopBook; readonly now: string },
): Promise<PlanStanding> {
  const lines: StandingLine[] = [];
  for (const line of plan.body.runs) lines.push(await standingLine(tx, line));
  const movable = lines.filter(({ isMovable }) => isMovable);
  const own = new Set(movable.flatMap(({ run }) => run?.id ?? []));
  const underWay = (await runsUnderWay(tx, book)).filter(({ id }) => !own.has(id));
  const lots = movable.map(({ line, spec }) => plannedLot(line, spec, book));
  const lost = movable.find((_, at) => lots[at] === undefined);
  const date = dayOf(plan.body.date);
  return {
    lines,
    underWay,
    task: lost
      ? { lostLotId: lost.line.lotId }
      : { date, now: localClock(now), lots: lots.filter((lot) => lot !== undefined), underWay },
  };
}

async function standingLine({ records }: ReadTransaction, line: PlanLine): Promise<StandingLine> {
  const spec = readStringKey(line.stringKey);
  invariant(spec, 'a plan names its strings as the core does');
  const run = line.runId === undefined ? undefined : await records.get('run', line.runId);
  return {
    line,
    spec,
    ...(run ? { run } : {}),
    isMovable: run === undefined || run.state === RUN_LIFE.initial,
  };
}

/** Undefined where recipe or machine are no longer among those of the shop. */
function plannedLot(line: PlanLine, spec: StringSpec, { records }: ShopBook): PlannedLot | undefined {
  const machineId = records.machine.nameOf(line.machineId);
  const recipeId = records.recipe.nameOf(line.recipeId);
  if (machineId === undefined || recipeId === undefined) return undefined;
  const { lotId, quantity, due, orderIds, reason } = line;
  return { lotId, machineId, recipeId, spec, quantity, due: dayOf(due), orderIds, reason };
}

export function dayOf(text: string): CalendarDate {
  const day = calendarDate(text);
  invariant(day, 'a plan is kept with days of the calendar');
  return day;
}
