import { calendarDate } from '../../../core/foundation/index.js';
import { readStringKey } from '../../../core/sets/index.js';
import {
  allocate,
  type StringDemand,
  type StringShortage,
  type StringTake,
} from '../../../core/stock/index.js';
import { mayBePacked, type Order, openPlaces, type Pack, type Packing } from './packing-roll.js';

/** An order on the roll, and what it still takes. */
export interface OrderDue {
  readonly order: Order;
  readonly packs: readonly Pack[];
  /** Sets that it asks for, sealed or sent ones included. */
  readonly sets: number;
  readonly sealed: number;
  readonly sent: number;
  /**
   * `to-send`: all that is left of it lies in sealed packs; `can-be-packed`: every string that it still wants lies in a bin, the
   * orders due before it served first; `waits`: strings are missing.
   */
  readonly standing: 'to-send' | 'can-be-packed' | 'waits';
  readonly lacks: readonly StringShortage[];
  /** From which bins and lots (by id). */
  readonly takes: readonly StringTake[];
}

/** The open orders, those due first at the top; what lies in the bins is given out in that order. */
export function ordersDue({ orders, packs, lying }: Packing): readonly OrderDue[] {
  const inOrder = [...orders].sort(
    (a, b) => compare(a.body.due, b.body.due) || compare(a.body.number, b.body.number),
  );
  const given = allocate({
    demands: inOrder.flatMap((order, at) => wantedOf(order, at + 1, packs)),
    strings: lying.filter(mayBePacked).flatMap(({ binId, lotId, stringKey, count }) => {
      const spec = readStringKey(stringKey);
      // Ids are made in the order of time: the oldest lot goes first.
      return spec ? [{ spec, count, binId, lot: lotId, reorderLevel: 0 }] : [];
    }),
  });
  return inOrder.map((order, at) => {
    const own = packs.filter(({ body }) => body.orderId === order.id);
    const lacks = given.shortages.filter(({ line }) => line === at + 1);
    const takes = given.takes.filter(({ line }) => line === at + 1);
    const sets = order.body.lines.reduce((sum, { quantity }) => sum + quantity, 0);
    const sealed = own.filter(({ state }) => state === 'sealed').length;
    const sent = own.filter(({ state }) => state === 'shipped').length;
    const isDone = sealed + sent === sets;
    const standing = isDone ? 'to-send' : lacks.length > 0 ? 'waits' : 'can-be-packed';
    return { order, packs: own, sets, sealed, sent, standing, lacks, takes };
  });
}

/** What an order still wants: strings of sets without a pack, and the empty places of its open packs. */
function wantedOf(order: Order, line: number, packs: readonly Pack[]): readonly StringDemand[] {
  const due = calendarDate(order.body.due);
  if (!due) return [];
  const own = packs.filter(({ body }) => body.orderId === order.id);
  const ofOpen = own.filter(({ state }) => state === 'open').flatMap(openPlaces);
  const ofOthers = order.body.lines.flatMap(({ lineNumber, quantity, strings }) => {
    const without = quantity - own.filter(({ body }) => body.lineNumber === lineNumber).length;
    return Array.from({ length: Math.max(0, without) }, () => strings).flat();
  });
  return [...ofOpen, ...ofOthers].map(({ stringKey }) => ({ line, stringKey, count: 1, due }));
}

const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
