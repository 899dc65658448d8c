import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { choleskyFactor, choleskyInverse, choleskySolve, type SquareMatrix } from './cholesky.js';
import { solveLinear } from './linear-system.js';

const squareOf = (rows: readonly (readonly number[])[]): SquareMatrix => ({
  size: rows.length,
  entries: Float64Array.from(rows.flat()),
});
const rowsOf = ({ size, entries }: SquareMatrix): number[][] =>
  Array.from({ length: size }, (_, row) => [...entries.slice(row * size, (row + 1) * size)]);

/** B B' + 1 of a random B: positive definite, and far from the border. */
const positiveDefinite = fc.integer({ min: 1, max: 6 }).chain((size) =>
  fc
    .array(fc.array(fc.double({ min: -3, max: 3, noNaN: true }), { minLength: size, maxLength: size }), {
      minLength: size,
      maxLength: size,
    })
    .map((rows) =>
      rows.map((one, row) =>
        rows.map(
          (other, column) =>
            one.reduce((sum, entry, k) => sum + entry * other[k]!, 0) + (row === column ? 1 : 0),
        ),
      ),
    ),
);

describe('the Cholesky factor', () => {
  // C. B. Moler's matrix: a_ij = min(i, j) - 2, a_ii = i; its factor has ones on and minus ones below the diagonal.
  it("of Moler's matrix is made of ones and minus ones (J. C. Nash, Compact Numerical Methods, 1990, app. 1)", () => {
    const moler = [1, 2, 3, 4].map((i) => [1, 2, 3, 4].map((j) => (i === j ? i : Math.min(i, j) - 2)));
    expect(rowsOf(choleskyFactor(squareOf(moler))!)).toEqual([
      [1, 0, 0, 0],
      [-1, 1, 0, 0],
      [-1, -1, 1, 0],
      [-1, -1, -1, 1],
    ]);
  });

  it('is refused where a matrix is not positive definite', () => {
    expect(
      choleskyFactor(
        squareOf([
          [1, 2],
          [2, 1],
        ]),
      ),
    ).toBeUndefined();
  });

  it('solves as elimination does', () => {
    fc.assert(
      fc.property(positiveDefinite, (rows) => {
        const b = rows.map((_, row) => row + 1);
        const ours = choleskySolve(choleskyFactor(squareOf(rows))!, b);
        solveLinear(rows, b)!.forEach((value, row) => {
          expect(Math.abs(ours[row]! - value)).toBeLessThan(1e-9 * (1 + Math.abs(value)));
        });
      }),
    );
  });

  it('inverts: the matrix times its inverse is one', () => {
    fc.assert(
      fc.property(positiveDefinite, (rows) => {
        const inverse = rowsOf(choleskyInverse(choleskyFactor(squareOf(rows))!));
        rows.forEach((one, row) => {
          inverse.forEach((_, column) => {
            const entry = one.reduce((sum, value, k) => sum + value * inverse[k]![column]!, 0);
            expect(Math.abs(entry - (row === column ? 1 : 0))).toBeLessThan(1e-10);
          });
        });
      }),
    );
  });
});
