import Type, { type Static } from 'typebox';
import type { Day, Shop } from '../../core/day/index.js';
import { id, instant } from '../records/bodies.js';
import { RECORD_KINDS } from '../records/record-kinds.js';
import { recordSchema } from '../records/record-schema.js';
import { closed, date, oneOf, text } from '../schemas/pieces.js';

/** The shop as the core works with it, and the records behind the names that it uses. */
export interface ShopView {
  readonly shop: Shop;
  readonly ids: {
    readonly wires: Ids;
    readonly machines: Ids;
    readonly recipes: Ids;
    readonly bins: Ids;
    readonly sets: Ids;
  };
  /** Who works here, by id: whoever did something is named by it. */
  readonly people: Readonly<Record<string, string>>;
}

/** A name of the core to the id of its record. */
export type Ids = Readonly<Record<string, string>>;

/** A day's work as it would be if it were planned at this moment, and the orders behind its lines. */
export interface DayView {
  readonly day: Day;
  /** Line of the day to the id of the order. */
  readonly orderIds: Readonly<Record<number, string>>;
}

// Both hold what the schemas of a shop's file and of a day say; checking all of it again on its way out would cost more than making it.
export const shopViewAnswer = Type.Unsafe<ShopView>({
  type: 'object',
  required: ['shop', 'ids', 'people'],
  description: '`shop` as `tautwork schema shop` has it; `ids` from its names to the records; `people` by id',
});
export const dayViewAnswer = Type.Unsafe<DayView>({
  type: 'object',
  required: ['day', 'orderIds'],
  description: '`day` as `tautwork schema day` has it; `orderIds` from its lines to the orders',
});
export const dayViewQuery = closed({ date: Type.Optional(date) });

export const nowAnswer = closed({
  now: instant,
  today: Type.Unsafe<Day['date']>(date),
  shop: Type.String({ description: 'its name; empty where nothing is settled yet' }),
  invented: Type.Boolean(),
});

/** Of one moment, so that what is counted fits together. */
const lyingStrings = closed({
  binId: id,
  lotId: id,
  lot: text(),
  state: text('of the lot: only released ones may be packed'),
  holdReason: Type.Optional(text()),
  stringKey: text(),
  count: Type.Integer({ description: 'strings by the books' }),
});
export type LyingStrings = Static<typeof lyingStrings>;

/** What lies in the bins, lot by lot, whether it may be packed or not. */
export const stringsLyingAnswer = closed({ items: Type.Array(lyingStrings) });
export const stringsLyingQuery = closed({});

export const packingRollAnswer = closed({
  orders: Type.Array(recordSchema('order'), { description: 'received or being packed' }),
  packs: Type.Array(recordSchema('pack'), { description: 'of those orders, but for the void ones' }),
  bins: Type.Array(
    closed({
      id,
      name: text(),
      walkOrder: Type.Number(),
      stringKey: Type.Optional(text('what it is for')),
    }),
  ),
  lying: Type.Array(lyingStrings),
});

const kinds = Object.keys(RECORD_KINDS) as (keyof typeof RECORD_KINDS)[];

/** What a search finds: a record, with the words by which a person knows it again. */
export const searchAnswer = closed({
  hits: Type.Array(
    closed({
      kind: oneOf(kinds),
      id,
      name: text(),
      about: Type.String(),
      state: Type.String(),
    }),
  ),
});
export const searchQuery = closed({
  text: Type.String({ minLength: 1, maxLength: 200, description: 'part of a name, number, lot or player' }),
});
