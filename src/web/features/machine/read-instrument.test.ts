import { describe, expect, it } from 'vitest';
import { type InstrumentRule, readInstrument } from './read-instrument.js';

const INCHES: InstrumentRule = { quantity: 'diameter', unit: 'in', expected: 0.001168 };

describe('what a micrometer types', () => {
  it('is a number in the unit that it is set to, with point or comma', () => {
    for (const text of ['0.0460', '.046', '0,046', '+0.0460 ', '00.0460']) {
      expect(readInstrument(text, INCHES)).toMatchObject({
        ok: true,
        value: { value: 0.0011684, unit: 'in' },
      });
    }
    expect(readInstrument('1,168', { ...INCHES, unit: 'mm' })).toMatchObject({
      ok: true,
      value: { value: 0.001168 },
    });
  });

  it('is taken at its word where it brings its unit', () => {
    expect(readInstrument('1.168 mm', INCHES)).toMatchObject({ ok: true, value: { value: 0.001168 } });
  });

  it('is asked about where it is off by the 25.4 of an inch, or by thousandths', () => {
    expect(readInstrument('1.168', INCHES)).toEqual({
      ok: false,
      fault: {
        code: 'unlikely',
        readings: [
          { value: 0.001168, unit: 'mm', typed: '1.168' },
          { value: 0.0296672, unit: 'in', typed: '1.168' },
        ],
      },
    });
    expect(readInstrument('46', INCHES)).toMatchObject({
      fault: { readings: [{ unit: 'thou', value: 0.0011684 }, { unit: 'in' }] },
    });
  });

  it('is asked about where no unit makes it likely, and can still be taken as typed', () => {
    expect(readInstrument('0.2', INCHES)).toMatchObject({
      fault: { code: 'unlikely', readings: [{ unit: 'in', value: 0.00508 }] },
    });
  });

  it('is nothing where it is no number above zero', () => {
    for (const text of ['', 'Err', '0', '-0.046', '1e-3', '0.046 kg'])
      expect(readInstrument(text, INCHES)).toEqual({ ok: false, fault: { code: 'unreadable' } });
  });
});

it('a scale that types kilograms where grams are expected is asked about', () => {
  const rule: InstrumentRule = { quantity: 'mass', unit: 'g', expected: 0.0065 };
  expect(readInstrument('6.4', rule)).toMatchObject({ ok: true, value: { value: 0.0064 } });
  expect(readInstrument('0.0064', rule)).toMatchObject({
    fault: { readings: [{ unit: 'kg' }, { unit: 'g' }] },
  });
});
