import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { degreesFromRadians } from './angle.js';
import {
  kilogramsForceFromNewtons,
  newtonsFromKilogramsForce,
  newtonsFromPoundsForce,
  poundsForceFromNewtons,
} from './force.js';
import {
  inchesFromMetres,
  metresFromInches,
  metresFromMillimetres,
  metresFromThou,
  millimetresFromMetres,
  thouFromMetres,
} from './length.js';
import { ksiFromPascals, pascalsFromKsi } from './pressure.js';
import { awgFromDiameterM, diameterMFromAwg } from './wire-gauge.js';

const size = fc.double({ min: 1e-6, max: 1e6, noNaN: true });

describe('every conversion', () => {
  it.each([
    ['thou', metresFromThou, thouFromMetres],
    ['inches', metresFromInches, inchesFromMetres],
    ['millimetres', metresFromMillimetres, millimetresFromMetres],
    ['pounds-force', newtonsFromPoundsForce, poundsForceFromNewtons],
    ['kilograms-force', newtonsFromKilogramsForce, kilogramsForceFromNewtons],
    ['ksi', pascalsFromKsi, ksiFromPascals],
  ])('of %s goes there and back', (_, there, back) => {
    fc.assert(
      fc.property(size, (value) => {
        expect(Math.abs(back(there(value)) / value - 1)).toBeLessThan(1e-14);
      }),
    );
  });

  it('a ten is 0.254 mm', () => {
    expect(metresFromThou(10)).toBeCloseTo(0.000254, 15);
    expect(thouFromMetres(0.000254)).toBeCloseTo(10, 12);
  });

  it('half a turn is 180 degrees', () => {
    expect(degreesFromRadians(Math.PI)).toBe(180);
  });
});

describe('wire gauge', () => {
  it('a larger number is a thinner wire, and the number leads back', () => {
    fc.assert(
      fc.property(fc.integer({ min: -3, max: 49 }), (n) => {
        expect(diameterMFromAwg(n + 1)).toBeLessThan(diameterMFromAwg(n));
        expect(awgFromDiameterM(diameterMFromAwg(n))).toBeCloseTo(n, 10);
      }),
    );
  });
});
