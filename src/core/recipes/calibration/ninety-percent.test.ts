import { describe, expect, it } from 'vitest';
import { ninetyPercentFactor } from './ninety-percent.js';

describe('half of a 90 % interval', () => {
  // Printed to three decimals in any table of t, such as NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.2.
  it.each([
    [4, 2.132],
    [5, 2.015],
    [6, 1.943],
    [10, 1.812],
    [30, 1.697],
    [100, 1.66],
    [1e9, 1.645],
  ])('by %d degrees of freedom is %d (NIST/SEMATECH e-Handbook, table of t, 0.95)', (degrees, t) => {
    expect(Math.abs(ninetyPercentFactor(degrees) - t)).toBeLessThan(1.5e-3);
  });
});
