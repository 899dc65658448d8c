import type { Account, Entry, Item, Unit } from './ledger.js';

/** What is moved, of one kind and lot. */
export interface Thing {
  readonly item: Item;
  readonly lot: string;
  readonly unit: Unit;
}

/** The two entries that take a quantity from one account to another; none where there is nothing to take. */
export const transfer = (from: Account, to: Account, thing: Thing, quantity: number): readonly Entry[] =>
  quantity === 0
    ? []
    : [
        { account: from, ...thing, quantity: -quantity },
        { account: to, ...thing, quantity },
      ];

/** Strings of one kind and lot. */
export interface StringOfLot {
  readonly stringKey: string;
  readonly lotId: string;
}

export const stringThing = ({ stringKey, lotId }: StringOfLot): Thing => ({
  item: `string/${stringKey}`,
  lot: lotId,
  unit: 'pieces',
});

/** Ball ends, envelopes and the like that work uses up: kept without lots. */
export interface Consumed {
  readonly item: `end/${string}` | `pack/${string}`;
  readonly binId: string;
  readonly count: number;
}

export const piecesOf = (item: Item): Thing => ({ item, lot: '', unit: 'pieces' });
