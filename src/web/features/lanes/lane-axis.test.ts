import { describe, expect, it } from 'vitest';
import type { DayRun } from '../../../core/day/index.js';
import type { CalendarDate } from '../../../core/foundation/index.js';
import { laneAxis } from './lane-axis.js';

const monday = '2027-03-01' as CalendarDate;
const tuesday = '2027-03-02' as CalendarDate;

const run = (setUpFrom: DayRun['to'], to: DayRun['to']): DayRun =>
  ({ setUpFrom, runFrom: setUpFrom, to }) as DayRun;

const overnight = run({ date: monday, minute: 450 }, { date: tuesday, minute: 500 });
const later = run({ date: tuesday, minute: 460 }, { date: tuesday, minute: 545 });

describe('the axis of the lanes', () => {
  it('begins and ends a day on the half hours around what happens in it, an hour at least', () => {
    const axis = laneAxis([run({ date: monday, minute: 455 }, { date: monday, minute: 611 })], [monday]);
    expect(axis.windows).toEqual([{ date: monday, fromMinute: 450, toMinute: 630, startsAt: 0 }]);
    const short = laneAxis([run({ date: monday, minute: 480 }, { date: monday, minute: 485 })], [monday]);
    expect(short.length).toBe(60);
  });

  it('lays days end to end, so that a run over night is one bar', () => {
    const axis = laneAxis([overnight, later], [tuesday, monday]);
    expect(axis.windows.map(({ date, startsAt }) => [date, startsAt])).toEqual([
      [monday, 0],
      [tuesday, 60],
    ]);
    expect(axis.placeOf(overnight.to)).toBe(60 + 500 - 450);
    expect(axis.length).toBe(60 + 120);
  });

  it('puts what lies outside of it on its nearest edge', () => {
    const axis = laneAxis([later], [tuesday]);
    expect(axis.placeOf({ date: monday, minute: 600 })).toBe(0);
    expect(axis.placeOf({ date: tuesday, minute: 0 })).toBe(0);
    expect(axis.placeOf({ date: '2027-03-03' as CalendarDate, minute: 0 })).toBe(axis.length);
  });
});
