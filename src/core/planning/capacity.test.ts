import { describe, expect, it } from 'vitest';
import { dailyCapacity } from './capacity.js';

describe('capacity as the trade counts it', () => {
  it('counts only cycles that are finished in the day, two strings a cycle where two are made at once', () => {
    expect(dailyCapacity({ minutesPerDay: 1, cycleSeconds: 25, positions: 2 }).strings).toBe(4);
    // 480 minutes of 40-second cycles, two at once: 720 cycles.
    expect(dailyCapacity({ minutesPerDay: 480, cycleSeconds: 40, positions: 2 })).toEqual({
      strings: 1440,
      grosses: 10,
    });
  });
});
