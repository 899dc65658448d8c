import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseLength, SCALE_LENGTH_RANGE_M } from './parse-length.js';

const metresOf = (text: string): number | string => {
  const length = parseLength(text);
  return length.ok ? length.value : length.fault.code;
};

describe('a scale length', () => {
  it.each([
    ['25.5', 0.6477],
    ['25.5"', 0.6477],
    ['25.5 in', 0.6477],
    ['25 1/2 in', 0.6477],
    ['25-1/2"', 0.6477],
    ['25½″', 0.6477],
    ['24¾"', 0.62865],
    ['34', 0.8636],
    ['648', 0.648],
    ['648mm', 0.648],
    ['647,7 mm', 0.6477],
    ['64.8cm', 0.648],
    ['0.648 m', 0.648],
  ])('%j is %d m', (text, lengthM) => {
    expect(metresOf(text)).toBe(lengthM);
  });

  it.each([
    ['64.8', '64.8 cm'],
    ['0.648', '0.648 m'],
  ])('%j is neither inches nor millimetres, and may be %j', (text, write) => {
    expect(parseLength(text)).toEqual({
      ok: false,
      fault: {
        code: 'unit.ambiguous',
        text,
        expected: 'length',
        readings: [{ value: 0.648, unit: 'm', write, plausible: true }],
      },
    });
  });

  it('a bare number that is plausible both ways is refused with both', () => {
    const length = parseLength('20', { leastM: 0.01, mostM: 1 });
    expect(length).toMatchObject({ ok: false, fault: { code: 'unit.ambiguous' } });
    if (length.ok) return;
    expect(length.fault.readings.map(({ write }) => write)).toEqual(['20 in', '20 mm', '20 cm']);
  });

  it.each(['5 mm', '2000', '0', '-648', '3 m'])('%j is out of range', (text) => {
    expect(metresOf(text)).toBe('unit.out-of-range');
  });

  it.each(['', '6.48e2', '25.5-27', '648 kg', '25 constructor', '25.5 1/2'])('%j cannot be read', (text) => {
    expect(metresOf(text)).toBe('unit.unreadable');
  });

  it('no number is plausible both as inches and as millimetres', () => {
    const mostInches = SCALE_LENGTH_RANGE_M.mostM / 0.0254;
    const leastMillimetres = SCALE_LENGTH_RANGE_M.leastM * 1000;
    expect(mostInches).toBeLessThan(leastMillimetres);
  });

  it('the unit never changes the length', () => {
    fc.assert(
      fc.property(fc.integer({ min: 251, max: 1199 }), (millimetres) => {
        const lengthM = millimetres / 1000;
        expect(metresOf(String(millimetres))).toBeCloseTo(lengthM, 12);
        expect(metresOf(`${millimetres / 10} cm`)).toBeCloseTo(lengthM, 12);
        expect(metresOf(`${lengthM} m`)).toBeCloseTo(lengthM, 12);
        expect(metresOf(`${(millimetres / 25.4).toFixed(10)} in`)).toBeCloseTo(lengthM, 10);
      }),
    );
  });
});
