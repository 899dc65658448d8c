import { invariant } from '../foundation/index.js';

/** The middle value, or the mean of the two middle ones; in the values' own unit, in any order. Not of nothing. */
export function median(values: readonly number[]): number {
  invariant(values.length > 0, 'the median of nothing was asked for');
  const sorted = values.toSorted((a, b) => a - b);
  const half = sorted.length >> 1;
  return sorted.length % 2 === 1 ? sorted[half]! : (sorted[half - 1]! + sorted[half]!) / 2;
}
