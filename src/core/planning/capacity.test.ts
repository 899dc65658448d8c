import { describe, expect, it } from 'vitest';
import { dailyCapacity, grossesFromStrings, STRINGS_PER_GROSS, stringsFromGrosses } from './capacity.js';

describe('capacity as the trade counts it', () => {
  it('a gross is twelve dozen strings (common practice, no source)', () => {
    expect(STRINGS_PER_GROSS).toBe(12 * 12);
  });

  it('nine grosses a day are 1,296 strings (common practice, no source)', () => {
    expect(stringsFromGrosses(9)).toBe(1296);
    expect(grossesFromStrings(1296)).toBe(9);
  });

  it('counts only cycles that are finished in the day, two strings a cycle where two are made at once', () => {
    expect(dailyCapacity({ minutesPerDay: 1, cycleSeconds: 25, positions: 2 }).strings).toBe(4);
    // 480 minutes of 40-second cycles, two at once: 720 cycles.
    expect(dailyCapacity({ minutesPerDay: 480, cycleSeconds: 40, positions: 2 })).toEqual({
      strings: 1440,
      grosses: 10,
    });
  });
});
