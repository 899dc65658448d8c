import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { estimate } from './estimate.js';
import { propagate } from './propagate.js';

const value = fc.double({ min: -100, max: 100, noNaN: true });
const u = fc.double({ min: 1e-6, max: 10, noNaN: true });

describe('uncertainty through a model', () => {
  it('of a sum with known weights is the root of the squares', () => {
    fc.assert(
      fc.property(value, u, value, u, (a, ua, b, ub) => {
        const [sum] = propagate(([x = 0, y = 0]) => [3 * x - 2 * y], [estimate(a, ua), estimate(b, ub)]);
        expect(sum!.value).toBe(3 * a - 2 * b);
        expect(sum!.u).toBeCloseTo(Math.hypot(3 * ua, 2 * ub), 9);
      }),
    );
  });

  it('an input that reaches an output by two ways cancels where the ways cancel', () => {
    const [difference, double] = propagate(([x = 0]) => [x - x, x + x], [estimate(5, 0.3)]);
    expect(difference).toEqual({ value: 0, u: 0 });
    expect(double!.u).toBeCloseTo(0.6, 12);
  });

  it('an exact input adds nothing and costs no evaluation', () => {
    let calls = 0;
    const model = ([x = 0, y = 0]: readonly number[]) => {
      calls++;
      return [x * y];
    };
    const [product] = propagate(model, [estimate(2), estimate(3, 0.1)]);
    expect(product!.u).toBeCloseTo(0.2, 12);
    expect(calls).toBe(3);
  });

  it('with no uncertain input the output is exact', () => {
    expect(propagate(([x = 0]) => [x ** 2], [estimate(7)])).toEqual([{ value: 49, u: 0 }]);
  });

  it('grows with the uncertainty of an input', () => {
    fc.assert(
      fc.property(value, u, fc.double({ min: 1.01, max: 5, noNaN: true }), (a, ua, more) => {
        const of = (spread: number) => propagate(([x = 0]) => [Math.atan(x)], [estimate(a, spread)])[0]!.u;
        expect(of(ua * more)).toBeGreaterThan(of(ua));
      }),
    );
  });

  it('refuses an uncertainty below zero', () => {
    expect(() => propagate(([x = 0]) => [x], [estimate(1, -0.1)])).toThrow('Broken promise');
  });
});
