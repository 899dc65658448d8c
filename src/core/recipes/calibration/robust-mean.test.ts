import { describe, expect, it } from 'vitest';
import { robustMean } from './robust-mean.js';
import { tailWeight } from './tail-weight.js';

describe('the robust mean', () => {
  it('is the plain mean of ordinary values', () => {
    expect(robustMean([1, 2, 3], 4).mean).toBe(2);
    expect(robustMean([1, 2], 4)).toEqual({ mean: 1.5, weights: [1, 1], squares: 0.5 });
  });

  it('hardly follows one value gone astray, and never drops it', () => {
    const { mean, weights } = robustMean([0, 0.1, -0.1, 0.05, 50], 0.01);
    expect(Math.abs(mean)).toBeLessThan(0.05);
    expect(weights[4]).toBeGreaterThan(0);
    expect(weights[4]).toBeLessThan(0.001);
  });

  it("weighs as Student's t: (nu + 1) / (nu + z²), nu 6, at most 1", () => {
    expect(tailWeight(36)).toBe(7 / 42);
    expect(tailWeight(0)).toBe(1);
  });
});
