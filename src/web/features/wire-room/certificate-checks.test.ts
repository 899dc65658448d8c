import { describe, expect, it } from 'vitest';
import { metresFromInches, pascalsFromKsi } from '../../../core/units/index.js';
import { diameterCheck, tensileCheck } from './certificate-checks.js';
import type { WireRecord } from './wire-book.js';

const wire = (body: Partial<WireRecord['body']>): WireRecord => ({
  id: '',
  version: 1,
  state: '',
  createdAt: '',
  updatedAt: '',
  body: {
    name: 'round steel 10',
    use: 'core',
    shape: 'round',
    sizeM: metresFromInches(0.01),
    alloy: 'music-wire',
    strengthTable: 'astm-a228',
    priceMinorPerKg: 0,
    ...body,
  },
});

describe("a spool's certificate", () => {
  it('is held against the tolerance of its standard: 0.0002 in at 0.010 in (ASTM A228)', () => {
    const within = diameterCheck(wire({}), metresFromInches(0.0102));
    expect(within).toMatchObject({ holds: true, standard: 'ASTM A228' });
    expect(within.toleranceM).toBeCloseTo(metresFromInches(0.0002), 12);
    expect(diameterCheck(wire({}), metresFromInches(0.0103)).holds).toBe(false);
  });

  it('of a wrap wire, that names no standard, against the workshop’s own rule', () => {
    const { strengthTable: _, ...body } = wire({ use: 'wrap', alloy: 'pure-nickel' }).body;
    const wrap = { ...wire({}), body };
    expect(diameterCheck(wrap, metresFromInches(0.0101))).toMatchObject({ holds: true, standard: undefined });
    expect(tensileCheck(wrap, 1e9)).toBeUndefined();
  });

  it('must reach the least strength: 387 ksi at 0.010 in (ASTM A228)', () => {
    expect(tensileCheck(wire({}), pascalsFromKsi(387))?.holds).toBe(true);
    expect(tensileCheck(wire({}), pascalsFromKsi(380))?.holds).toBe(false);
  });
});
