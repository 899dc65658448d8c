import { describe, expect, it } from 'vitest';
import { gaussLegendre, integrate } from './integrate.js';

describe('an integral', () => {
  it('of a polynomial is exact', () => {
    expect(integrate({ f: (x) => 5 * x ** 4, low: -1, high: 2 })).toBeCloseTo(33, 12);
  });

  it('of the normal density over all that counts is 1', () => {
    const f = (x: number): number => Math.exp((-x * x) / 2) / Math.sqrt(2 * Math.PI);
    expect(integrate({ f, low: -40, high: 40, pieces: 8 })).toBeCloseTo(1, 13);
  });

  it('turns its sign with its ends', () => {
    expect(integrate({ f: Math.exp, low: 1, high: 0 })).toBeCloseTo(1 - Math.E, 13);
  });
});

describe('the nodes of Gauss-Legendre (Abramowitz & Stegun 1964, table 25.4)', () => {
  it('of two and three points are as printed', () => {
    expect(gaussLegendre(2)[1]).toMatchObject({
      at: expect.closeTo(0.577350269189626, 14),
      weight: expect.closeTo(1, 14),
    });
    expect(gaussLegendre(3)[2]).toMatchObject({
      at: expect.closeTo(0.774596669241483, 14),
      weight: expect.closeTo(0.555555555555556, 14),
    });
  });
});
