import type { LetterToCome, PlantedCauses } from '../../../demo/index.js';
import type { Shop } from '../../core/day/index.js';
import type { CalendarDate, Chance } from '../../core/foundation/index.js';
import type { StringSpec } from '../../core/sets/index.js';
import type { StringWork } from '../../core/winding/index.js';
import type { Order } from '../packing/packs-of-order.js';

/** What the people of the history know as they go, and what is truly so. The store alone has the records. */
export interface HistoryBook {
  readonly shop: Shop;
  readonly causes: PlantedCauses;
  readonly chance: Chance;
  readonly newId: () => string;
  /** Ids of records by the names that the shop's file has for them. */
  readonly ids: Readonly<Record<'wire' | 'machine' | 'recipe', (name: string) => string>>;
  /** The bin of a kind of string; that for new strings where a kind has none of its own. */
  readonly binOf: (stringKey: string) => string;
  /** How many strings of a kind are kept ready; 0 of those made to order. */
  readonly levelOf: (stringKey: string) => number;
  /** Kinds that have a bin. */
  readonly kinds: ReadonlyMap<string, StringSpec>;
  readonly recipes: Map<string, RecipeOnTrial>;
  readonly spools: ShopSpool[];
  /** Lots of which something is left, by kind, the oldest first. */
  readonly lots: Map<string, ShopLot[]>;
  /** What making a kind on a machine takes, once it was worked out. */
  readonly works: Map<string, StringWork | undefined>;
  /** Open orders, those due first before the others. */
  readonly orders: Order[];
  readonly letters: (LetterToCome & {
    readonly packId: string;
    readonly lotId: string;
    readonly player: string;
  })[];
  readonly complaints: OpenComplaint[];
  /** Counts what is numbered through: orders, spools, runs of a day. */
  readonly count: { orders: number; spools: number; runsToday: number };
}

export interface RecipeOnTrial {
  readonly name: string;
  version: number;
  state: string;
  runs: number;
}

export interface ShopSpool {
  readonly id: string;
  readonly wire: string;
  /** The maker's. */
  readonly lot: string;
  readonly tareKg: number;
  bookMg: number;
  /** What is truly on it. */
  trueMg: number;
  /** At the last weighing. */
  grossKg: number;
  machine: string | undefined;
}

export interface ShopLot {
  readonly id: string;
  readonly name: string;
  readonly stringKey: string;
  readonly binId: string;
  /** Of the wire in it. */
  readonly wireLots: readonly string[];
  version: number;
  state: 'in-check' | 'released' | 'on-hold' | 'scrapped';
  left: number;
  /** Faulty strings among those left. */
  faulty: number;
  /** What the coiler will find. */
  readonly toFind: readonly { readonly reason: string; readonly count: number }[];
  /** Why it ought to be held, where the winder's check says so. */
  readonly doubt?: string;
  /** The first day on which somebody looks at it again. */
  lookAgain: CalendarDate;
}

export interface OpenComplaint {
  readonly id: string;
  version: number;
  state: 'open' | 'answered';
  next: CalendarDate;
}

export const allLots = ({ lots }: HistoryBook): readonly ShopLot[] => [...lots.values()].flat();

export function keepLot({ lots }: HistoryBook, lot: ShopLot): void {
  lots.set(lot.stringKey, [...(lots.get(lot.stringKey) ?? []), lot]);
}

/** Strings of a kind in the shop, whether they may be packed or not. */
export const onHand = ({ lots }: HistoryBook, stringKey: string): number =>
  (lots.get(stringKey) ?? []).reduce((sum, { left }) => sum + left, 0);

/** Lots of a kind that the packer may take from. */
export const released = ({ lots }: HistoryBook, stringKey: string): readonly ShopLot[] =>
  (lots.get(stringKey) ?? []).filter(({ state, left }) => state === 'released' && left > 0);

/** Lots of which nothing is left are nobody's business any more. */
export function forgetEmptyLots({ lots }: HistoryBook): void {
  for (const [key, ofKind] of lots)
    lots.set(
      key,
      ofKind.filter(({ left }) => left > 0),
    );
}
