import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { linearInterpolation } from './linear-interpolation.js';
import { monotoneInterpolation } from './monotone-interpolation.js';

/** Tables whose xs ascend and ys rise, with steps of very different size. */
const risingTable = fc
  .array(
    fc.tuple(
      fc.double({ min: 0.01, max: 10, noNaN: true }),
      fc.double({ min: 0.001, max: 100, noNaN: true }),
    ),
    { minLength: 2, maxLength: 12 },
  )
  .map((steps) => {
    let x = 0;
    let y = 0;
    const rows = steps.map(([dx, dy]) => {
      x += dx;
      y += dy;
      return [x, y] as const;
    });
    return { xs: rows.map(([at]) => at), ys: rows.map(([, value]) => value) };
  });

const share = fc.double({ min: 0, max: 1, noNaN: true });

const within = (xs: readonly number[], part: number): number =>
  Math.min(xs.at(-1)!, xs[0]! + part * (xs.at(-1)! - xs[0]!));

describe.each([
  ['linear', linearInterpolation],
  ['monotone', monotoneInterpolation],
])('%s interpolation', (_, interpolation) => {
  it('passes through every row', () => {
    fc.assert(
      fc.property(risingTable, ({ xs, ys }) => {
        const curve = interpolation(xs, ys);
        xs.forEach((x, index) => {
          expect(curve(x)).toBeCloseTo(ys[index]!, 10);
        });
      }),
    );
  });

  it('rises wherever the table rises', () => {
    fc.assert(
      fc.property(risingTable, share, share, ({ xs, ys }, one, other) => {
        const curve = interpolation(xs, ys);
        const [low = 0, high = 0] = [within(xs, one), within(xs, other)].sort((a, b) => a - b);
        expect(curve(high) - curve(low)).toBeGreaterThanOrEqual(-1e-12 * Math.abs(curve(high)));
      }),
      { numRuns: 500 },
    );
  });

  it('of a straight table is the straight line', () => {
    fc.assert(
      fc.property(risingTable, share, ({ xs }, part) => {
        const x = within(xs, part);
        expect(
          interpolation(
            xs,
            xs.map((at) => 7 - 3 * at),
          )(x),
        ).toBeCloseTo(7 - 3 * x, 9);
      }),
    );
  });

  it('never goes beyond the table', () => {
    const curve = interpolation([1, 2, 3], [1, 4, 9]);
    expect(() => curve(0.999)).toThrow('Broken promise');
    expect(() => curve(3.001)).toThrow('Broken promise');
    expect(() => curve(Number.NaN)).toThrow('Broken promise');
  });

  it('refuses a table that does not ascend or has one row', () => {
    expect(() => interpolation([1, 1], [1, 2])).toThrow('Broken promise');
    expect(() => interpolation([2, 1], [1, 2])).toThrow('Broken promise');
    expect(() => interpolation([1], [1])).toThrow('Broken promise');
    expect(() => interpolation([1, 2], [1, Number.NaN])).toThrow('Broken promise');
  });
});

describe('a monotone curve', () => {
  it('leads back from y to x', () => {
    fc.assert(
      fc.property(risingTable, share, fc.boolean(), ({ xs, ys }, part, falls) => {
        const curve = monotoneInterpolation(xs, falls ? ys.map((y) => -y) : ys);
        const y = curve(within(xs, part));
        const back = curve.inverse(y);
        expect(Math.abs(curve(back!) - y)).toBeLessThanOrEqual(1e-11 * Math.max(1, Math.abs(y)));
      }),
      { numRuns: 300 },
    );
  });

  it('never steps past its rows, not by a last bit', () => {
    fc.assert(
      fc.property(risingTable, share, ({ xs, ys }, part) => {
        const y = monotoneInterpolation(xs, ys)(within(xs, 1 - part * 1e-6));
        expect(y).toBeLessThanOrEqual(ys.at(-1)!);
        expect(y).toBeGreaterThanOrEqual(ys[0]!);
      }),
      { numRuns: 2000 },
    );
  });

  it('has no x for a y that it never reaches', () => {
    const curve = monotoneInterpolation([1, 2, 3], [10, 20, 40]);
    expect(curve.inverse(9.9)).toBeUndefined();
    expect(curve.inverse(40.1)).toBeUndefined();
    expect(curve.inverse(Number.NaN)).toBeUndefined();
    expect(curve.inverse(10)).toBe(1);
    expect(curve.inverse(40)).toBe(3);
    expect([curve.leastX, curve.mostX]).toEqual([1, 3]);
  });

  it('is flat where the table turns, and then has no inverse', () => {
    const curve = monotoneInterpolation([0, 1, 2], [0, 1, 0]);
    expect(curve(1)).toBe(1);
    expect(Math.max(curve(0.99), curve(1.01))).toBeLessThan(1);
    expect(() => curve.inverse(0.5)).toThrow('Broken promise');
  });
});
