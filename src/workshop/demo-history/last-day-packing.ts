import { openPacks } from '../packing/open-packs.js';
import type { Order } from '../packing/packs-of-order.js';
import { sealPack } from '../packing/seal-pack.js';
import type { HistoryDay, InHand } from './act.js';
import { liesThere, packOrder, pickInto, takeOne } from './packing-day.js';

const WHOLE_ORDERS = 2;
const BEGUN_ORDERS = 2;
/** Strings that are in the pack which the packer has in hand. */
const PICKED = 3;

/** By eleven two orders are on their way; of those that press most the packs lie open, and some hold strings. */
export async function packSome(shop: InHand, day: HistoryDay): Promise<void> {
  const { book } = day;
  const begun: Order[] = [];
  for (const order of [...book.orders]) {
    if (begun.length === BEGUN_ORDERS) break;
    if (!liesThere(book, order)) continue;
    begun.push(order);
    await begin(shop, day, order);
  }
  let sent = 0;
  for (const order of book.orders.filter((each) => !begun.includes(each))) {
    if (sent === WHOLE_ORDERS) break;
    if (!liesThere(book, order)) continue;
    sent++;
    await packOrder(shop, day, order);
  }
}

/** All packs of an order are open; where there are several the first is sealed, and the next is begun. */
async function begin(shop: InHand, day: HistoryDay, seen: Order): Promise<void> {
  const { ask } = shop;
  const { order, packs } = await ask(openPacks, { orderId: seen.id, expectedVersion: seen.version });
  const [first, second] = packs;
  if (first && second) {
    const { version } = await pickInto(shop, first, (key) => takeOne(day, key, { pack: first, order }));
    await ask(sealPack, { packId: first.id, expectedVersion: version });
  }
  const inHand = second ?? first;
  if (inHand) await pickInto(shop, inHand, (key) => takeOne(day, key, { pack: inHand, order }), PICKED);
}
