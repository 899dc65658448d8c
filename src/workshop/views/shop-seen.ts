import type { DayView, ShopView } from '../../contract/index.js';
import type { CalendarDate } from '../../core/foundation/index.js';
import type { ReadTransaction } from '../../store/index.js';
import { dayOfShop } from '../orders/day-of-shop.js';
import { shopBook } from '../shop/shop-book.js';

/** The whole shop at this moment, for a screen that works with it. Refuses while nothing is settled yet. */
export async function shopSeen(tx: ReadTransaction): Promise<ShopView> {
  const { shop, records } = await shopBook(tx);
  const sets = (await tx.records.all('set')).map(({ id, body }) => [body.name, id] as const);
  const people = (await tx.records.all('person')).map(({ id, body }) => [id, body.name] as const);
  const idsOf = (byName: ReadonlyMap<string, { readonly id: string }>) =>
    Object.fromEntries([...byName].map(([name, { id }]) => [name, id]));
  return {
    shop,
    ids: {
      wires: idsOf(records.wire.byName),
      machines: idsOf(records.machine.byName),
      recipes: idsOf(records.recipe.byName),
      bins: idsOf(records.bin.byName),
      sets: Object.fromEntries(sets),
    },
    people: Object.fromEntries(people),
  };
}

/** A day's work beside what is planned and under way at this moment; nothing is written. */
export async function daySeen(tx: ReadTransaction, date: CalendarDate, now?: string): Promise<DayView> {
  const { day, open } = await dayOfShop(tx, { date, ...(now === undefined ? {} : { now }) });
  const lines = [...day.orders, ...day.faults].map(({ line }) => [line, open.orderOf(line).id] as const);
  return { day, orderIds: Object.fromEntries(lines) };
}
