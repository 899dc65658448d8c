import { describe, expect, it } from 'vitest';
import { parseForce } from './parse-force.js';

describe('the pull of a string', () => {
  it.each([
    ['72 N', 72],
    ['72n', 72],
    ['16 lb', 71.171545844168],
    ['16 lbf', 71.171545844168],
    ['16 lbs.', 71.171545844168],
    ['7.5 kg', 73.549875],
    ['7,5 kgf', 73.549875],
  ])('%j is %d N', (text, forceN) => {
    const force = parseForce(text);
    expect(force.ok && force.value).toBeCloseTo(forceN, 10);
  });

  it('a bare number may be newtons, pounds or kilograms, and is refused with all that are plausible', () => {
    const force = parseForce('16');
    expect(force).toMatchObject({ ok: false, fault: { code: 'unit.ambiguous', expected: 'force' } });
    if (force.ok) return;
    expect(force.fault.readings.map(({ write }) => write)).toEqual(['16 N', '16 lbf', '16 kgf']);
  });

  it('16 in is no pull', () => {
    expect(parseForce('16 in')).toMatchObject({
      ok: false,
      fault: { code: 'unit.unreadable', wrongUnit: 'in' },
    });
  });

  it.each(['0 N', '-72 N', '600 N', '200 kg', '1000'])('%j is out of range', (text) => {
    expect(parseForce(text)).toMatchObject({ ok: false, fault: { code: 'unit.out-of-range' } });
  });
});
