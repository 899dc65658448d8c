/** A symmetric matrix, or the lower triangle of one: `size` rows one after the other in a single array. */
export interface SquareMatrix {
  readonly size: number;
  readonly entries: Float64Array;
}

/**
 * Lower triangle L with L L' = a, of a symmetric positive definite `a`, of which only the lower triangle is read
 * (A.-L. Cholesky; G. H. Golub & C. F. Van Loan, Matrix Computations, 4.2). Undefined where `a` is not
 * positive definite.
 */
export function choleskyFactor({ size, entries }: SquareMatrix): SquareMatrix | undefined {
  const lower = new Float64Array(size * size);
  for (let row = 0; row < size; row++) {
    const rowAt = row * size;
    for (let column = 0; column <= row; column++) {
      const columnAt = column * size;
      let rest = entries[rowAt + column]!;
      for (let k = 0; k < column; k++) rest -= lower[rowAt + k]! * lower[columnAt + k]!;
      if (column < row) lower[rowAt + column] = rest / lower[columnAt + column]!;
      else if (rest > 0) lower[rowAt + row] = Math.sqrt(rest);
      else return undefined;
    }
  }
  return { size, entries: lower };
}

/** The x with L x = b. */
export function forwardSolve({ size, entries }: SquareMatrix, b: ArrayLike<number>): Float64Array {
  const x = Float64Array.from(b);
  for (let row = 0; row < size; row++) {
    let rest = x[row]!;
    for (let k = 0; k < row; k++) rest -= entries[row * size + k]! * x[k]!;
    x[row] = rest / entries[row * size + row]!;
  }
  return x;
}

/** The x with L L' x = b. */
export function choleskySolve(factor: SquareMatrix, b: ArrayLike<number>): Float64Array {
  const { size, entries } = factor;
  const x = forwardSolve(factor, b);
  for (let row = size - 1; row >= 0; row--) {
    let rest = x[row]!;
    for (let k = row + 1; k < size; k++) rest -= entries[k * size + row]! * x[k]!;
    x[row] = rest / entries[row * size + row]!;
  }
  return x;
}

/** The inverse of L L', whole and symmetric. */
export function choleskyInverse(factor: SquareMatrix): SquareMatrix {
  const { size } = factor;
  const inverted = invertedLower(factor);
  const entries = new Float64Array(size * size);
  for (let k = 0; k < size; k++) {
    const kAt = k * size;
    for (let row = 0; row <= k; row++) {
      const left = inverted[kAt + row]!;
      if (left === 0) continue;
      const rowAt = row * size;
      for (let column = 0; column <= row; column++)
        entries[rowAt + column] = entries[rowAt + column]! + left * inverted[kAt + column]!;
    }
  }
  for (let row = 0; row < size; row++)
    for (let column = 0; column < row; column++) entries[column * size + row] = entries[row * size + column]!;
  return { size, entries };
}

/** The lower triangle M with M L = 1, column by column. */
function invertedLower({ size, entries }: SquareMatrix): Float64Array {
  const inverted = new Float64Array(size * size);
  for (let column = 0; column < size; column++) {
    inverted[column * size + column] = 1 / entries[column * size + column]!;
    for (let row = column + 1; row < size; row++) {
      let sum = 0;
      for (let k = column; k < row; k++) sum += entries[row * size + k]! * inverted[k * size + column]!;
      inverted[row * size + column] = -sum / entries[row * size + row]!;
    }
  }
  return inverted;
}
