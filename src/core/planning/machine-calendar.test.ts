import { describe, expect, it } from 'vitest';
import { machineCalendar } from './machine-calendar.js';

const twoShifts = machineCalendar([
  { fromMinute: 0, toMinute: 100 },
  { fromMinute: 150, toMinute: 200 },
]);

describe('a machine with a pause between two shifts', () => {
  it('works 100 minutes before the pause, none in it, and goes on after it', () => {
    expect([40, 100, 125, 150, 170].map(twoShifts.workedBefore)).toEqual([40, 100, 100, 100, 120]);
  });

  it('ends work at the end of a shift and starts work at the beginning of the next', () => {
    expect(twoShifts.endOf(100)).toBe(100);
    expect(twoShifts.startOf(100)).toBe(150);
    expect(twoShifts.endOf(120)).toBe(170);
    expect(twoShifts.startOf(0)).toBe(0);
    expect(twoShifts.endOf(0)).toBe(0);
  });

  it('goes on past its last shift rather than drop work', () => {
    expect(twoShifts.endOf(300)).toBe(350);
    expect(twoShifts.workedBefore(350)).toBe(300);
  });

  it('begins with its first shift where that starts late', () => {
    const late = machineCalendar([{ fromMinute: 60, toMinute: 100 }]);
    expect(late.startOf(0)).toBe(60);
    expect(late.workedBefore(30)).toBe(0);
  });

  it('refuses shifts that overlap, and none at all', () => {
    expect(() => machineCalendar([])).toThrow(/shift/);
    const overlapping = [
      { fromMinute: 0, toMinute: 100 },
      { fromMinute: 90, toMinute: 200 },
    ];
    expect(() => machineCalendar(overlapping)).toThrow(/apart/);
  });
});
