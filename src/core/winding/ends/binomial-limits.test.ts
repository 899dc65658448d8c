import { describe, expect, it } from 'vitest';
import { lowerLimit, shareLimits } from './binomial-limits.js';

describe('the exact limits of a share', () => {
  it('are open to the side on which nothing else was seen', () => {
    expect(shareLimits({ good: 0, tried: 8 }, 0.95).low).toBe(0);
    expect(shareLimits({ good: 8, tried: 8 }, 0.95).high).toBe(1);
  });

  it('mirror each other', () => {
    const { low, high } = shareLimits({ good: 3, tried: 20 }, 0.9);
    const mirrored = shareLimits({ good: 17, tried: 20 }, 0.9);
    expect(low).toBeCloseTo(1 - mirrored.high, 10);
    expect(high).toBeCloseTo(1 - mirrored.low, 10);
  });

  it('close in as more is tried, and hold for hundreds', () => {
    const few = shareLimits({ good: 9, tried: 10 }, 0.95);
    const many = shareLimits({ good: 900, tried: 1000 }, 0.95);
    expect(many.low).toBeGreaterThan(few.low);
    expect(many.high).toBeLessThan(few.high);
    expect(many.low).toBeGreaterThan(0.879);
    expect(many.high).toBeLessThan(0.918);
  });

  it('have the closed form 1 - p^n = confidence where all were good', () => {
    for (const tried of [1, 5, 29, 59]) {
      expect(lowerLimit(tried, tried, 0.05)).toBeCloseTo(0.05 ** (1 / tried), 10);
    }
  });
});
