import { describe, expect, it } from 'vitest';
import { neckLines } from './neck-lines.js';

describe('the neck under the strings', () => {
  it('is straight where all lengths are one, with the twelfth fret half way', () => {
    const { nut, saddle, frets, isFan } = neckLines([0.648, 0.648]);
    expect([nut, saddle, isFan]).toEqual([[0, 0], [1, 1], false]);
    expect(frets[11]?.[0]).toBeCloseTo(0.5, 12);
  });

  it('fans where lengths differ, each string to its own length', () => {
    const lengthsM = [0.648, 0.66, 0.686];
    const { nut, saddle, frets, isFan } = neckLines(lengthsM);
    const drawn = lengthsM.map((_, at) => (saddle[at] ?? 0) - (nut[at] ?? 0));
    expect(isFan).toBe(true);
    expect((drawn[0] ?? 0) / (drawn[2] ?? 1)).toBeCloseTo(0.648 / 0.686, 12);
    expect(nut[2]).toBe(0);
    expect(saddle[2]).toBeCloseTo(1, 12);
    // The seventh fret stands square.
    expect(frets[6]?.[0]).toBeCloseTo(frets[6]?.[2] ?? 0, 12);
  });
});
