import type { ClockTime } from '../core/day/index.js';
import { type CalendarDate, calendarDate, invariant } from '../core/foundation/index.js';

/** A moment on the clock that hangs in the shop: by the time zone of this computer. */
export function localClock(instant: string): ClockTime {
  const at = new Date(instant);
  const digits = (value: number) => String(value).padStart(2, '0');
  const date = calendarDate(`${at.getFullYear()}-${digits(at.getMonth() + 1)}-${digits(at.getDate())}`);
  invariant(date, 'a moment is on a day of the calendar');
  return { date, minute: at.getHours() * 60 + at.getMinutes() };
}

/** When a day begins on that clock, in milliseconds since 1970. */
export function startOfDayMs(date: CalendarDate): number {
  const [year, month, day] = date.split('-').map(Number) as [number, number, number];
  return new Date(year, month - 1, day).getTime();
}
