import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { findRoot } from './find-root.js';

describe('a root between two ends', () => {
  it('lies where the function crosses zero, wherever that is', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -50, max: 50, noNaN: true }),
        fc.double({ min: 0.01, max: 100, noNaN: true }),
        fc.double({ min: 0.01, max: 100, noNaN: true }),
        fc.constantFrom(
          (x: number) => x,
          (x: number) => x ** 3,
          (x: number) => Math.expm1(x / 10),
          (x: number) => -Math.atan(x * 30),
          (x: number) => (x < 0 ? x * 1e-6 : x * 1e6),
        ),
        (root, below, above, shape) => {
          const found = findRoot({
            f: (x) => shape(x - root),
            low: root - below,
            high: root + above,
            tolerance: 1e-9,
          });
          // x^3 is within rounding of zero over some 1e-5 of the root only where root itself rounds: not here.
          expect(Math.abs(found! - root)).toBeLessThan(1e-8);
        },
      ),
      { numRuns: 300 },
    );
  });

  it('takes no more than a few evaluations of a smooth function', () => {
    let calls = 0;
    const f = (x: number) => {
      calls++;
      return Math.cos(x) - x;
    };
    expect(findRoot({ f, low: 0, high: 1, tolerance: 1e-14 })).toBeCloseTo(0.7390851332151607, 13);
    expect(calls).toBeLessThan(12);
  });

  it('takes no more than three bisections where interpolation fails', () => {
    let calls = 0;
    const step = (x: number) => {
      calls++;
      return x < 0.123456789 ? -1e-9 : 1e9;
    };
    expect(findRoot({ f: step, low: 0, high: 1, tolerance: 1e-12 })).toBeCloseTo(0.123456789, 11);
    // 40 halvings bring 1 below 1e-12.
    expect(calls).toBeLessThan(3 * 40);
  });

  it('at an end is that end, and the ends may come in either order', () => {
    expect(findRoot({ f: (x) => x - 2, low: 2, high: 5, tolerance: 0 })).toBe(2);
    expect(findRoot({ f: (x) => x - 5, low: 2, high: 5, tolerance: 0 })).toBe(5);
    expect(findRoot({ f: (x) => x - 3, low: 5, high: 2, tolerance: 1e-12 })).toBeCloseTo(3, 11);
  });

  it('is none where both ends have the same sign or no value', () => {
    expect(findRoot({ f: (x) => x * x + 1, low: -1, high: 1, tolerance: 1e-9 })).toBeUndefined();
    expect(findRoot({ f: (x) => Math.log(x), low: -1, high: 3, tolerance: 1e-9 })).toBeUndefined();
  });
});
