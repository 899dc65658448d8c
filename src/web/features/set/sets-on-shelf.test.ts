import { describe, expect, it } from 'vitest';
import type { StringSpec } from '../../../core/sets/index.js';
import { setsOnShelf } from './sets-on-shelf.js';

const spec = (gaugeThou: number): StringSpec => ({
  gaugeThou,
  kind: 'plain',
  material: 'plain-steel',
  end: 'ball',
  lengthM: 1,
});
const lying = (gaugeThou: number, count: number, binId = 'B') => ({
  binId,
  lot: 'L',
  spec: spec(gaugeThou),
  count,
  reorderLevel: 0,
});

describe('sets on the shelf', () => {
  it('are as many as the string of which there are fewest allows, over all bins', () => {
    const strings = [lying(10, 20), lying(13, 3), lying(13, 4, 'C')];
    expect(setsOnShelf([spec(10), spec(13)], { strings })).toEqual({
      sets: 7,
      shortest: { spec: spec(13), onShelf: 7 },
    });
  });

  it('take a string twice where the set has it twice', () => {
    const strings = [lying(10, 9), lying(13, 5)];
    expect(setsOnShelf([spec(10), spec(10), spec(13)], { strings }).sets).toBe(4);
  });

  it('are none where a string is missing, and of a set of nothing', () => {
    expect(setsOnShelf([spec(10), spec(13)], { strings: [lying(10, 9)] }).sets).toBe(0);
    expect(setsOnShelf([], { strings: [] }).sets).toBe(0);
  });
});
