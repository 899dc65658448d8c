import { describe, expect, it } from 'vitest';
import { nextNumber } from './next-number.js';

describe('the number after the newest order', () => {
  it('counts the last digits up and keeps what stands round them', () => {
    expect(nextNumber('1041')).toBe('1042');
    expect(nextNumber('P-0099')).toBe('P-0100');
    expect(nextNumber('2027/999')).toBe('2027/1000');
    expect(nextNumber('41 b')).toBe('42 b');
  });

  it('is not guessed where there are no digits', () => {
    expect(nextNumber('by hand')).toBe('');
    expect(nextNumber('')).toBe('');
  });
});
