/**
 * Sum with the rounding errors carried along (A. Neumaier, ZAMM 54 (1974) 39: Kahan's sum that also holds where a
 * term is larger than the sum so far). 0 for no values.
 */
export function compensatedSum(values: readonly number[]): number {
  let sum = 0;
  let lost = 0;
  for (const value of values) {
    const next = sum + value;
    lost += Math.abs(sum) >= Math.abs(value) ? sum - next + value : value - next + sum;
    sum = next;
  }
  return sum + lost;
}
