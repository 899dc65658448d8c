import type { ClockTime, DayRun } from '../../../core/day/index.js';
import type { CalendarDate } from '../../../core/foundation/index.js';

/** The hours of one day in which anything is made, laid end to end with those of other days. */
export interface LaneWindow {
  readonly date: CalendarDate;
  readonly fromMinute: number;
  readonly toMinute: number;
  /** Minutes of the axis before it. */
  readonly startsAt: number;
}

export interface LaneAxis {
  readonly windows: readonly LaneWindow[];
  /** Minutes of all windows together. */
  readonly length: number;
  /** Minutes along the axis of a time on the clock; times outside of every window stand at the nearest edge. */
  readonly placeOf: (time: ClockTime) => number;
}

/** What takes time on a lane. */
export type LaneSpan = Pick<DayRun, 'setUpFrom' | 'runFrom' | 'to'>;

/** An axis of working time: nights, and hours in which nothing runs at either end of a day, are left out. */
export function laneAxis(runs: readonly LaneSpan[], dates: readonly CalendarDate[]): LaneAxis {
  let length = 0;
  const windows = dates.toSorted().map((date): LaneWindow => {
    const window = { date, ...hoursOf(runs, date), startsAt: length };
    length += window.toMinute - window.fromMinute;
    return window;
  });
  const placeOf = ({ date, minute }: ClockTime): number => {
    const window = windows.find((each) => each.date >= date);
    if (!window) return length;
    if (window.date > date) return window.startsAt;
    return (
      window.startsAt + Math.min(Math.max(minute, window.fromMinute), window.toMinute) - window.fromMinute
    );
  };
  return { windows, length, placeOf };
}

const HALF_HOUR = 30;
const AN_HOUR = 60;

/** From the half hour before the first thing that happens on a date to the half hour after the last. */
function hoursOf(runs: readonly LaneSpan[], date: CalendarDate): Pick<LaneWindow, 'fromMinute' | 'toMinute'> {
  const minutes = runs.flatMap(({ setUpFrom, runFrom, to }) =>
    [setUpFrom, runFrom, to].filter((time) => time.date === date).map(({ minute }) => minute),
  );
  const fromMinute = Math.floor(Math.min(...minutes) / HALF_HOUR) * HALF_HOUR;
  const toMinute = Math.ceil(Math.max(...minutes) / HALF_HOUR) * HALF_HOUR;
  return { fromMinute, toMinute: Math.max(toMinute, fromMinute + AN_HOUR) };
}
