import { calendarDate, invariant } from '../../core/foundation/index.js';
import type { OrderFault, ResolvedOrder } from '../../core/orders/index.js';
import type { ReadTransaction } from '../../store/index.js';
import {
  copiesWithoutPack,
  type Order,
  type OrderLine,
  type Pack,
  packsOf,
} from '../packing/packs-of-order.js';
import type { ShopBook } from '../shop/shop-book.js';

/** What is still wanted of the orders that are open, as the core plans it. */
export interface OpenOrders {
  readonly orders: readonly ResolvedOrder[];
  /** Of strings that no recipe makes any more. */
  readonly faults: readonly OrderFault[];
  /** The order behind each line of these. */
  readonly orderOf: (line: number) => Order;
}

/**
 * Strings that open orders still want: those of sets without a pack, and those that open packs lack. Lines are
 * numbered through, oldest order first.
 */
export async function openOrders(tx: ReadTransaction, book: ShopBook): Promise<OpenOrders> {
  const received = await tx.records.all('order', { state: 'received' });
  const packing = await tx.records.all('order', { state: 'packing' });
  const wants: { readonly order: Order; readonly want: Want }[] = [];
  for (const order of [...packing, ...received]) {
    const packs = order.state === 'packing' ? await packsOf(tx, order.id) : [];
    for (const want of wantsOf(order, packs)) wants.push({ order, want });
  }
  const recipeNow = recipesNow(book);
  const orders: ResolvedOrder[] = [];
  const faults: OrderFault[] = [];
  for (const [at, { order, want }] of wants.entries()) {
    const strings = want.strings.flatMap((string) => {
      const recipeId = recipeNow(string);
      if (recipeId !== undefined) return [{ ...string, recipeId }];
      faults.push(recipeMissing(at + 1, order, string));
      return [];
    });
    if (strings.length === want.strings.length)
      orders.push(resolvedOrder(at + 1, order, { ...want, strings }));
  }
  return {
    orders,
    faults,
    orderOf: (line) => {
      const order = wants[line - 1]?.order;
      invariant(order, 'the core plans the lines that it was given');
      return order;
    },
  };
}

type KeptString = OrderLine['strings'][number];

/** So many sets of the same strings. */
interface Want {
  readonly line: OrderLine;
  readonly quantity: number;
  readonly strings: readonly KeptString[];
}

function wantsOf(order: Order, packs: readonly Pack[]): readonly Want[] {
  const without = copiesWithoutPack(order, packs);
  return order.body.lines.flatMap((line) => {
    const open = packs.filter(({ state, body }) => state === 'open' && body.lineNumber === line.lineNumber);
    const untouched = open.filter(({ body }) => body.picked.length === 0).length;
    const quantity = untouched + without.filter((copy) => copy.line === line).length;
    const begun = open.filter(({ body }) => body.picked.length > 0);
    return [
      ...(quantity > 0 ? [{ line, quantity, strings: line.strings }] : []),
      ...begun.map((pack) => ({ line, quantity: 1, strings: stillLacking(pack) })),
    ].filter(({ strings }) => strings.length > 0);
  });
}

function stillLacking({ body }: Pack): readonly KeptString[] {
  const picked = new Set(body.picked.map(({ position }) => position));
  return body.wanted.filter(({ position }) => !picked.has(position));
}

const resolvedOrder = (line: number, { body }: Order, want: Want): ResolvedOrder => {
  const due = calendarDate(body.due);
  invariant(due, 'an order is due on a day of the calendar');
  return {
    line,
    orderId: body.number,
    player: body.player,
    quantity: want.quantity,
    due,
    note: body.note,
    kind: want.line.kind,
    setName: want.line.setName,
    strings: want.strings,
    warnings: [],
  };
};

/** The recipe that makes a string now: that which it was ordered by, else another that makes the same. */
const recipesNow =
  ({ shop, records }: ShopBook) =>
  ({ recipeId, spec }: KeptString): string | undefined =>
    records.recipe.nameOf(recipeId) ??
    shop.recipes.find(
      ({ gaugeThou, material, construction }) =>
        gaugeThou === spec.gaugeThou && material === spec.material && construction.kind === spec.kind,
    )?.id;

const recipeMissing = (line: number, { body }: Order, { spec }: KeptString): OrderFault => ({
  line,
  orderId: body.number,
  code: 'order.recipe-missing',
  facts: { gaugeThou: spec.gaugeThou, kind: spec.kind, material: spec.material, nearestGauges: [] },
});
