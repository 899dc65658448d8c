import { byText, type CalendarDate, daysBetween, grouped } from '../foundation/index.js';
import type { ResolvedOrder } from '../orders/index.js';
import type { Lateness } from '../planning/index.js';
import type { ClockTime, DayOrder, DayRun, DayRunUnderWay, LateReason } from './day.js';
import type { NetWork } from './net-work.js';
import type { Schedule } from './schedule.js';

/** When an order can be packed, and why it is late where it is. */
export type Readiness = Pick<DayOrder, 'readyAt' | 'daysLate' | 'lateBecause'>;

/**
 * Looks up when each order is ready: when the last leaves its machine of the lots made for it and of the runs under
 * way that it waits for; what only has to be checked can be packed on the day; else everything lies there now.
 */
export function readiness(
  work: NetWork,
  { plan, underWay, lateBecause }: Schedule,
  date: CalendarDate,
): (order: ResolvedOrder) => Readiness {
  const awaits = grouped(work.net.awaits, ({ line }) => `${line}`);
  const runUnderWay = new Map(underWay.map((run) => [run.runId, run]));
  return (order) => {
    const lots = work.lots.filter(({ orderLines }) => orderLines.includes(order.line));
    const lotIds = new Set(lots.map(({ id }) => id));
    const awaited = (awaits.get(`${order.line}`) ?? []).map(({ lot }) => runUnderWay.get(lot));
    const last = lastToEnd([
      ...plan.runs.filter(({ lotId }) => lotIds.has(lotId)),
      ...awaited.filter((run) => run !== undefined),
    ]);
    const readyOn = last && last.to.date > date ? last.to.date : date;
    const daysLate = Math.max(0, daysBetween(order.due, readyOn));
    return {
      readyAt: last || awaited.length > 0 ? { date: readyOn, lotIds: [...lotIds] } : 'now',
      daysLate,
      ...(daysLate > 0 ? { lateBecause: lateReason(order, last, { lateBecause, date }) } : {}),
    };
  };
}

type Source = DayRun | DayRunUnderWay;

const lastToEnd = (sources: readonly Source[]): Source | undefined =>
  sources.reduce<Source | undefined>(
    (latest, source) => (latest && !endsBefore(latest.to, source.to) ? latest : source),
    undefined,
  );

const endsBefore = (a: ClockTime, b: ClockTime): boolean =>
  byText(a.date, b.date) < 0 || (a.date === b.date && a.minute < b.minute);

function lateReason(
  { due }: ResolvedOrder,
  last: Source | undefined,
  { lateBecause, date }: { readonly lateBecause: ReadonlyMap<string, Lateness>; readonly date: CalendarDate },
): LateReason {
  if (due < date || !last) return { kind: 'due-already-past', due };
  const { machineId } = last;
  if ('runId' in last) return { kind: 'waits-for-run', machineId, run: last.name };
  const { lotId } = last;
  const lotLate = lateBecause.get(lotId);
  return lotLate?.kind === 'too-short-notice'
    ? { kind: 'too-short-notice', lotId, minutesNeeded: lotLate.minutesNeeded }
    : { kind: 'machine-full', machineId, lotId };
}
