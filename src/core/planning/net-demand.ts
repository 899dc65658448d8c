import type { ResolvedOrder } from '../orders/index.js';
import {
  type Allocation,
  allocate,
  type ReorderNeed,
  reorderNeeds,
  type StringDemand,
  type StringStock,
} from '../stock/index.js';

export interface NetDemand extends Allocation {
  readonly reorder: readonly ReorderNeed[];
}

/** The strings that orders want: each string of a set as often as the set is ordered. */
export const stringDemand = (orders: readonly ResolvedOrder[]): readonly StringDemand[] =>
  orders.flatMap(({ line, due, quantity, strings }) =>
    strings.map(({ stringKey }) => ({ line, stringKey, count: quantity, due })),
  );

/** Orders exploded to strings and set against the shelf: who takes what, what is short, which bins run low. */
export function netDemand({
  orders,
  strings,
}: {
  readonly orders: readonly ResolvedOrder[];
  readonly strings: readonly StringStock[];
}): NetDemand {
  const allocation = allocate({ demands: stringDemand(orders), strings });
  return { ...allocation, reorder: reorderNeeds(allocation.left) };
}
