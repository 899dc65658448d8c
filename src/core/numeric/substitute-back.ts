/**
 * Solves equations in triangular form from the last to the first. Row i holds its coefficients from column i to
 * `size - 1`, then in column `size` its right-hand side; what stands left of the diagonal is not looked at.
 */
export function substituteBack(rows: readonly (readonly number[])[], size: number): number[] {
  const solution = new Array<number>(size).fill(0);
  for (let index = size - 1; index >= 0; index--) {
    const row = rows[index]!;
    let rest = row[size]!;
    for (let column = index + 1; column < size; column++) rest -= row[column]! * solution[column]!;
    solution[index] = rest / row[index]!;
  }
  return solution;
}
