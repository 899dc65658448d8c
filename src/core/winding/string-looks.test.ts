import { describe, expect, it } from 'vitest';
import { looksOf } from './string-looks.js';

const read = (placeM: number, rotationDeg: number, valueM: number) => ({ placeM, rotationDeg, valueM });

describe('looks at a string', () => {
  it('are means over the turns of each place, along the string', () => {
    const looks = looksOf([read(0.6, 0, 4), read(0.6, 30, 6), read(0.3, 0, 1), read(0.3004, 30, 3)]);
    expect(looks).toEqual([[2, 5]]);
  });

  it('are two once every place is read again, and not before', () => {
    const once = [read(0.3, 0, 1), read(0.6, 0, 4)];
    expect(looksOf([...once, read(0.3, 0, 2)])).toEqual([[1, 4]]);
    expect(looksOf([...once, read(0.3, 0, 2), read(0.6, 0, 5)])).toEqual([
      [1, 4],
      [2, 5],
    ]);
  });

  it('are none where nothing was read', () => {
    expect(looksOf([])).toEqual([]);
  });
});
