import { addDays, type CalendarDate, weekday } from '../../src/core/foundation/index.js';

/** When the invented shop is shut: two weeks in summer and the turn of the year. First and last day. */
const SHUT: readonly (readonly [from: string, to: string])[] = [
  ['2026-08-03', '2026-08-14'],
  ['2026-12-24', '2027-01-01'],
];

/** The days from one to another, both included, on which the invented shop works. */
export function workingDays(from: CalendarDate, until: CalendarDate): readonly CalendarDate[] {
  const days: CalendarDate[] = [];
  for (let date = from; date <= until; date = addDays(date, 1)) {
    const isShut = SHUT.some(([first, last]) => date >= first && date <= last);
    if (weekday(date) <= 5 && !isShut) days.push(date);
  }
  return days;
}
