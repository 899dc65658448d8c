import { describe, expect, it } from 'vitest';
import { isotonicFit } from '../../src/core/numeric/index.js';
import { normalAbove, trendSlope, trendTest } from '../../src/core/stats/index.js';

/* Methods by which machines are judged, against figures in print. */

const points = (times: readonly number[], values: readonly number[]) =>
  times.map((time, at) => ({ time, value: values[at]! }));

describe('the slope of a trend and its interval (P. K. Sen, J. Amer. Statist. Assoc. 63 (1968) 1379, example)', () => {
  const sen = points([1, 2, 3, 4, 10, 12, 18], [9, 15, 19, 20, 45, 55, 78]);

  it('is 4, from 26/7 to 35/8 at 93 %', () => {
    // The limits as corrected by T. Therneau (deming, tests/thiel.R): the list of slopes in the paper has mistakes.
    const { slope, from, to } = trendSlope(sen, 1.8119)!;
    expect(slope).toBe(4);
    expect(from).toBeCloseTo(26 / 7, 12);
    expect(to).toBeCloseTo(35 / 8, 12);
  });
});

describe('the test for a trend (M. Hollander & D. Wolfe 1973, p. 187: tuna, nine lots; R, cor.test, its example)', () => {
  const lightness = [44.4, 45.9, 41.9, 53.3, 44.7, 44.1, 50.7, 45.2, 60.1];
  const panel = [2.6, 3.1, 2.5, 5.0, 3.6, 4.0, 5.2, 2.8, 3.8];

  it('has S = 16 and, by the normal distribution, P = 0.04765 to one side', () => {
    const { s, z } = trendTest(points(lightness, panel));
    expect(s).toBe(16);
    expect(normalAbove(z)).toBeCloseTo(0.04765, 5);
  });

  it('takes ties out of the variance: all alike is no trend', () => {
    expect(trendTest(points([1, 2, 3, 4], [5, 5, 5, 5]))).toEqual({ s: 0, z: 0, p: 1 });
    // Var S = (5 · 4 · 15 - 2 · 1 · 9) / 18 = 15.667 by the formula with one pair tied.
    const { s, z } = trendTest(points([1, 2, 3, 4, 5], [1, 2, 2, 3, 4]));
    expect(s).toBe(9);
    expect(z).toBeCloseTo(9 / Math.sqrt(282 / 18), 12);
  });
});

describe('the nearest rising sequence (pool adjacent violators)', () => {
  it('is that of the example in R (stats, isoreg)', () => {
    expect(isotonicFit([1, 0, 4, 3, 3, 5, 4, 2, 0])).toEqual([0.5, 0.5, 3, 3, 3, 3, 3, 3, 3]);
  });

  it('is that of scikit-learn’s test (tests/test_isotonic.py)', () => {
    expect(isotonicFit([3, 7, 5, 9, 8, 7, 10])).toEqual([3, 6, 6, 8, 8, 8, 10]);
    expect(isotonicFit([10, 0, 2])).toEqual([4, 4, 4]);
  });
});
