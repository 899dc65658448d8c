import { describe, expect, it } from 'vitest';
import { type AmountRule, readAmount } from './read-amount.js';

const WEIGHT: AmountRule = { units: { kg: 1, g: 0.001 }, bare: 'kg', least: 0, most: 100 };
const STRINGS: AmountRule = { units: { '': 1 }, bare: '', least: 0, most: 500, whole: true };

const read = (text: string, rule: AmountRule) => {
  const answer = readAmount(text, rule);
  return answer.ok ? answer.value : answer.fault.code;
};

describe('an amount that somebody typed', () => {
  it('is read with decimal point or comma, with its unit or without', () => {
    expect(read('4.346', WEIGHT)).toBe(4.346);
    expect(read(' 4,346 kg ', WEIGHT)).toBe(4.346);
    expect(read('310 g', WEIGHT)).toBe(0.31);
    expect(read('12', STRINGS)).toBe(12);
  });

  it('is refused where it has another unit, stands out of range, or is none', () => {
    expect(read('12 mm', WEIGHT)).toBe('unit');
    expect(read('120', WEIGHT)).toBe('range');
    expect(read('', WEIGHT)).toBe('unreadable');
    expect(read('1e3', WEIGHT)).toBe('unreadable');
    expect(read('1.5', STRINGS)).toBe('whole');
  });

  it('names its range in the unit that a bare number is taken for', () => {
    const thou: AmountRule = { units: { thou: 0.0000254, mm: 0.001 }, bare: 'thou', least: 0, most: 0.00254 };
    const answer = readAmount('300', thou);
    expect(answer.ok ? undefined : answer.fault).toEqual({ code: 'range', least: 0, most: 100 });
  });
});
