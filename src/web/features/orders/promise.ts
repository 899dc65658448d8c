import type { DayView } from '../../../contract/index.js';
import type { Day } from '../../../core/day/index.js';
import { type CalendarDate, calendarDate, daysBetween } from '../../../core/foundation/index.js';
import type { ORDERS_WORDS } from '../../words/orders.js';

/** When an order can be packed, beside when it is due. */
export type OrderPromise =
  | { readonly kind: 'shipped' | 'cancelled' | 'unknown' | 'cannot' }
  | { readonly kind: 'ready'; readonly readyOn: CalendarDate | 'now'; readonly daysLate: number };

interface OrderStanding {
  readonly id: string;
  readonly state: string;
  readonly body: { readonly due: string };
}

/** Looks up what a day that is worked out now says of an order: the last of its lines decides. */
export function promises(view: DayView | undefined): (order: OrderStanding) => OrderPromise {
  const lines = new Map<string, Day['orders'][number][]>();
  const stuck = new Set<string>();
  for (const order of view?.day.orders ?? []) {
    const id = view?.orderIds[order.line] ?? '';
    lines.set(id, [...(lines.get(id) ?? []), order]);
  }
  for (const { line } of view?.day.faults ?? []) stuck.add(view?.orderIds[line] ?? '');
  return ({ id, state, body }) => {
    if (state === 'shipped' || state === 'cancelled') return { kind: state };
    if (stuck.has(id)) return { kind: 'cannot' };
    const own = lines.get(id);
    if (view && own) return { kind: 'ready', ...lastOf(own) };
    // Every string of it is picked: it only has to be sealed and sent.
    if (view) return { kind: 'ready', readyOn: 'now', daysLate: daysPast(view.day.date, body.due) };
    return { kind: 'unknown' };
  };
}

function lastOf(lines: readonly Day['orders'][number][]): {
  readonly readyOn: CalendarDate | 'now';
  readonly daysLate: number;
} {
  let readyOn: CalendarDate | 'now' = 'now';
  for (const { readyAt } of lines)
    if (readyAt !== 'now' && (readyOn === 'now' || readyAt.date > readyOn)) readyOn = readyAt.date;
  return { readyOn, daysLate: Math.max(...lines.map(({ daysLate }) => daysLate)) };
}

const daysPast = (today: CalendarDate, due: string): number => {
  const day = calendarDate(due);
  return day ? Math.max(0, daysBetween(day, today)) : 0;
};

/** The promise in words. */
export function promiseInWords(
  promise: OrderPromise,
  today: string | undefined,
  { promise: words }: (typeof ORDERS_WORDS)['en'],
  date: (day: string) => string,
): string {
  if (promise.kind !== 'ready') return words[promise.kind];
  const { readyOn, daysLate } = promise;
  if (readyOn === 'now') return daysLate > 0 ? words.lateShelf(daysLate) : words.shelf;
  if (daysLate > 0) return words.late(daysLate, date(readyOn));
  return readyOn === today ? words.today : words.on(date(readyOn));
}
