import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { leastSquares } from './least-squares.js';

const points = fc.uniqueArray(
  fc.tuple(fc.integer({ min: -50, max: 50 }), fc.double({ min: -100, max: 100, noNaN: true })),
  { selector: ([x]) => x, minLength: 3, maxLength: 30 },
);

describe('least squares', () => {
  it('leaves residuals that stand square on every column', () => {
    fc.assert(
      fc.property(points, (rows) => {
        const a = rows.map(([x]) => [1, x]);
        const [level = 0, slope = 0] = leastSquares(
          a,
          rows.map(([, y]) => y),
        )!;
        const residuals = rows.map(([x, y]) => y - level - slope * x);
        expect(residuals.reduce((sum, residual) => sum + residual, 0)).toBeCloseTo(0, 8);
        expect(residuals.reduce((sum, residual, index) => sum + residual * rows[index]![0], 0)).toBeCloseTo(
          0,
          7,
        );
      }),
    );
  });

  it('fits as many points as parameters exactly', () => {
    const [level, slope] = leastSquares(
      [
        [1, 1],
        [1, 3],
      ],
      [5, 9],
    )!;
    expect(level).toBeCloseTo(3, 12);
    expect(slope).toBeCloseTo(2, 12);
  });

  it('keeps the digits that normal equations would lose', () => {
    // Columns that differ by 1e-8: their products are equal in doubles.
    const small = 1e-8;
    const a = [
      [1, 1],
      [small, 0],
      [0, small],
    ];
    const [x, y] = leastSquares(a, [2, small, small])!;
    expect(x).toBeCloseTo(1, 6);
    expect(y).toBeCloseTo(1, 6);
  });

  it('has no answer where a column is made of others', () => {
    expect(
      leastSquares(
        [
          [1, 2],
          [2, 4],
          [3, 6],
        ],
        [1, 2, 4],
      ),
    ).toBeUndefined();
  });
});
