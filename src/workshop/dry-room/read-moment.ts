import { calendarDate, fail, type Result, succeed } from '../../core/foundation/index.js';

export interface LogClock {
  /** How `03/04/2026` is meant; undefined where nobody knows. */
  readonly dayFirst: boolean | undefined;
  /** Whose time a moment without an offset is. */
  readonly clock: 'shop' | 'utc';
}

export type MomentFault = 'dry-room.moment-unreadable' | 'dry-room.moment-ambiguous';

const FORM =
  /^(\d{1,4})([./-])(\d{1,2})\2(\d{1,4})(?:[T ,]+(\d{1,2}):(\d{2})(?::(\d{2})(?:[.,]\d+)?)?\s*([ap]\.?m\.?)?\s*(Z|UTC|[+-]\d{2}:?\d{2})?)?$/i;

/** The moment that a cell names: date and time of day, with an offset from UTC or by the clock that is told. */
export function readMoment(text: string, { dayFirst, clock }: LogClock): Result<string, MomentFault> {
  const match = FORM.exec(text.trim());
  if (!match) return fail('dry-room.moment-unreadable');
  const [, first, , second, third, hour, minute, seconds = '0', half, offset] = match as unknown as string[];
  if (hour === undefined || minute === undefined) return fail('dry-room.moment-unreadable');
  const day = dayOf([first!, second!, third!], dayFirst);
  if (!day.ok) return day;
  const hours = half ? (Number(hour) % 12) + (/^p/i.test(half) ? 12 : 0) : Number(hour);
  if (hours > 23 || Number(minute) > 59 || Number(seconds) > 59) return fail('dry-room.moment-unreadable');
  const [year, month, date] = day.value.split('-').map(Number) as [number, number, number];
  const parts = [year, month - 1, date, hours, Number(minute), Number(seconds)] as const;
  if (offset === undefined && clock === 'shop') return succeed(new Date(...parts).toISOString());
  return succeed(new Date(Date.UTC(...parts) - offsetMs(offset)).toISOString());
}

/** Whether a date by numbers can be read one way only: true for day first, false for month first, undefined for both or none. */
export function orderOf(text: string): boolean | undefined {
  const [first, second, third] = text.trim().split(/[./\-T ,]+/) as [string, string?, string?];
  if (second === undefined || third === undefined || first.length === 4) return undefined;
  const asDayFirst = calendarDate(iso(third, second, first));
  const asMonthFirst = calendarDate(iso(third, first, second));
  return Boolean(asDayFirst) === Boolean(asMonthFirst) ? undefined : Boolean(asDayFirst);
}

function dayOf(
  [first, second, third]: readonly [string, string, string],
  dayFirst: boolean | undefined,
): Result<string, MomentFault> {
  const found = (day: string | undefined): Result<string, MomentFault> =>
    day ? succeed(day) : fail('dry-room.moment-unreadable');
  if (first.length === 4) return found(calendarDate(iso(first, second, third)));
  const asDayFirst = calendarDate(iso(third, second, first));
  const asMonthFirst = calendarDate(iso(third, first, second));
  if (asDayFirst && asMonthFirst && asDayFirst !== asMonthFirst) {
    if (dayFirst === undefined) return fail('dry-room.moment-ambiguous');
    return succeed(dayFirst ? asDayFirst : asMonthFirst);
  }
  return found(asDayFirst ?? asMonthFirst);
}

const iso = (year: string, month: string, day: string): string =>
  `${year.length === 2 ? `20${year}` : year}-${month.padStart(2, '0')}-${day.padStart(2, '0')}`;

function offsetMs(offset: string | undefined): number {
  const match = /^([+-])(\d{2}):?(\d{2})$/.exec(offset ?? '');
  if (!match) return 0;
  const minutes = Number(match[2]) * 60 + Number(match[3]);
  return (match[1] === '-' ? -1 : 1) * minutes * 60_000;
}
