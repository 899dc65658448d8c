/**
 * Spread of readings about their own group's mean, pooled over the groups, with a starting value that weighs as so
 * many degrees of freedom: s^2 = (weight s0^2 + sum (x - mean)^2) / (weight + sum (n - 1)). Unit of the readings.
 */
export function pooledSpread(
  groups: readonly (readonly number[])[],
  start: { readonly spread: number; readonly weight: number },
): number {
  let squares = start.weight * start.spread ** 2;
  let degrees = start.weight;
  for (const group of groups) {
    const mean = meanOf(group);
    for (const reading of group) squares += (reading - mean) ** 2;
    degrees += Math.max(0, group.length - 1);
  }
  return Math.sqrt(squares / degrees);
}

export const meanOf = (readings: readonly number[]): number =>
  readings.reduce((sum, reading) => sum + reading, 0) / readings.length;
