import type { BodyOf } from '../../../contract/index.js';
import { readStringKey } from '../../../core/sets/index.js';
import type { Bin, Lying, Order, Pack, Packing } from './packing-roll.js';

/* A small packing room to try the rules on. Ids of lots sort by age, as real ones do. */

const AT = '2026-04-14T08:00:00.000Z';
const kept = { version: 1, createdAt: AT, updatedAt: AT };

export const PLAIN_10 = '10 plain plain-steel ball 1000 mm';
export const PLAIN_13 = '13 plain plain-steel ball 1000 mm';
export const WOUND_26 = '26 wound nickel-plated-steel ball 1000 mm';
export const WOUND_26_LONG = '26 wound nickel-plated-steel ball 1250 mm';

const stringsOf = (keys: readonly string[]): BodyOf<'order'>['lines'][number]['strings'] =>
  keys.map((stringKey, at) => ({
    position: at + 1,
    spec: readStringKey(stringKey)!,
    stringKey,
    recipeId: 'recipe',
  }));

export const SET = [PLAIN_10, PLAIN_13, WOUND_26];

export const anOrder = (number: string, due: string, quantity = 1, keys: readonly string[] = SET): Order => ({
  ...kept,
  id: number,
  state: 'received',
  body: {
    number,
    player: 'Perrin Oddlestone',
    due,
    note: '',
    lines: [{ lineNumber: 1, kind: 'stock', setName: 'Evening three', quantity, strings: stringsOf(keys) }],
  },
});

export const aPack = (
  orderId: string,
  { copy = 1, picked = [] as Pack['body']['picked'], state = 'open', keys = SET as readonly string[] } = {},
): Pack => ({
  ...kept,
  id: `${orderId}/${copy}`,
  state,
  body: {
    orderId,
    lineNumber: 1,
    copy,
    labelCode: `TW1:${orderId}:1:${copy}`,
    setName: 'Evening three',
    wanted: stringsOf(keys),
    picked,
  },
});

export const aBin = (name: string, walkOrder: number): Bin => ({ id: name, name, walkOrder });

export const lying = (
  lot: string,
  bin: string,
  stringKey: string,
  count: number,
  state = 'released',
): Lying => ({
  binId: bin,
  lotId: lot,
  lot,
  state,
  stringKey,
  count,
});

/** Bins 1 to 4 along the walk; tens lie last, thirteens in two lots. */
export const aPacking = (changes: Partial<Packing> = {}): Packing => ({
  orders: [],
  packs: [],
  bins: [aBin('bin 1', 1), aBin('bin 2', 2), aBin('bin 3', 3), aBin('bin 4', 4)],
  lying: [
    lying('2026-04-02 lot 1', 'bin 1', PLAIN_13, 5),
    lying('2026-04-01 lot 7', 'bin 2', PLAIN_13, 1),
    lying('2026-04-03 lot 2', 'bin 3', WOUND_26, 2),
    lying('2026-04-01 lot 4', 'bin 4', PLAIN_10, 9),
  ],
  ...changes,
});
