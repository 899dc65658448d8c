import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  binomial,
  jeffreysInterval,
  rateInterval,
  rateRatio,
  shareAtMost,
  shareInterval,
  wilsonInterval,
} from '../../src/core/stats/index.js';
import { given, qualityRows } from './data/quality-rows.js';

const near = (found: number, expected: number, tolerance: number): void =>
  expect(Math.abs(found - expected)).toBeLessThan(tolerance);

describe('exact intervals (R 4.2.2, 12 digits; NIST/SEMATECH e-Handbook 7.2.4.1; Conover 1999)', () => {
  it.each(qualityRows('intervals-binomial-poisson.csv'))('$method, $x of $n at $conf', (row) => {
    const count = Number(row.x);
    const confidence = Number(row.conf);
    const { from, to } = given(
      row.method === 'clopper'
        ? shareInterval({ bad: count, of: Number(row.n) }, confidence)
        : rateInterval({ count, exposure: 1 }, confidence),
    );
    near(from, Number(row.lower), 1e-8);
    near(to, Number(row.upper), 1e-8);
  });

  it('none found: at most 20.6 % with 13 looked at, 5.8 % with 50, 2.06 % with 144; rate at most 3.00', () => {
    const most = (of: number): number => given(shareAtMost({ bad: 0, of }));
    near(most(13), 1 - 0.05 ** (1 / 13), 1e-12);
    near(most(13), 0.206, 5e-4);
    near(most(50), 0.058, 5e-4);
    near(most(144), 0.0206, 5e-5);
    near(given(rateInterval({ count: 0, exposure: 1 }, 0.9)).to, -Math.log(0.05), 1e-12);
  });

  it('counts that cannot be are faults', () => {
    for (const found of [
      { bad: 3, of: 2 },
      { bad: -1, of: 2 },
      { bad: 0.5, of: 2 },
      { bad: 0, of: 0 },
    ])
      expect(shareInterval(found)).toMatchObject({ fault: { code: 'stats.count-impossible' } });
  });
});

describe('three intervals of a share (R. Newcombe, Statistics in Medicine 17 (1998) 857, table I)', () => {
  it.each([
    [81, 263, 0.2553, 0.3662, 0.2527, 0.3676],
    [15, 148, 0.0624, 0.1605, 0.0578, 0.1617],
    [0, 20, 0, 0.1611, 0, 0.1684],
    [1, 29, 0.0061, 0.1718, 0.0009, 0.1776],
  ])('%d of %d: Wilson %d to %d, exact %d to %d', (bad, of, low, high, exactLow, exactHigh) => {
    const wilson = given(wilsonInterval({ bad, of }));
    const exact = given(shareInterval({ bad, of }));
    near(wilson.from, low, 5.1e-5);
    near(wilson.to, high, 5.1e-5);
    near(exact.from, exactLow, 5.1e-5);
    near(exact.to, exactHigh, 5.1e-5);
  });

  it('Jeffreys: 81 of 263 is 0.2545219 to 0.3656475 (SciPy 1.17.1, beta quantiles)', () => {
    const { from, to } = given(jeffreysInterval({ bad: 81, of: 263 }));
    near(from, 0.25452193, 5e-9);
    near(to, 0.3656475, 5e-9);
    expect(given(jeffreysInterval({ bad: 0, of: 20 })).from).toBe(0);
  });

  it('the exact one never covers less than it says (Clopper & Pearson 1934)', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 60 }),
        fc.double({ min: 0.001, max: 0.999, noNaN: true }),
        (of, share) => {
          let covered = 0;
          for (let bad = 0; bad <= of; bad++) {
            const { from, to } = given(shareInterval({ bad, of }, 0.9));
            if (from <= share && share <= to) covered += binomial(of, share).at(bad);
          }
          expect(covered).toBeGreaterThan(0.9 - 1e-12);
        },
      ),
      { numRuns: 60 },
    );
  });
});

describe('two rates compared (R, poisson.test, its example: 11 in 800, 21 in 3011)', () => {
  it('ratio 1.971488, 0.8584264 to 4.2772659, p 0.07967', () => {
    const { ratio, interval, p } = given(
      rateRatio({ count: 11, exposure: 800 }, { count: 21, exposure: 3011 }),
    );
    near(ratio, 1.971488, 5e-7);
    near(interval.from, 0.8584264, 5e-8);
    near(interval.to, 4.2772659, 5e-8);
    near(p, 0.0796686330333295, 1e-12);
  });

  it('none on either side is no ratio; none on one side has one end', () => {
    expect(rateRatio({ count: 0, exposure: 1 }, { count: 0, exposure: 1 })).toMatchObject({
      fault: { code: 'stats.too-few' },
    });
    const { interval } = given(rateRatio({ count: 3, exposure: 1 }, { count: 0, exposure: 1 }));
    expect(interval.to).toBe(Number.POSITIVE_INFINITY);
    expect(interval.from).toBeGreaterThan(0);
  });
});
