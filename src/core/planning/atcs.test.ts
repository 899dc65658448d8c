import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { atcsIndex, atcsScale, logAtcsIndex } from './atcs.js';

const scale = atcsScale({ k1: 2, k2: 0.5, meanProcessMinutes: 60, meanSetUpMinutes: 20 });
const lot = { weight: 2, processMinutes: 40, dueMinute: 500, nowMinute: 100, setUpMinutes: 10 };

describe('how pressing a lot is', () => {
  it('is its weight over its work where it is late already and nothing need be set up', () => {
    expect(atcsIndex({ ...lot, dueMinute: 90, setUpMinutes: 0 }, scale)).toBeCloseTo(2 / 40, 12);
  });

  it('falls to a share 1/e where the slack is one look-ahead, and again where the set-up is one scale', () => {
    const now = { ...lot, setUpMinutes: 0, dueMinute: 100 + 40 };
    expect(atcsIndex({ ...now, dueMinute: now.dueMinute + 120 }, scale) / atcsIndex(now, scale)).toBeCloseTo(
      1 / Math.E,
      12,
    );
    expect(atcsIndex({ ...now, setUpMinutes: 10 }, scale) / atcsIndex(now, scale)).toBeCloseTo(
      1 / Math.E,
      12,
    );
  });

  it('rises as the due date nears, falls with work and set-up, and grows with the orders that wait', () => {
    const lots = fc.record({
      weight: fc.integer({ min: 1, max: 9 }),
      processMinutes: fc.integer({ min: 1, max: 300 }),
      dueMinute: fc.integer({ min: -500, max: 3000 }),
      nowMinute: fc.integer({ min: 0, max: 2000 }),
      setUpMinutes: fc.integer({ min: 0, max: 90 }),
    });
    fc.assert(
      fc.property(lots, (one) => {
        const index = logAtcsIndex(one, scale);
        expect(logAtcsIndex({ ...one, nowMinute: one.nowMinute + 5 }, scale)).toBeGreaterThanOrEqual(index);
        expect(logAtcsIndex({ ...one, setUpMinutes: one.setUpMinutes + 1 }, scale)).toBeLessThan(index);
        expect(logAtcsIndex({ ...one, weight: one.weight + 1 }, scale)).toBeGreaterThan(index);
      }),
    );
  });

  it('still tells apart lots whose index is too small for a number', () => {
    const far = { ...lot, dueMinute: 1e6 };
    expect(atcsIndex(far, scale)).toBe(0);
    expect(logAtcsIndex(far, scale)).toBeGreaterThan(logAtcsIndex({ ...far, dueMinute: 2e6 }, scale));
  });

  it('leaves set-ups out where none takes time', () => {
    const none = atcsScale({ k1: 2, k2: 0.5, meanProcessMinutes: 60, meanSetUpMinutes: 0 });
    expect(atcsIndex({ ...lot, setUpMinutes: 0 }, none)).toBeGreaterThan(0);
  });
});
