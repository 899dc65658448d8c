import { letterAbout, letterOfCause } from '../../../demo/index.js';
import { addDays, daysBetween } from '../../core/foundation/index.js';
import { openPacks } from '../packing/open-packs.js';
import type { Order, Pack } from '../packing/packs-of-order.js';
import { pickString } from '../packing/pick-string.js';
import { sealPack } from '../packing/seal-pack.js';
import { shipOrder } from '../packing/ship-order.js';
import { voidPack } from '../packing/void-pack.js';
import type { Act, HistoryDay, InHand } from './act.js';
import { type HistoryBook, released, type ShopLot } from './history-book.js';

const FIRST_ORDER = 620;
const PACKED_DAYS_AHEAD = 6;
/** Of packs so many are given up and packed anew. Invented. */
const SPOILT_SHARE = 0.015;
const SPOILT = ['the bag tore', 'label printed askew', 'coffee on the envelope'] as const;

/** The packer goes through the orders that are due soon, and sends those for which everything lies there. */
export const actsOfPacking = (day: HistoryDay): readonly Act[] => [
  { minute: FIRST_ORDER, by: 'packer', work: (shop) => packWhatCan(shop, day) },
];

async function packWhatCan(shop: InHand, day: HistoryDay): Promise<void> {
  const { book } = day;
  for (const order of [...book.orders]) {
    if (order.body.due > addDays(day.date, PACKED_DAYS_AHEAD) || !liesThere(book, order)) continue;
    await packOrder(shop, day, order);
  }
}

/** Whether the shelf has every string that an order wants. */
export function liesThere(book: HistoryBook, { body }: Order): boolean {
  const needed = new Map<string, number>();
  for (const { quantity, strings } of body.lines)
    for (const { stringKey } of strings) needed.set(stringKey, (needed.get(stringKey) ?? 0) + quantity);
  return [...needed].every(
    ([key, count]) => released(book, key).reduce((sum, { left }) => sum + left, 0) >= count,
  );
}

/** Packs an order and sends it. */
export async function packOrder(shop: InHand, day: HistoryDay, seen: Order): Promise<void> {
  const { ask } = shop;
  const { order, packs } = await ask(openPacks, { orderId: seen.id, expectedVersion: seen.version });
  for (const opened of packs) {
    const isSpoilt = day.book.chance.next() < SPOILT_SHARE;
    const pack = isSpoilt ? await packInVain(shop, day, { order, pack: opened }) : opened;
    const { version } = await pickInto(shop, pack, (key) => takeOne(day, key, { pack, order }));
    await ask(sealPack, { packId: pack.id, expectedVersion: version });
  }
  await ask(shipOrder, { orderId: order.id, expectedVersion: order.version, partial: false });
  day.book.orders.splice(day.book.orders.indexOf(seen), 1);
}

/** Picks the first strings that a pack wants, all of them where no number is told. */
export async function pickInto(
  { ask }: InHand,
  pack: Pack,
  take: (stringKey: string) => ShopLot,
  strings = pack.body.wanted.length,
): Promise<Pack> {
  let picked = pack;
  for (const { position, stringKey } of pack.body.wanted.slice(0, strings)) {
    const { id: lotId, binId } = take(stringKey);
    const place = { position, lotId, binId };
    picked = await ask(pickString, { packId: pack.id, expectedVersion: picked.version, ...place });
  }
  return picked;
}

interface PackOfOrder {
  readonly order: Order;
  readonly pack: Pack;
}

/** A pack that is begun or even sealed, and given up: its strings lie in their bins again, and another takes its place. */
async function packInVain(shop: InHand, { book }: HistoryDay, { order, pack }: PackOfOrder): Promise<Pack> {
  const { ask } = shop;
  const { chance } = book;
  const taken: ShopLot[] = [];
  const take = (key: string): ShopLot => {
    const lot = nextLot(book, key);
    taken.push(lot);
    lot.left--;
    return lot;
  };
  const isSealed = chance.next() < 0.5;
  const picked = await pickInto(shop, pack, take, isSealed ? pack.body.wanted.length : 2);
  const seen = { packId: pack.id, expectedVersion: picked.version };
  const { version } = isSealed ? await ask(sealPack, seen) : picked;
  await ask(voidPack, { ...seen, expectedVersion: version, reason: chance.pick(SPOILT) });
  for (const lot of taken) lot.left++;
  const again = await ask(openPacks, { orderId: order.id, expectedVersion: order.version });
  const fresh = again.packs.at(-1);
  if (!fresh) throw new Error('a pack that was given up is opened anew');
  return fresh;
}

/** A string of the oldest lot. Whether it is one of the faulty ones that nobody found is chance. */
export function takeOne(
  { book, date }: HistoryDay,
  stringKey: string,
  { pack, order }: PackOfOrder,
): ShopLot {
  const lot = nextLot(book, stringKey);
  const { chance, causes } = book;
  const isFaulty = chance.next() < lot.faulty / lot.left;
  lot.left--;
  if (isFaulty) lot.faulty--;
  const { wear, badLot } = causes;
  const sent = {
    isFaulty,
    wireLots: lot.wireLots,
    wornM:
      lot.made?.machine === wear.machine ? wear.growthMPerDay * daysBetween(wear.from, lot.made.date) : 0,
    measuredLarge: lot.made?.measuredLarge ?? false,
    ...(lot.made ? { made: lot.made.date } : {}),
  };
  const letter =
    letterAbout(sent, { sent: date, badLot, chance }) ??
    letterOfCause(sent, { sent: date, badLot, chance: book.letterChance });
  if (letter) book.letters.push({ ...letter, packId: pack.id, lotId: lot.id, player: order.body.player });
  return lot;
}

function nextLot(book: HistoryBook, stringKey: string): ShopLot {
  const [lot] = released(book, stringKey);
  if (!lot) throw new Error(`the packer of the history looked for ${stringKey} and found none`);
  return lot;
}
