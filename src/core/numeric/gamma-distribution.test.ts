import { describe, expect, it } from 'vitest';
import { gammaBelow, gammaQuantile } from './gamma-distribution.js';

describe('the gamma distribution', () => {
  it('is the exponential one of shape 1', () => {
    for (const x of [0.01, 0.5, 1, 3, 20]) expect(gammaBelow(x, 1)).toBeCloseTo(1 - Math.exp(-x), 13);
    expect(gammaBelow(0, 2)).toBe(0);
  });

  it.each([2, 6, 33, 150])('of whole shape %i lies below as often as a Poisson count reaches it', (shape) => {
    for (const x of [0.3 * shape, shape, 1.8 * shape]) {
      let term = Math.exp(-x);
      let fewer = 0;
      for (let count = 0; count < shape; count++) {
        fewer += term;
        term *= x / (count + 1);
      }
      expect(gammaBelow(x, shape)).toBeCloseTo(1 - fewer, 11);
    }
  });

  it('has quantiles that its shares lead back to, for shapes small and large', () => {
    for (const shape of [0.4, 1, 2.67, 40, 2000])
      for (const share of [0.05, 0.5, 0.95])
        expect(gammaBelow(gammaQuantile(share, shape), shape)).toBeCloseTo(share, 8);
  });

  it('refuses a shape that is none, and a share that has no quantile', () => {
    expect(() => gammaBelow(1, 0)).toThrow(/shape/);
    expect(() => gammaQuantile(1, 2)).toThrow(/share/);
  });
});
