import { type CalendarDate, calendarDate, fail, type Result, succeed } from '../foundation/index.js';

export type DateFault =
  | { readonly code: 'unreadable' }
  | { readonly code: 'ambiguous'; readonly readings: readonly [CalendarDate, CalendarDate] };

/**
 * The day that a cell names: `2026-11-30`, or day and month by numbers where only one order of them makes a
 * day (`30/11/2026`, `11.30.2026`). Where both orders make a day, both are said and none is chosen.
 */
export function readDate(text: string): Result<CalendarDate, DateFault> {
  const iso = calendarDate(text.trim());
  if (iso) return succeed(iso);
  const match = /^(\d{1,2})([./-])(\d{1,2})\2(\d{4})$/.exec(text.trim());
  if (!match) return fail({ code: 'unreadable' });
  const [, first, , second, year] = match as unknown as [string, string, string, string, string];
  const dayFirst = day(year, second, first);
  const monthFirst = day(year, first, second);
  if (dayFirst && monthFirst && dayFirst !== monthFirst)
    return fail({ code: 'ambiguous', readings: [dayFirst, monthFirst] });
  const only = dayFirst ?? monthFirst;
  return only ? succeed(only) : fail({ code: 'unreadable' });
}

const day = (year: string, month: string, date: string): CalendarDate | undefined =>
  calendarDate(`${year}-${month.padStart(2, '0')}-${date.padStart(2, '0')}`);
