import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { binomial } from '../distributions/binomial.js';
import { poisson } from '../distributions/poisson.js';
import { probabilityLimits, shareLimits } from './count-limits.js';

describe('limits by the chances themselves', () => {
  it('say that three sigmas are not three sigmas where counts are small', () => {
    // 1 % of 20: the upper limit of 7.7 % is passed by two bad ones, which come in one sample of sixty.
    expect(shareLimits(0.01, 20).upper).toBeCloseTo(0.0767, 4);
    expect(binomial(20, 0.01).from(2)).toBeCloseTo(0.0169, 4);
    expect(probabilityLimits(binomial(20, 0.01))).toEqual({
      signalFrom: 3,
      falseAlarm: expect.closeTo(0.0010036, 7),
    });
  });

  it('never alarm more often than asked, and would with one count less', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 80, noNaN: true }), (mean) => {
        const law = poisson(mean);
        const { signalFrom, signalUpTo } = probabilityLimits(law);
        expect(law.from(signalFrom)).toBeLessThanOrEqual(0.00135);
        expect(law.from(signalFrom - 1)).toBeGreaterThan(0.00135);
        if (signalUpTo === undefined) expect(law.at(0)).toBeGreaterThan(0.00135);
        else {
          expect(law.upTo(signalUpTo)).toBeLessThanOrEqual(0.00135);
          expect(law.upTo(signalUpTo + 1)).toBeGreaterThan(0.00135);
        }
      }),
      { numRuns: 200 },
    );
  });
});
