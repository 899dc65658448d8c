/**
 * Place, from 0, of the first value after a lasting step away from the target, looking back from the last value, on which
 * a chart has signalled: the t for which (n - t) (mean of the values from t on - target)^2 is greatest (T. Samuel, J.
 * Pignatiello & J. Calvin, Quality Engineering 10 (1998) 521). It says when, not whether: the signal does that.
 */
export function stepBegan(values: readonly number[], target: number): number {
  let [best, began, sum] = [-1, 0, 0];
  for (let t = values.length - 1; t >= 0; t--) {
    sum += values[t]! - target;
    const told = sum ** 2 / (values.length - t);
    // Of equals the latest stands, as nothing more is needed to explain the values.
    if (told > best) [best, began] = [told, t];
  }
  return began;
}
