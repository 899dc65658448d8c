import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { solveLinear } from './linear-system.js';

const times = (a: readonly (readonly number[])[], x: readonly number[]): number[] =>
  a.map((row) => row.reduce((sum, entry, index) => sum + entry * x[index]!, 0));

describe('a system of linear equations', () => {
  it('gives back the numbers it was made from', () => {
    const entry = fc.integer({ min: -20, max: 20 });
    const system = fc.integer({ min: 1, max: 6 }).chain((size) =>
      fc.tuple(
        fc.array(fc.array(entry, { minLength: size, maxLength: size }), {
          minLength: size,
          maxLength: size,
        }),
        fc.array(entry, { minLength: size, maxLength: size }),
      ),
    );
    fc.assert(
      fc.property(system, ([entries, x]) => {
        // A strong diagonal keeps the system away from singular.
        const a = entries.map((row, index) =>
          row.map((value, column) => (index === column ? value + 200 : value)),
        );
        solveLinear(a, times(a, x))!.forEach((value, index) => {
          expect(value).toBeCloseTo(x[index]!, 9);
        });
      }),
    );
  });

  it('needs no pivot on the diagonal, nor rows of one size', () => {
    expect(
      solveLinear(
        [
          [0, 1],
          [1, 0],
        ],
        [2, 3],
      ),
    ).toEqual([3, 2]);
    const [x, y] = solveLinear(
      [
        [1e-12, 1e-12],
        [1e9, -1e9],
      ],
      [3e-12, 1e9],
    )!;
    expect(x).toBeCloseTo(2, 12);
    expect(y).toBeCloseTo(1, 12);
  });

  it('has no answer where the equations say the same twice', () => {
    expect(
      solveLinear(
        [
          [1, 2],
          [2, 4],
        ],
        [1, 2],
      ),
    ).toBeUndefined();
    expect(solveLinear([[0]], [1])).toBeUndefined();
  });
});
