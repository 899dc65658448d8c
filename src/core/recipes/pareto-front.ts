/**
 * Indices of the rows that no other row beats: none is as small in every column and smaller in one. Rows alike
 * in every column all stay. Indices come in ascending order.
 *
 * Rows are first sorted column by column, so that whatever beats a row stands before it; each row is then held
 * against the front so far only: O(n log n + n x front). Columns must not hold NaN.
 */
export function paretoFront(rows: readonly (readonly number[])[]): number[] {
  const order = rows.map((_, index) => index).sort((a, b) => compareRows(rows[a]!, rows[b]!) || a - b);
  const front: number[] = [];
  for (const index of order) {
    const row = rows[index]!;
    if (!front.some((member) => beats(rows[member]!, row))) front.push(index);
  }
  return front.sort((a, b) => a - b);
}

function compareRows(a: readonly number[], b: readonly number[]): number {
  for (let column = 0; column < a.length; column++) {
    if (a[column]! !== b[column]!) return a[column]! < b[column]! ? -1 : 1;
  }
  return 0;
}

function beats(a: readonly number[], b: readonly number[]): boolean {
  let smaller = false;
  for (let column = 0; column < a.length; column++) {
    if (a[column]! > b[column]!) return false;
    if (a[column]! < b[column]!) smaller = true;
  }
  return smaller;
}
