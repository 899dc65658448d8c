import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addDays, type CalendarDate, calendarDate, weekday } from '../foundation/index.js';
import { type WorkingClock, workingTime } from './working-time.js';

const day = (text: string): CalendarDate => calendarDate(text) as CalendarDate;
const MONDAY = day('2026-03-02');
const FRIDAY = day('2026-03-06');
const SATURDAY = day('2026-03-07');
const NEXT_MONDAY = day('2026-03-09');

const week = { dayStartsAtMinute: 480, workingDays: [1, 2, 3, 4, 5], dayMinutes: 450 };
const time = workingTime({ ...week, start: MONDAY });

describe('working time of a shop open Monday to Friday from 08:00 for 450 minutes', () => {
  it('the dates of this test are what they say', () => {
    expect([MONDAY, FRIDAY, SATURDAY, NEXT_MONDAY].map(weekday)).toEqual([1, 5, 6, 1]);
  });

  it('the plan begins at opening on its first day', () => {
    expect(time.clockOf(0, 'start')).toEqual({ date: MONDAY, minute: 480 });
    expect(time.minuteOf({ date: MONDAY, minute: 480 })).toBe(0);
  });

  it('what ends with the day ends this evening, what starts then starts next morning', () => {
    expect(time.clockOf(450, 'end')).toEqual({ date: MONDAY, minute: 930 });
    expect(time.clockOf(450, 'start')).toEqual({ date: addDays(MONDAY, 1), minute: 480 });
  });

  it('nothing lies between Friday evening and Monday morning', () => {
    expect(time.minuteOf({ date: FRIDAY, minute: 930 })).toBe(
      time.minuteOf({ date: NEXT_MONDAY, minute: 480 }),
    );
    expect(time.clockOf(5 * 450, 'start')).toEqual({ date: NEXT_MONDAY, minute: 480 });
  });

  it('work promised for a Saturday must be done on the Friday before', () => {
    expect(time.dueMinute(SATURDAY)).toBe(time.dueMinute(FRIDAY));
    expect(time.dueMinute(MONDAY)).toBe(450);
  });

  it('a due date that has passed lies before the start', () => {
    expect(time.dueMinute(addDays(MONDAY, -1))).toBe(0);
    expect(time.dueMinute(addDays(MONDAY, -4))).toBe(-450);
  });

  it('a plan told to start on a Sunday starts on Monday', () => {
    const fromSunday = workingTime({ ...week, start: addDays(MONDAY, -1) });
    expect(fromSunday.clockOf(0, 'start').date).toBe(MONDAY);
    expect(fromSunday.dueMinute(MONDAY)).toBe(450);
  });

  it('a machine with a shorter day stops earlier, and gets days enough for its work', () => {
    const shifts = time.shifts({ minutesPerDay: 300, workMinutes: 1000 });
    expect(shifts.slice(0, 2)).toEqual([
      { fromMinute: 0, toMinute: 300 },
      { fromMinute: 450, toMinute: 750 },
    ]);
    expect(shifts.length * 300).toBeGreaterThanOrEqual(1000);
  });

  it('refuses a day that runs past midnight and a week without work', () => {
    expect(() => workingTime({ ...week, start: MONDAY, dayMinutes: 1000 })).toThrow(/midnight/);
    expect(() => workingTime({ ...week, start: MONDAY, workingDays: [] })).toThrow(/week/);
  });
});

const shops = fc
  .record({
    startOffset: fc.integer({ min: -400, max: 400 }),
    workingDays: fc.uniqueArray(fc.integer({ min: 1, max: 7 }), { minLength: 1 }),
    dayStartsAtMinute: fc.integer({ min: 0, max: 700 }),
    dayMinutes: fc.integer({ min: 1, max: 740 }),
  })
  .map(({ startOffset, ...rules }) => workingTime({ ...rules, start: addDays(MONDAY, startOffset) }));
const clocks: fc.Arbitrary<WorkingClock> = fc
  .tuple(fc.integer({ min: -600, max: 600 }), fc.integer({ min: 0, max: 1439 }))
  .map(([days, minute]) => ({ date: addDays(MONDAY, days), minute }));

describe('laws of working time', () => {
  it('later on the clock is never earlier in the plan', () => {
    fc.assert(
      fc.property(shops, clocks, clocks, (shop, a, b) => {
        const aFirst = a.date < b.date || (a.date === b.date && a.minute <= b.minute);
        const [early, late] = aFirst ? [a, b] : [b, a];
        expect(shop.minuteOf(early)).toBeLessThanOrEqual(shop.minuteOf(late));
      }),
    );
  });

  it('a minute of the plan read on the clock and back is the same minute, from either edge', () => {
    fc.assert(
      fc.property(shops, fc.integer({ min: -50_000, max: 50_000 }), (shop, minute) => {
        expect(shop.minuteOf(shop.clockOf(minute, 'start'))).toBe(minute);
        expect(shop.minuteOf(shop.clockOf(minute, 'end'))).toBe(minute);
      }),
    );
  });

  it('an end is never later on the clock than a start at the same minute of the plan', () => {
    fc.assert(
      fc.property(shops, fc.integer({ min: -50_000, max: 50_000 }), (shop, minute) => {
        const [end, start] = [shop.clockOf(minute, 'end'), shop.clockOf(minute, 'start')];
        expect(end.date < start.date || (end.date === start.date && end.minute === start.minute)).toBe(true);
      }),
    );
  });
});
