/**
 * x ln(x/m) + m - x, without losing digits where x is near m; x >= 0, m > 0 (C. Loader, Fast and accurate computation
 * of binomial probabilities, 2000, section 3).
 */
export function deviance(x: number, m: number): number {
  if (x === 0) return m;
  if (Math.abs(x - m) >= 0.1 * (x + m)) return x * Math.log(x / m) + m - x;
  const v = (x - m) / (x + m);
  let sum = (x - m) * v;
  let term = 2 * x * v;
  for (let k = 3; k < 200; k += 2) {
    term *= v * v;
    const next = sum + term / k;
    if (next === sum) break;
    sum = next;
  }
  return sum;
}
