import { describe, expect, it } from 'vitest';
import { type CalendarDate, calendarDate } from '../../core/foundation/index.js';
import { clockInWords, dateInWords, daysInWords, durationInWords } from './times.js';

const day = (text: string): CalendarDate => calendarDate(text) as CalendarDate;

describe('times in words', () => {
  it('1 January 2000 was a Saturday', () => {
    expect(dateInWords(day('2000-01-01'))).toBe('Sat 1 Jan 2000');
  });

  it('a time of the day itself needs no date', () => {
    expect(clockInWords({ date: day('2026-04-14'), minute: 485 }, day('2026-04-14'))).toBe('08:05');
    expect(clockInWords({ date: day('2026-04-15'), minute: 485 }, day('2026-04-14'))).toBe(
      'Wed 15 Apr 08:05',
    );
  });

  it('durations are told in hours and minutes', () => {
    expect([0, 59.6, 60, 95, 480].map(durationInWords)).toEqual(['0 min', '1 h', '1 h', '1 h 35 min', '8 h']);
  });

  it('one day is not days', () => {
    expect([1, 2].map(daysInWords)).toEqual(['1 day', '2 days']);
  });
});
