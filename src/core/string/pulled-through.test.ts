import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { centsPerMmPulled, pullCents, pullForCentsM, vibratoArmFallCents } from './pulled-through.js';

const strings = fc.record({
  kappa: fc.double({ min: 20, max: 700, noNaN: true }),
  stretchingLengthM: fc.double({ min: 0.6, max: 1.1, noNaN: true }),
});

describe('wire pulled past nut and saddle', () => {
  it('by the length reckoned for an interval moves the pitch by that interval', () => {
    fc.assert(
      fc.property(strings, fc.double({ min: -900, max: 900, noNaN: true }), (string, cents) => {
        expect(pullCents(string, pullForCentsM(string, cents))).toBeCloseTo(cents, 8);
      }),
    );
  });

  it('at first raises the pitch by 600/ln 2 (kappa + 1) / L cents a millimetre', () => {
    fc.assert(
      fc.property(strings, (string) => {
        const pulledM = 1e-9;
        const slope = pullCents(string, pulledM)! / (pulledM * 1000);
        expect(slope / centsPerMmPulled(string)).toBeCloseTo(1, 4);
      }),
    );
  });

  it('let in too far leaves the string slack', () => {
    expect(pullCents({ kappa: 100, stretchingLengthM: 1 }, -0.011)).toBeUndefined();
  });
});

describe('a vibrato arm', () => {
  it('lowers the string it is measured by by just what was said', () => {
    fc.assert(
      fc.property(strings, (string) => {
        expect(vibratoArmFallCents(string, string, 100)).toBeCloseTo(100, 8);
      }),
    );
  });

  it('moves a stretchier string (lower kappa) less, by nearly (kappa + 1) over (kappa + 1)', () => {
    const high = { kappa: 140, stretchingLengthM: 0.85 };
    const low = { kappa: 395, stretchingLengthM: 0.85 };
    expect(vibratoArmFallCents(high, low, 100)!).toBeLessThan(100);
    expect(vibratoArmFallCents(low, high, 1)! / (396 / 141)).toBeCloseTo(1, 2);
  });

  it('slackens the stiffer string when the other falls by much', () => {
    const high = { kappa: 140, stretchingLengthM: 0.85 };
    const low = { kappa: 395, stretchingLengthM: 0.85 };
    expect(vibratoArmFallCents(low, high, 400)).toBeUndefined();
  });
});
