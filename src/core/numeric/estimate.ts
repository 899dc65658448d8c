/** A number with its standard uncertainty `u` (one standard deviation), both in the unit the field's name states. */
export interface Estimate {
  readonly value: number;
  readonly u: number;
}

/** An estimate; `u` is zero where the number is exact by definition. */
export const estimate = (value: number, u = 0): Estimate => ({ value, u });
