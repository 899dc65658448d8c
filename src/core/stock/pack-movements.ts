import { invariant } from '../foundation/index.js';
import type { Balance, Entry, Movement } from './ledger.js';
import { type Consumed, piecesOf, type StringOfLot, stringThing, transfer } from './ledger-transfer.js';

/** A string in hand: which, from or to which bin, for which pack of which order. */
export interface StringInHand {
  readonly string: StringOfLot;
  readonly binId: string;
  readonly orderId: string;
  readonly packId: string;
}

/** A string taken for an order: bin -> order. */
export const pickString = ({ string, binId, orderId, packId }: StringInHand): Movement => ({
  what: 'pick',
  reason: '',
  ofKind: 'pack',
  ofId: packId,
  entries: transfer(`bin/${binId}`, `order/${orderId}`, stringThing(string), 1),
});

/** A string laid back: order -> bin. */
export const unpickString = ({ string, binId, orderId, packId }: StringInHand): Movement => ({
  what: 'unpick',
  reason: '',
  ofKind: 'pack',
  ofId: packId,
  entries: transfer(`order/${orderId}`, `bin/${binId}`, stringThing(string), 1),
});

/** The bag is closed: its strings go order -> pack, the set made -> pack, envelope and the like bin -> pack. */
export function sealPack({
  packId,
  orderId,
  setName,
  strings,
  consumed = [],
}: {
  readonly packId: string;
  readonly orderId: string;
  readonly setName: string;
  /** One for each position. */
  readonly strings: readonly StringOfLot[];
  readonly consumed?: readonly Consumed[];
}): Movement {
  invariant(strings.length > 0, 'a pack has at least one string in it');
  const entries = [
    ...strings.flatMap((string) => transfer(`order/${orderId}`, `pack/${packId}`, stringThing(string), 1)),
    ...transfer('made', `pack/${packId}`, piecesOf(`set/${setName}`), 1),
    ...consumed.flatMap(({ item, binId, count }) =>
      transfer(`bin/${binId}`, `pack/${packId}`, piecesOf(item), count),
    ),
  ];
  return { what: 'seal', reason: '', ofKind: 'pack', ofId: packId, entries };
}

/** What a pack's account holds. */
export interface PackBook {
  readonly packId: string;
  readonly holds: readonly Balance[];
}

/**
 * A sealed pack is taken apart: its strings go back to bins, the set is no more (pack -> made), and what it
 * was wrapped in is scrap.
 */
export function voidPack({
  packId,
  holds,
  back,
  reason,
}: PackBook & {
  /** Where each string of it goes. */
  readonly back: readonly { readonly string: StringOfLot; readonly binId: string }[];
  readonly reason: string;
}): Movement {
  const held = holds.reduce((sum, one) => sum + (one.item.startsWith('string/') ? one.quantity : 0), 0);
  invariant(held === back.length, `the pack holds ${held} strings, ${back.length} go back`);
  const entries = [
    ...back.flatMap(({ string, binId }) =>
      transfer(`pack/${packId}`, `bin/${binId}`, stringThing(string), 1),
    ),
    ...holds.flatMap((one) => rest(packId, one)),
  ];
  return { what: 'void', reason, ofKind: 'pack', ofId: packId, entries };
}

function rest(packId: string, { item, lot, unit, quantity }: Balance): readonly Entry[] {
  if (item.startsWith('string/')) return [];
  const to = item.startsWith('set/') ? 'made' : 'scrap/pack-voided';
  return transfer(`pack/${packId}`, to, { item, lot, unit }, quantity);
}

/** The pack leaves the shop: all that it holds goes pack -> customer. */
export function shipPack({ packId, holds }: PackBook): Movement {
  invariant(holds.length > 0, 'an empty pack is not shipped');
  const entries = holds.flatMap(({ item, lot, unit, quantity }) =>
    transfer(`pack/${packId}`, 'customer', { item, lot, unit }, quantity),
  );
  return { what: 'ship', reason: '', ofKind: 'pack', ofId: packId, entries };
}
