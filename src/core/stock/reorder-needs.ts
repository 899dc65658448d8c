import { grouped } from '../foundation/index.js';
import { stringKey } from '../sets/index.js';
import type { StringStock } from './stock.js';

/** Strings that would fill a bin up to its reorder level again. */
export interface ReorderNeed {
  readonly stringKey: string;
  readonly binId: string;
  readonly count: number;
}

/**
 * What to make for the shelf: each bin that holds less of a kind than its reorder level is topped up to the
 * level. The lots of a kind in one bin count together, and where their rows name different levels the
 * highest holds. Give it the shelf as it stands after allocation.
 */
export function reorderNeeds(strings: readonly StringStock[]): readonly ReorderNeed[] {
  const bins = grouped(strings, (stock) => `${stock.binId} ${stringKey(stock.spec)}`);
  return [...bins.values()].flatMap((rows) => {
    const [first] = rows;
    const level = Math.max(...rows.map((row) => row.reorderLevel));
    const count = level - rows.reduce((sum, row) => sum + row.count, 0);
    return first && count > 0 ? [{ stringKey: stringKey(first.spec), binId: first.binId, count }] : [];
  });
}
