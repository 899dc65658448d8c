import { type Day, workOutResolved } from '../../core/day/index.js';
import { type CalendarDate, invariant } from '../../core/foundation/index.js';
import { type StringSpec, stringKey } from '../../core/sets/index.js';
import type { ReadTransaction } from '../../store/index.js';
import { localClock } from '../local-clock.js';
import { type ShopBook, shopBook } from '../shop/shop-book.js';
import { type OpenOrders, openOrders } from './open-orders.js';
import { runsUnderWay } from './runs-under-way.js';
import { stringsInCheck } from './strings-in-check.js';

/** A day's work as the shop's records have it, and the way back from its names to the records. */
export interface DayOfShop {
  readonly day: Day;
  readonly book: ShopBook;
  readonly open: OpenOrders;
  /** The string of every kind that the day plans: one that an order wants or a bin is kept filled with. */
  readonly specOf: (stringKey: string) => StringSpec;
}

/**
 * A day worked out from the records: what open orders and bins want beyond what lies on the shelf, waits to be
 * released or comes from runs that are planned or begun; on machines that have those runs to end first, of wire that
 * they leave over. `now` tells how far runs come until the day begins; where left out they begin with it.
 */
export async function dayOfShop(
  tx: ReadTransaction,
  { date, now }: { readonly date: CalendarDate; readonly now?: string },
): Promise<DayOfShop> {
  const book = await shopBook(tx);
  const { shop } = book;
  const open = await openOrders(tx, book);
  const inCheck = await stringsInCheck(tx);
  const underWay = await runsUnderWay(tx, book);
  const day = workOutResolved({
    shop,
    date,
    orders: open.orders,
    faults: open.faults,
    inCheck,
    underWay,
    ...(now === undefined ? {} : { now: localClock(now) }),
  });
  const specs = new Map(
    [...shop.strings, ...inCheck, ...underWay, ...open.orders.flatMap(({ strings }) => strings)].map(
      ({ spec }) => [stringKey(spec), spec],
    ),
  );
  const specOf = (key: string): StringSpec => {
    const spec = specs.get(key);
    invariant(spec, `the kind of string "${key}" is wanted by an order or a bin`);
    return spec;
  };
  return { day, book, open, specOf };
}
