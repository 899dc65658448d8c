import { invariant } from '../foundation/index.js';
import { substituteBack } from './substitute-back.js';

/** Rows of equal length. */
export type Matrix = readonly (readonly number[])[];

/** Pivots smaller than this share of the largest entry of their row are rounding, not equations. */
const SINGULAR_SHARE = 1e-14;

/**
 * Solves the square system a x = b by elimination with scaled partial pivoting. Undefined where the equations do
 * not determine x. For small dense systems.
 */
export function solveLinear(a: Matrix, b: readonly number[]): number[] | undefined {
  const size = b.length;
  invariant(
    a.length === size && a.every((row) => row.length === size),
    'a system of equations is not square',
  );
  const scales = a.map((row) => Math.max(...row.map(Math.abs)));
  const rows = a.map((row, index) => ({ entries: [...row, b[index]!], scale: scales[index]! }));
  for (let column = 0; column < size; column++) {
    const pivotIndex = strongestRow(rows, column);
    const pivot = rows[pivotIndex]!;
    if (!(Math.abs(pivot.entries[column]!) > SINGULAR_SHARE * pivot.scale)) return undefined;
    [rows[column], rows[pivotIndex]] = [pivot, rows[column]!];
    for (const row of rows.slice(column + 1)) subtractMultiple(row.entries, pivot.entries, column);
  }
  return substituteBack(
    rows.map(({ entries }) => entries),
    size,
  );
}

interface ScaledRow {
  readonly entries: number[];
  readonly scale: number;
}

function strongestRow(rows: readonly ScaledRow[], column: number): number {
  const strength = (index: number): number =>
    Math.abs(rows[index]!.entries[column]!) / (rows[index]!.scale || 1);
  let strongest = column;
  for (let index = column + 1; index < rows.length; index++) {
    if (strength(index) > strength(strongest)) strongest = index;
  }
  return strongest;
}

function subtractMultiple(row: number[], pivot: readonly number[], column: number): void {
  const factor = row[column]! / pivot[column]!;
  for (let index = column; index < row.length; index++) row[index] = row[index]! - factor * pivot[index]!;
}
