import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compensatedSum } from './compensated-sum.js';

describe('a compensated sum', () => {
  it('keeps what a plain sum loses', () => {
    expect(1 + 1e100 + 1 - 1e100).toBe(0);
    expect(compensatedSum([1, 1e100, 1, -1e100])).toBe(2);
    expect(compensatedSum(new Array<number>(10).fill(0.1))).toBe(1);
  });

  it('of nothing is nothing', () => {
    expect(compensatedSum([])).toBe(0);
  });

  it('of whole numbers is exact, in whatever order they come', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: -1_000_000, max: 1_000_000 })), (values) => {
        const exact = values.reduce((sum, value) => sum + BigInt(value), 0n);
        expect(BigInt(compensatedSum(values))).toBe(exact);
        expect(compensatedSum(values.toReversed())).toBe(compensatedSum(values));
      }),
    );
  });
});
