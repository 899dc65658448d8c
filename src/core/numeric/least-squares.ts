import { invariant } from '../foundation/index.js';
import type { Matrix } from './linear-system.js';
import { substituteBack } from './substitute-back.js';

/** Columns that keep less than this share of their length are combinations of the ones before. */
const DEPENDENT_SHARE = 1e-12;

/**
 * The x that makes |a x - b| least, by Householder reflections (G. H. Golub, Numer. Math. 7 (1965) 206): as exact
 * as the data, where normal equations would lose half the digits. `a` has at least as many rows as columns.
 * Undefined where its columns depend on one another.
 */
export function leastSquares(a: Matrix, b: readonly number[]): number[] | undefined {
  const columns = a[0]?.length ?? 0;
  invariant(
    a.length === b.length && a.length >= columns && columns > 0,
    'least squares needs rows, and as many as unknowns',
  );
  const rows = a.map((row, index) => [...row, b[index]!]);
  const lengths = Array.from({ length: columns }, (_, column) => lengthBelow(rows, column, 0));
  for (let column = 0; column < columns; column++) {
    const length = lengthBelow(rows, column, column);
    if (!(length > DEPENDENT_SHARE * lengths[column]!)) return undefined;
    reflect(rows, column, length);
  }
  return substituteBack(rows, columns);
}

/** Length of a column from row `from` down. */
const lengthBelow = (rows: readonly (readonly number[])[], column: number, from: number): number =>
  Math.hypot(...rows.slice(from).map((row) => row[column]!));

/** Turns the column into its length on the diagonal and zeros below, and all columns right of it along. */
function reflect(rows: number[][], column: number, length: number): void {
  const diagonal = rows[column]![column]!;
  const image = diagonal > 0 ? -length : length;
  const normal = rows.slice(column).map((row, index) => (index === 0 ? row[column]! - image : row[column]!));
  const half = length * (length + Math.abs(diagonal));
  const width = rows[column]!.length;
  for (let right = column; right < width; right++) {
    let along = 0;
    normal.forEach((entry, index) => {
      along += entry * rows[column + index]![right]!;
    });
    normal.forEach((entry, index) => {
      const row = rows[column + index]!;
      row[right] = row[right]! - (entry * along) / half;
    });
  }
}
