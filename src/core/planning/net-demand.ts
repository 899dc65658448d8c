import type { ResolvedOrder } from '../orders/index.js';
import {
  type Allocation,
  allocate,
  type ReorderNeed,
  reorderNeeds,
  type StringDemand,
  type StringShortage,
  type StringStock,
  type StringTake,
} from '../stock/index.js';

export interface NetDemand extends Allocation {
  /** What lines take of strings that are still to come. */
  readonly awaits: readonly StringTake[];
  readonly reorder: readonly ReorderNeed[];
}

export interface NetDemandQuestion {
  readonly orders: readonly ResolvedOrder[];
  /** On the shelf. */
  readonly strings: readonly StringStock[];
  /** On their way to it without anything more being planned, those that come first before the others. */
  readonly coming?: readonly StringStock[];
}

/** The strings that orders want: each string of a set as often as the set is ordered. */
export const stringDemand = (orders: readonly ResolvedOrder[]): readonly StringDemand[] =>
  orders.flatMap(({ line, due, quantity, strings }) =>
    strings.map(({ stringKey }) => ({ line, stringKey, count: quantity, due })),
  );

/**
 * Orders exploded to strings and set against the shelf, and what is short there against the strings that are
 * coming: who takes what, what is short, which bins run low. The line due first has the shelf, so that it need not wait.
 */
export function netDemand({ orders, strings, coming = [] }: NetDemandQuestion): NetDemand {
  const shelf = allocate({ demands: stringDemand(orders), strings });
  const later = takenOfComing(shelf.shortages, coming);
  const left = [...shelf.left, ...later.left];
  return {
    takes: shelf.takes,
    awaits: later.takes,
    shortages: later.shortages,
    left,
    reorder: reorderNeeds(left),
  };
}

function takenOfComing(shortages: readonly StringShortage[], coming: readonly StringStock[]): Allocation {
  const takes: StringTake[] = [];
  const left: StringStock[] = [];
  let short = shortages;
  for (const stock of coming) {
    const given = allocate({ demands: short, strings: [stock] });
    takes.push(...given.takes);
    left.push(...given.left);
    short = given.shortages;
  }
  return { takes, shortages: short, left };
}
