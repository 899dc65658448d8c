import { describe, expect, it } from 'vitest';
import { nextSpoolName, readReceipt } from './receive-draft.js';

const DRAFT = {
  wireId: 'steel 10',
  name: 'steel 10 / 4',
  lot: '77',
  gross: '4,346',
  tare: '310 g',
  certificate: '',
  diameter: '',
  tensile: '',
};

describe('a spool at goods-in', () => {
  it('is taken in by its weight less the empty spool', () => {
    const { netKg, input } = readReceipt(DRAFT);
    expect(netKg).toBeCloseTo(4.036, 9);
    expect(input).toEqual({
      wireId: 'steel 10',
      name: 'steel 10 / 4',
      lot: '77',
      grossKg: 4.346,
      tareKg: 0.31,
    });
  });

  it('keeps what its certificate says and leaves out what it does not', () => {
    const { input } = readReceipt({ ...DRAFT, diameter: '0.2545 mm', tensile: '387 ksi' });
    expect(input?.certificate?.diameterM).toBeCloseTo(0.0002545, 12);
    expect(input?.certificate?.tensilePa).toBeCloseTo(2.668e9, -6);
    expect(input?.certificate).not.toHaveProperty('number');
  });

  it('is not taken in while something cannot be read, or no wire would be on it', () => {
    expect(readReceipt({ ...DRAFT, tensile: 'strong' }).input).toBeUndefined();
    expect(readReceipt({ ...DRAFT, tare: '' }).input).toBeUndefined();
    expect(readReceipt({ ...DRAFT, gross: '0.3' }).input).toBeUndefined();
    expect(readReceipt({ ...DRAFT, lot: ' ' }).input).toBeUndefined();
  });

  it('is offered a name that no spool has yet', () => {
    expect(nextSpoolName('steel 10', ['steel 10 / 1', 'steel 10 / 3'])).toBe('steel 10 / 4');
    expect(nextSpoolName('steel 10', [])).toBe('steel 10 / 1');
  });
});
