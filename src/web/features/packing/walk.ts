import type { OrderDue } from './orders-due.js';
import type { Bin } from './packing-roll.js';

/** A bin on the walk, and what is taken from it. */
export interface Stop {
  readonly bin: Bin;
  readonly takes: readonly {
    readonly stringKey: string;
    readonly count: number;
    /** Numbers of the orders that they are for. */
    readonly orders: readonly string[];
  }[];
}

/** One walk past the bins that gathers what these orders want, each bin passed once. */
export function walkFor(due: readonly OrderDue[], bins: readonly Bin[]): readonly Stop[] {
  return bins
    .toSorted((a, b) => a.walkOrder - b.walkOrder)
    .map((bin) => ({ bin, takes: takesFrom(bin, due) }))
    .filter(({ takes }) => takes.length > 0);
}

function takesFrom({ id }: Bin, due: readonly OrderDue[]): Stop['takes'] {
  const kinds = new Map<string, { stringKey: string; count: number; orders: string[] }>();
  for (const { order, takes } of due)
    for (const { binId, stringKey, count } of takes) {
      if (binId !== id) continue;
      const kind = kinds.get(stringKey) ?? { stringKey, count: 0, orders: [] };
      kind.count += count;
      if (!kind.orders.includes(order.body.number)) kind.orders.push(order.body.number);
      kinds.set(stringKey, kind);
    }
  return [...kinds.values()];
}
