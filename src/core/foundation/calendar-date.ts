/** A day by the calendar, `YYYY-MM-DD`; text, so that days sort and compare as they read. */
export type CalendarDate = string & { readonly calendarDate: true };

const FORM = /^(\d{4})-(\d{2})-(\d{2})$/;
const DAY_MS = 86_400_000;
const FIRST_MS = Date.parse('0000-01-01T00:00:00Z');
const LAST_MS = Date.parse('9999-12-31T00:00:00Z');

/** The day that `text` names, or undefined where it is not `YYYY-MM-DD` or no such day exists (2026-02-30). */
export function calendarDate(text: string): CalendarDate | undefined {
  const match = FORM.exec(text);
  if (!match) return undefined;
  const milliseconds = Date.UTC(Number(match[1]), Number(match[2]) - 1, Number(match[3]));
  return isoDay(milliseconds) === text ? (text as CalendarDate) : undefined;
}

/** The day `days` after `date` (before it where negative); no day lies outside the years 0000 to 9999. */
export const addDays = (date: CalendarDate, days: number): CalendarDate =>
  isoDay(Math.min(Math.max(epochMilliseconds(date) + days * DAY_MS, FIRST_MS), LAST_MS)) as CalendarDate;

/** Whole days from `from` to `to`; negative where `to` lies before. */
export const daysBetween = (from: CalendarDate, to: CalendarDate): number =>
  Math.round((epochMilliseconds(to) - epochMilliseconds(from)) / DAY_MS);

/** 1 for Monday to 7 for Sunday (ISO 8601). */
export const weekday = (date: CalendarDate): number => new Date(epochMilliseconds(date)).getUTCDay() || 7;

const epochMilliseconds = (date: CalendarDate): number => Date.parse(`${date}T00:00:00Z`);
const isoDay = (milliseconds: number): string => new Date(milliseconds).toISOString().slice(0, 10);
