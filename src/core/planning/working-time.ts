import { addDays, type CalendarDate, daysBetween, invariant, weekday } from '../foundation/index.js';

/** A time on the shop's clock. */
export interface WorkingClock {
  readonly date: CalendarDate;
  /** Minutes after midnight. */
  readonly minute: number;
}

/** The shop's rules that tell working time from other time. */
export interface WorkingDays {
  /** The plan begins with the first working day from here on. */
  readonly start: CalendarDate;
  readonly dayStartsAtMinute: number;
  /** Days of the week on which the shop works, 1 Monday to 7 Sunday. */
  readonly workingDays: readonly number[];
  /** Minutes of the longest machine's day: how long a day is on the plan's axis. Ends by midnight. */
  readonly dayMinutes: number;
}

/**
 * The plan's axis: working minutes since the start of the first working day, one day after the other with
 * nothing in between. Minutes before the start are negative.
 */
export interface WorkingTime {
  /**
   * Where a minute of the plan lies on the clock. The end of one day is the start of the next on the axis:
   * `edge` tells whether something starts there (next morning) or ends there (this evening).
   */
  clockOf(minute: number, edge: 'start' | 'end'): WorkingClock;
  /** Minute of the plan of a time on the clock; time off work counts as the next working moment. */
  minuteOf(clock: WorkingClock): number;
  /** Minute by which work promised for a date must be done: the end of that day, or of the last working day before it. */
  dueMinute(date: CalendarDate): number;
  /** Shifts of a machine with its own day length, enough of them for so much work that may begin at `fromMinute`. */
  shifts(wanted: ShiftsWanted): readonly { readonly fromMinute: number; readonly toMinute: number }[];
}

export interface ShiftsWanted {
  readonly minutesPerDay: number;
  readonly workMinutes: number;
  readonly fromMinute?: number;
}

/** Working time by the shop's rules. Later on the clock is never earlier on the axis. */
export function workingTime({ start, dayStartsAtMinute, workingDays, dayMinutes }: WorkingDays): WorkingTime {
  invariant(workingDays.length > 0, 'a shop works on at least one day of the week');
  invariant(dayMinutes > 0 && dayStartsAtMinute + dayMinutes <= 1440, 'a working day ends by midnight');
  const week = workingWeek(start, workingDays);
  return {
    clockOf: (minute, edge) => {
      const day = edge === 'start' ? Math.floor(minute / dayMinutes) : Math.ceil(minute / dayMinutes) - 1;
      return { date: week.dateOf(day), minute: dayStartsAtMinute + minute - day * dayMinutes };
    },
    minuteOf: ({ date, minute }) => {
      const into = Math.min(Math.max(minute - dayStartsAtMinute, 0), dayMinutes);
      return week.daysBefore(date) * dayMinutes + (week.isWorking(date) ? into : 0);
    },
    dueMinute: (date) => (week.daysBefore(date) + (week.isWorking(date) ? 1 : 0)) * dayMinutes,
    shifts: ({ minutesPerDay, workMinutes, fromMinute = 0 }) => {
      invariant(
        minutesPerDay > 0 && minutesPerDay <= dayMinutes,
        'no machine day is longer than the shop day',
      );
      const days =
        Math.floor(Math.max(0, fromMinute) / dayMinutes) + 1 + Math.ceil(workMinutes / minutesPerDay);
      return Array.from({ length: days }, (_, day) => ({
        fromMinute: day * dayMinutes,
        toMinute: day * dayMinutes + minutesPerDay,
      }));
    },
  };
}

interface WorkingWeek {
  isWorking(date: CalendarDate): boolean;
  /** Working days from the plan's first to just before a date; negative where the date lies before it. */
  daysBefore(date: CalendarDate): number;
  /** Date of the working day with that number, 0 for the plan's first. */
  dateOf(day: number): CalendarDate;
}

/** Counts whole weeks at once, so that a date years away costs no more than tomorrow. */
function workingWeek(start: CalendarDate, workingDays: readonly number[]): WorkingWeek {
  const days = [...new Set(workingDays)].sort((a, b) => a - b);
  invariant(
    days.every((day) => Number.isInteger(day) && day >= 1 && day <= 7),
    'days of the week are 1 to 7',
  );
  const monday = addDays(start, 1 - weekday(start));
  const sinceMonday = (date: CalendarDate): number =>
    Math.floor(daysBetween(monday, date) / 7) * days.length +
    days.filter((day) => day < weekday(date)).length;
  const skipped = sinceMonday(start);
  return {
    isWorking: (date) => days.includes(weekday(date)),
    daysBefore: (date) => sinceMonday(date) - skipped,
    dateOf: (day) => {
      const count = day + skipped;
      const weeks = Math.floor(count / days.length);
      return addDays(monday, weeks * 7 + days[count - weeks * days.length]! - 1);
    },
  };
}
