import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { betaDistribution } from './beta.js';
import { binomial } from './binomial.js';
import { chiSquare } from './chi-square.js';
import type { Continuous } from './continuous.js';
import { fRatio } from './f-ratio.js';
import { hypergeometric } from './hypergeometric.js';
import { noncentralTBelow, noncentralTQuantile } from './noncentral-t.js';
import { normalAbove, normalBelow, normalBetween, normalQuantile } from './normal.js';
import { poisson } from './poisson.js';
import { studentT } from './student-t.js';

const shares = fc.double({ min: 1e-9, max: 1 - 1e-9, noNaN: true });
const degrees = fc.double({ min: 0.5, max: 500, noNaN: true });

/** A quantile is the place whose tails are the share, and the tails make up all. */
function isInverse(law: Continuous, share: number): void {
  const at = law.quantile(share);
  expect(law.below(at) / share).toBeCloseTo(1, 8);
  expect(law.below(at) + law.above(at)).toBeCloseTo(1, 12);
  expect(law.above(law.quantileAbove(share)) / share).toBeCloseTo(1, 8);
}

describe('quantiles undo the shares below', () => {
  it('of chi-square, t, F and beta', () => {
    fc.assert(
      fc.property(shares, degrees, degrees, (share, one, other) => {
        for (const law of [chiSquare(one), studentT(one), fRatio(one, other)]) isInverse(law, share);
        // A beta's upper end is near 1, where a double cannot say how near.
        isInverse(betaDistribution(one + 1.5, other + 1.5), share);
      }),
      { numRuns: 150 },
    );
  });

  it('of the normal, down to the least that a double can hold', () => {
    fc.assert(
      fc.property(fc.double({ min: -300, max: -0.31, noNaN: true }), (power) => {
        const share = 10 ** power;
        expect(normalBelow(normalQuantile(share)) / share).toBeCloseTo(1, 10);
        expect(normalAbove(-normalQuantile(share)) / share).toBeCloseTo(1, 10);
      }),
    );
  });

  it('of the noncentral t, which without a shift is Student\u2019s', () => {
    for (const share of [0.01, 0.5, 0.99]) {
      const at = { degrees: 7, shift: 2.5 };
      expect(noncentralTBelow(noncentralTQuantile(share, at), at)).toBeCloseTo(share, 10);
    }
    expect(noncentralTBelow(1.3, { degrees: 9, shift: 0 })).toBeCloseTo(studentT(9).below(1.3), 11);
  });
});

describe('laws of counts', () => {
  it('add up, from either end', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 60 }), shares, (k, share) => {
        for (const law of [
          binomial(60, share),
          poisson(60 * share),
          hypergeometric({ lot: 144, bad: Math.round(144 * share), drawn: 60 }),
        ]) {
          expect(law.upTo(k) + law.from(k + 1)).toBeCloseTo(1, 11);
          expect(law.upTo(k) - law.upTo(k - 1)).toBeCloseTo(law.at(k), 11);
        }
      }),
      { numRuns: 150 },
    );
  });

  it('the smallest count that reaches a share does, and one less does not', () => {
    fc.assert(
      fc.property(shares, shares, (share, p) => {
        const law = binomial(50, p);
        const k = law.quantile(share);
        expect(law.upTo(k)).toBeGreaterThanOrEqual(share * (1 - 1e-12));
        expect(k === 0 || law.upTo(k - 1) < share).toBe(true);
      }),
    );
  });

  it('a lot without end is a process', () => {
    const lot = hypergeometric({ lot: 1e7, bad: 5e5, drawn: 20 });
    for (const k of [0, 1, 5]) expect(lot.at(k) / binomial(20, 0.05).at(k)).toBeCloseTo(1, 4);
  });
});

describe('a share between limits', () => {
  it('without any spread is all or nothing', () => {
    expect(normalBetween(1, 2, { value: 1.5, u: 0 })).toBe(1);
    expect(normalBetween(1, 2, { value: 2.5, u: 0 })).toBe(0);
  });
});
