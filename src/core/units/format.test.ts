import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatDecimal, formatTrimmed } from './decimal.js';
import {
  formatClock,
  formatForce,
  formatFraction,
  formatGauge,
  formatMillimetres,
  formatThou,
  formatUnitWeight,
} from './format.js';

describe('numbers as people read them', () => {
  it.each([
    [10, '10'],
    [13.5, '13.5'],
    [100, '100'],
    [9.25, '9.25'],
    [11.811024, '11.81'],
  ])('gauge %d is shown as %s', (thou, text) => {
    expect(formatGauge(thou)).toBe(text);
  });

  it('lengths keep their decimals, zeros too', () => {
    expect(formatThou(0.000254)).toBe('10.00');
    expect(formatThou(0.00034290005)).toBe('13.50');
    expect(formatThou(0.000254, 1)).toBe('10.0');
    expect(formatMillimetres(0.000254)).toBe('0.254');
    expect(formatMillimetres(0.648, 1)).toBe('648.0');
  });

  it('forces are shown in the unit that is asked for', () => {
    expect(formatForce(72.061, 'N')).toBe('72.1 N');
    expect(formatForce(72.061, 'lbf')).toBe('16.20 lbf');
    expect(formatForce(72.061, 'kgf')).toBe('7.35 kgf');
    expect(formatForce(-0.5, 'N')).toBe('−0.5 N');
  });

  it.each([
    [0.000397765, '0.3978 g/m'],
    [0.004685308, '4.685 g/m'],
    [0.0216, '21.60 g/m'],
    [0.00000399, '0.003990 g/m'],
    [0, '0 g/m'],
  ])('unit weight %d kg/m is shown to four figures', (kgPerM, text) => {
    expect(formatUnitWeight(kgPerM)).toBe(text);
  });

  it.each([
    [0, '00:00'],
    [485, '08:05'],
    [485.4, '08:05'],
    [1439.6, '24:00'],
    [1440, '24:00'],
  ])('minute %d of the day is %s', (minute, text) => {
    expect(formatClock(minute)).toBe(text);
  });

  it('shares are shown in per cent', () => {
    expect(formatFraction(0.523)).toBe('52 %');
    expect(formatFraction(0.523, 1)).toBe('52.3 %');
    expect(formatFraction(-0.05)).toBe('−5 %');
  });

  it('the minus is a minus, and there is no negative zero', () => {
    expect(formatDecimal(-3.2, 2)).toBe('−3.20');
    expect(formatDecimal(-0.001, 2)).toBe('0.00');
    expect(formatTrimmed(-0.5, 2)).toBe('−0.5');
  });

  it.each([Number.NaN, Number.POSITIVE_INFINITY])('%d is never shown', (value) => {
    expect(() => formatGauge(value)).toThrow('Broken promise');
    expect(() => formatForce(value, 'N')).toThrow('Broken promise');
    expect(() => formatUnitWeight(value)).toThrow('Broken promise');
    expect(() => formatClock(value)).toThrow('Broken promise');
    expect(() => formatMillimetres(value)).toThrow('Broken promise');
  });

  it('a time outside the day is never shown', () => {
    expect(() => formatClock(-1)).toThrow('Broken promise');
    expect(() => formatClock(1441)).toThrow('Broken promise');
  });

  it('no half or quarter thou is lost', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 2000 }), (quarters) => {
        expect(Number(formatGauge(quarters / 4))).toBe(quarters / 4);
        expect(Number(formatThou((quarters / 4) * 2.54e-5))).toBe(quarters / 4);
      }),
    );
  });
});
