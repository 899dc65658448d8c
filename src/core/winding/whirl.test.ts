import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { spanWoundTo, whirlHz } from './whirl.js';

const HALF_WOUND = { freeSpanM: 0.4, woundLengthM: 1, bareKgPerM: 1e-3, woundKgPerM: 5e-3 };

const spans = fc.record({
  freeSpanM: fc.double({ min: 0.1, max: 1, noNaN: true }),
  woundLengthM: fc.double({ min: 0.1, max: 1.2, noNaN: true }),
  bareKgPerM: fc.double({ min: 2e-4, max: 2e-3, noNaN: true }),
  woundKgPerM: fc.double({ min: 2e-3, max: 3e-2, noNaN: true }),
});

const tensions = fc.double({ min: 1, max: 500, noNaN: true });
const shares = fc.double({ min: 0, max: 1, noNaN: true });

describe('the whirl of a turning core', () => {
  it('falls, never rises, as the winding goes on', () => {
    fc.assert(
      fc.property(spans, tensions, shares, shares, (span, tensionN, one, other) => {
        const at = (share: number) =>
          whirlHz({ segments: spanWoundTo({ ...span, frontM: share * span.woundLengthM }), tensionN });
        expect(at(Math.max(one, other))).toBeLessThanOrEqual(at(Math.min(one, other)) * (1 + 1e-9));
      }),
    );
  });

  it('lies between that of the bare span and that of the span wound from end to end', () => {
    fc.assert(
      fc.property(spans, tensions, shares, (span, tensionN, share) => {
        const even = (kgPerM: number) => Math.sqrt(tensionN / kgPerM) / (2 * span.freeSpanM);
        const found = whirlHz({
          segments: spanWoundTo({ ...span, frontM: share * span.woundLengthM }),
          tensionN,
        });
        expect(found).toBeLessThanOrEqual(even(span.bareKgPerM) * (1 + 1e-9));
        expect(found).toBeGreaterThanOrEqual(even(span.woundKgPerM) * (1 - 1e-9));
      }),
    );
  });

  it('goes with the square root of the tension', () => {
    fc.assert(
      fc.property(spans, tensions, shares, (span, tensionN, share) => {
        const segments = spanWoundTo({ ...span, frontM: share * span.woundLengthM });
        const ratio = whirlHz({ segments, tensionN: 4 * tensionN }) / whirlHz({ segments, tensionN });
        expect(ratio).toBeCloseTo(2, 9);
      }),
    );
  });

  it('is the same seen from either support', () => {
    fc.assert(
      fc.property(spans, shares, (span, share) => {
        const segments = spanWoundTo({ ...span, frontM: share * span.woundLengthM });
        const there = whirlHz({ segments, tensionN: 100 });
        const back = whirlHz({ segments: [...segments].reverse(), tensionN: 100 });
        expect(back / there).toBeCloseTo(1, 9);
      }),
    );
  });

  it('is lowest with a short winding in the middle of the span', () => {
    const short = { ...HALF_WOUND, woundLengthM: 0.1 };
    const middle = spanWoundTo({ ...short, frontM: 0.1 });
    expect(middle.map(({ lengthM }) => lengthM)).toEqual([
      expect.closeTo(0.15, 12),
      expect.closeTo(0.1, 12),
      expect.closeTo(0.15, 12),
    ]);
    const [bare, wound] = middle;
    const atSupport = [wound!, bare!, bare!];
    expect(whirlHz({ segments: middle, tensionN: 100 })).toBeLessThan(
      whirlHz({ segments: atSupport, tensionN: 100 }),
    );
  });

  it('doubles where a damper holds the middle of an even span, and counts the longer part elsewhere', () => {
    const segments = [{ lengthM: 0.4, linearDensityKgPerM: 5e-3 }];
    const free = whirlHz({ segments, tensionN: 100 });
    expect(whirlHz({ segments, tensionN: 100, dampersAtM: [0.2] })).toBeCloseTo(2 * free, 9);
    expect(whirlHz({ segments, tensionN: 100, dampersAtM: [0.1] })).toBeCloseTo(free * (0.4 / 0.3), 9);
    expect(whirlHz({ segments, tensionN: 100, dampersAtM: [0] })).toBeCloseTo(free, 9);
  });

  it('is that of the wound part where a damper stands at the front of the winding', () => {
    const segments = spanWoundTo({ ...HALF_WOUND, frontM: 0.2 });
    expect(whirlHz({ segments, tensionN: 100, dampersAtM: [0.2] })).toBeCloseTo(
      Math.sqrt(100 / 5e-3) / (2 * 0.2),
      9,
    );
  });
});
