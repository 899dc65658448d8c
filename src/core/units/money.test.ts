import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatMoney, roundHalfEvenMinor, shareMinor } from './money.js';

describe('rounding money', () => {
  it.each([
    [0.5, 0],
    [1.5, 2],
    [2.5, 2],
    [2.500001, 3],
    [-0.5, 0],
    [-1.5, -2],
    [-2.5, -2],
    [7, 7],
  ])('%d rounds to %d', (minor, whole) => {
    expect(roundHalfEvenMinor(minor)).toBe(whole);
  });

  it('is never off by more than a half, and as far for a debt as for a due', () => {
    fc.assert(
      fc.property(fc.double({ min: -1e9, max: 1e9, noNaN: true }), (minor) => {
        const whole = roundHalfEvenMinor(minor);
        expect(Number.isInteger(whole)).toBe(true);
        expect(Math.abs(whole - minor)).toBeLessThanOrEqual(0.5);
        expect(roundHalfEvenMinor(-minor) + whole).toBe(0);
      }),
    );
  });

  it('refuses what is no number', () => {
    expect(() => roundHalfEvenMinor(Number.NaN)).toThrow('Broken promise');
  });
});

const total = fc.integer({ min: -1e12, max: 1e12 });
const weights = fc.array(
  fc.oneof(fc.double({ min: 0, max: 1e300, noNaN: true }), fc.integer({ min: 0, max: 9 })),
  {
    minLength: 1,
    maxLength: 40,
  },
);

describe('sharing money out', () => {
  it('100 in thirds is 34, 33, 33', () => {
    expect(shareMinor(100, [1, 1, 1])).toEqual([34, 33, 33]);
    expect(shareMinor(-100, [1, 1, 1])).toEqual([-34, -33, -33]);
    expect(shareMinor(5, [0, 0])).toEqual([3, 2]);
    expect(shareMinor(7, [0, 1])).toEqual([0, 7]);
  });

  it('the parts sum to the total, whatever the weights', () => {
    fc.assert(
      fc.property(total, weights, (amount, by) => {
        const parts = shareMinor(amount, by);
        expect(parts.every(Number.isInteger)).toBe(true);
        expect(parts.reduce((sum, part) => sum + part, 0)).toBe(amount);
      }),
      { numRuns: 500 },
    );
  });

  it('no part is a whole unit or more off its quota', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 1e9 }),
        fc.array(fc.integer({ min: 1, max: 1000 }), { minLength: 1, maxLength: 20 }),
        (amount, by) => {
          const sum = by.reduce((one, other) => one + other, 0);
          shareMinor(amount, by).forEach((part, index) => {
            expect(Math.abs(part - (amount * by[index]!) / sum)).toBeLessThan(1);
          });
        },
      ),
    );
  });

  it('nobody, a weight below zero and a broken amount are refused', () => {
    expect(() => shareMinor(1, [])).toThrow('Broken promise');
    expect(() => shareMinor(1, [-1, 2])).toThrow('Broken promise');
    expect(() => shareMinor(0.5, [1])).toThrow('Broken promise');
  });
});

describe('showing money', () => {
  it.each([
    [123456, 2, 'EUR 1234.56'],
    [5, 2, 'EUR 0.05'],
    [0, 2, 'EUR 0.00'],
    [-5, 2, 'EUR −0.05'],
    [1234, 0, 'EUR 1234'],
    [1234, 3, 'EUR 1.234'],
  ])('%d minor units with %d digits is %s', (minor, minorDigits, text) => {
    expect(formatMoney(minor, { currency: 'EUR', minorDigits })).toBe(text);
  });

  it('parts of a unit are never shown as money', () => {
    expect(() => formatMoney(1.5, { currency: 'EUR', minorDigits: 2 })).toThrow('Broken promise');
  });
});
