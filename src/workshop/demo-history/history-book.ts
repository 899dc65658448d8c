import type { LetterToCome, PlantedCauses } from '../../../demo/index.js';
import type { Shop } from '../../core/day/index.js';
import type { CalendarDate, Chance } from '../../core/foundation/index.js';
import type { PlayerRequest } from '../../core/orders/index.js';
import type { StringSpec } from '../../core/sets/index.js';
import type { Caution, StringWork } from '../../core/winding/index.js';
import type { Order } from '../packing/packs-of-order.js';

/** What the people of the history know as they go, and what is truly so. The store alone has the records. */
export interface HistoryBook {
  readonly shop: Shop;
  readonly causes: PlantedCauses;
  readonly chance: Chance;
  /** For letters that come of a cause: more or fewer of them change nothing else in the year. */
  readonly letterChance: Chance;
  readonly newId: () => string;
  /** Of the bench's checks of ends: a chance of their own, so that nothing else of the past hangs on them. */
  readonly ends: { readonly chance: Chance; pulled: number; coresOfRuns: number };
  /** Ids of records by the names that the shop's file has for them. */
  readonly ids: Readonly<Record<'wire' | 'machine' | 'recipe', (name: string) => string>>;
  /** The bin of a kind of string; that for new strings where a kind has none of its own. */
  readonly binOf: (stringKey: string) => string;
  /** How many strings of a kind are kept ready; 0 of those made to order. */
  readonly levelOf: (stringKey: string) => number;
  /** Where lots go when their own bin is full. */
  readonly upperShelf: string;
  /** Kinds that have a bin. */
  readonly kinds: ReadonlyMap<string, StringSpec>;
  readonly recipes: Map<string, RecipeOnTrial>;
  readonly spools: ShopSpool[];
  /** Wire that runs took, by its name; what was taken lately counts most. */
  readonly usedMg: Map<string, number>;
  /** Lots of which something is left, by kind, the oldest first. */
  readonly lots: Map<string, ShopLot[]>;
  /** What making a kind on a machine takes, once it was worked out. */
  readonly works: Map<string, StringWork | undefined>;
  /** Cautions that the winder of a machine has acknowledged there, by the file's name of the machine. */
  readonly cautionsRead: Map<string, readonly Caution[]>;
  /** Open orders, those due first before the others. */
  readonly orders: Order[];
  readonly letters: (LetterToCome & {
    readonly packId: string;
    readonly lotId: string;
    readonly player: string;
  })[];
  readonly complaints: OpenComplaint[];
  /** Those that were answered and are not settled. */
  readonly requests: OpenRequest[];
  /** Counts what is numbered through. */
  readonly count: {
    orders: number;
    ordersByHand: number;
    ordersOfRequests: number;
    requests: number;
    spools: number;
    runsToday: number;
  };
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
  binId: string;
  /** Of the wire in it. */
  readonly wireLots: readonly string[];
  /** The machine's short name, and the day; left out of what lay there before. */
  readonly made?: { readonly machine: string; readonly date: CalendarDate; readonly measuredLarge: boolean };
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

export interface OpenRequest {
  readonly id: string;
  readonly asked: { readonly player: string; readonly letter: string; readonly quantity: number };
  readonly request: PlayerRequest;
  version: number;
  /** When the player makes up their mind. */
  readonly next: CalendarDate;
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

/** Of a use so much counts a working day later: half of it a fortnight on. */
const STILL_COUNTS = 0.933;

/** What wire was used for weeks ago tells little of what it is used for now. */
export function fadeUse({ usedMg }: HistoryBook): void {
  for (const [wire, mg] of usedMg) usedMg.set(wire, mg * STILL_COUNTS);
}

/** Lots of which nothing is left are nobody's business any more. */
export function forgetEmptyLots({ lots }: HistoryBook): void {
  for (const [key, ofKind] of lots)
    lots.set(
      key,
      ofKind.filter(({ left }) => left > 0),
    );
}
