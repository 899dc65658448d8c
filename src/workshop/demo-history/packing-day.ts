import { letterAbout } from '../../../demo/index.js';
import { addDays } from '../../core/foundation/index.js';
import { openPacks } from '../packing/open-packs.js';
import type { Order, Pack } from '../packing/packs-of-order.js';
import { pickString } from '../packing/pick-string.js';
import { sealPack } from '../packing/seal-pack.js';
import { shipOrder } from '../packing/ship-order.js';
import type { Act, HistoryDay, InHand } from './act.js';
import { type HistoryBook, released, type ShopLot } from './history-book.js';

const FIRST_ORDER = 620;
const PACKED_DAYS_AHEAD = 6;

/** The packer goes through the orders that are due soon, and sends those for which everything lies there. */
export const actsOfPacking = (day: HistoryDay): readonly Act[] => [
  { minute: FIRST_ORDER, by: 'packer', work: (shop) => packWhatCan(shop, day) },
];

async function packWhatCan(shop: InHand, day: HistoryDay): Promise<void> {
  const { book } = day;
  for (const order of [...book.orders]) {
    if (order.body.due > addDays(day.date, PACKED_DAYS_AHEAD) || !liesThere(book, order)) continue;
    await packOrder(shop, day, order);
    book.orders.splice(book.orders.indexOf(order), 1);
  }
}

function liesThere(book: HistoryBook, { body }: Order): boolean {
  const needed = new Map<string, number>();
  for (const { quantity, strings } of body.lines)
    for (const { stringKey } of strings) needed.set(stringKey, (needed.get(stringKey) ?? 0) + quantity);
  return [...needed].every(
    ([key, count]) => released(book, key).reduce((sum, { left }) => sum + left, 0) >= count,
  );
}

async function packOrder({ ask }: InHand, day: HistoryDay, seen: Order): Promise<void> {
  const opened = await ask(openPacks, { orderId: seen.id, expectedVersion: seen.version });
  for (const { id, version, body } of opened.packs) {
    let expectedVersion = version;
    for (const { position, stringKey } of body.wanted) {
      const lot = takeOne(day, stringKey, { id, player: seen.body.player });
      const picked = await ask(pickString, {
        packId: id,
        expectedVersion,
        position,
        lotId: lot.id,
        binId: lot.binId,
      });
      expectedVersion = picked.version;
    }
    await ask(sealPack, { packId: id, expectedVersion });
  }
  const { id: orderId, version } = opened.order;
  await ask(shipOrder, { orderId, expectedVersion: version, partial: false });
}

/** A string of the oldest lot. Whether it is one of the faulty ones that nobody found is chance. */
function takeOne(
  { book, date }: HistoryDay,
  stringKey: string,
  pack: Pick<Pack, 'id'> & { readonly player: string },
): ShopLot {
  const [lot] = released(book, stringKey);
  if (!lot) throw new Error(`the packer of the history looked for ${stringKey} and found none`);
  const { chance, causes } = book;
  const isFaulty = chance.next() < lot.faulty / lot.left;
  lot.left--;
  if (isFaulty) lot.faulty--;
  const sent = { isFaulty, wireLots: lot.wireLots };
  const letter = letterAbout(sent, { sent: date, badLot: causes.badLot, chance });
  if (letter) book.letters.push({ ...letter, packId: pack.id, lotId: lot.id, player: pack.player });
  return lot;
}
