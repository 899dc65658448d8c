import type { ClockTime } from '../../core/day/index.js';
import { type CalendarDate, weekday } from '../../core/foundation/index.js';
import { formatClock } from '../../core/units/index.js';

/** `Tue 14 Apr 2026`. */
export const dateInWords = (date: CalendarDate): string => `${dayAndMonth(date)} ${date.slice(0, 4)}`;

/** `08:05` on the day itself, `Wed 15 Apr 08:05` on any other. */
export const clockInWords = (time: ClockTime, today: CalendarDate): string =>
  time.date === today ? formatClock(time.minute) : `${dayAndMonth(time.date)} ${formatClock(time.minute)}`;

/** `7 h 30 min`, `45 min`, `2 h`; to the whole minute. */
export function durationInWords(minutes: number): string {
  const whole = Math.round(minutes);
  const hours = Math.floor(whole / 60);
  const rest = whole % 60;
  if (hours === 0) return `${rest} min`;
  return rest === 0 ? `${hours} h` : `${hours} h ${rest} min`;
}

/** `1 day`, `3 days`. */
export const daysInWords = (days: number): string => (days === 1 ? '1 day' : `${days} days`);

const dayAndMonth = (date: CalendarDate): string =>
  `${WEEKDAYS[weekday(date) - 1]} ${Number(date.slice(8))} ${MONTHS[Number(date.slice(5, 7)) - 1]}`;

const WEEKDAYS = ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'];
const MONTHS = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];
