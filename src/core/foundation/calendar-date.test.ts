import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addDays, calendarDate, daysBetween, weekday } from './calendar-date.js';

const day = (text: string) => calendarDate(text)!;

describe('a day by the calendar', () => {
  it.each(['2026-02-30', '2026-2-3', '26-02-03', 'tomorrow', ''])('is not %j', (text) => {
    expect(calendarDate(text)).toBeUndefined();
  });

  it('29 February is one in 2028 and not in 2027', () => {
    expect(calendarDate('2028-02-29')).toBe('2028-02-29');
    expect(calendarDate('2027-02-29')).toBeUndefined();
  });

  it('1 January 2000 was a Saturday (ISO 8601)', () => {
    expect(weekday(day('2000-01-01'))).toBe(6);
  });

  it('as many days on lies as many days away', () => {
    fc.assert(
      fc.property(fc.integer({ min: -5e5, max: 5e5 }), (days) => {
        expect(daysBetween(day('2027-03-01'), addDays(day('2027-03-01'), days))).toBe(days);
      }),
    );
  });

  it('none lies past the year 9999 or before the year 0: its text would not sort any more', () => {
    expect(addDays(day('9999-12-30'), 5)).toBe('9999-12-31');
    expect(addDays(day('2027-03-01'), 1e9)).toBe('9999-12-31');
    expect(addDays(day('2027-03-01'), -1e9)).toBe('0000-01-01');
  });
});
