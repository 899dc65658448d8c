import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { paretoFront } from './pareto-front.js';

const rows = fc.array(
  fc.tuple(fc.integer({ min: 0, max: 6 }), fc.integer({ min: 0, max: 6 }), fc.integer({ min: 0, max: 6 })),
  {
    maxLength: 40,
  },
);

const beats = (a: readonly number[], b: readonly number[]) =>
  a.every((value, column) => value <= b[column]!) && a.some((value, column) => value < b[column]!);

describe('the Pareto front', () => {
  it('is exactly the rows that no other row beats', () => {
    fc.assert(
      fc.property(rows, (table) => {
        const expected = table.flatMap((row, index) =>
          table.some((other) => beats(other, row)) ? [] : [index],
        );
        expect(paretoFront(table)).toEqual(expected);
      }),
    );
  });

  it('keeps both of two rows alike', () => {
    expect(
      paretoFront([
        [1, 2],
        [1, 2],
        [2, 2],
      ]),
    ).toEqual([0, 1]);
  });

  it('is empty for no rows', () => {
    expect(paretoFront([])).toEqual([]);
  });
});
