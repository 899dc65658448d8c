import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type StringSpec, stringKey } from '../sets/index.js';
import { reorderNeeds } from './reorder-needs.js';
import type { StringStock } from './stock.js';

const spec: StringSpec = {
  gaugeThou: 10,
  kind: 'plain',
  material: 'plain-steel',
  end: 'ball',
  lengthM: 0.98,
};
const lying = (count: number, reorderLevel: number, binId = 'A', lot = 'x'): StringStock => ({
  spec,
  count,
  binId,
  lot,
  reorderLevel,
});

describe('filling bins up again', () => {
  it('tops a bin that fell below its level up to the level', () => {
    expect(reorderNeeds([lying(30, 144)])).toEqual([{ stringKey: stringKey(spec), binId: 'A', count: 114 }]);
  });

  it('leaves a bin alone that holds its level or more, or is made to order', () => {
    expect(reorderNeeds([lying(144, 144), lying(200, 144, 'B'), lying(0, 0, 'C')])).toEqual([]);
  });

  it('counts the lots of one bin together', () => {
    expect(reorderNeeds([lying(100, 144, 'A', 'x'), lying(40, 144, 'A', 'y')])[0]?.count).toBe(4);
  });

  it('looks at each bin of a kind by itself', () => {
    expect(
      reorderNeeds([lying(10, 20, 'A'), lying(50, 20, 'B'), lying(5, 20, 'C')]).map((n) => n.count),
    ).toEqual([10, 15]);
  });

  it('what is made brings every bin to its level and none past it', () => {
    const rows = fc.array(
      fc
        .tuple(fc.nat(50), fc.constantFrom('A', 'B', 'C'), fc.constantFrom('x', 'y'))
        .map(([count, bin, lot]) => lying(count, { A: 0, B: 20, C: 60 }[bin] ?? 0, bin, lot)),
      { maxLength: 8 },
    );
    fc.assert(
      fc.property(rows, (strings) => {
        const needs = reorderNeeds(strings);
        for (const binId of new Set(strings.map((stock) => stock.binId))) {
          const inBin = strings.filter((stock) => stock.binId === binId);
          const holds = inBin.reduce((sum, stock) => sum + stock.count, 0);
          const made = needs
            .filter((need) => need.binId === binId)
            .reduce((sum, need) => sum + need.count, 0);
          expect(holds + made).toBe(Math.max(holds, inBin[0]?.reorderLevel ?? 0));
        }
      }),
    );
  });
});
