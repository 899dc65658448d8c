import { PLANTED_CAUSES, type PlantedCauses, workingDays } from '../../demo/index.js';
import type { Shop } from '../core/day/index.js';
import { type CalendarDate, seededChance } from '../core/foundation/index.js';
import type { Store } from '../store/index.js';
import { demoShop } from './demo.js';
import type { Act, HistoryDay, InHand } from './demo-history/act.js';
import { begin } from './demo-history/begin.js';
import { actsOfChecking } from './demo-history/checking-day.js';
import { actsAtDesk } from './demo-history/desk-day.js';
import { type Hands, hands } from './demo-history/hands.js';
import { forgetEmptyLots, type HistoryBook } from './demo-history/history-book.js';
import { actsOfPacking } from './demo-history/packing-day.js';
import { actsOfStockTaking } from './demo-history/stock-taking.js';
import { actsOfWinding } from './demo-history/winding-day.js';
import { type Ask, performMany } from './perform.js';
import type { WorkshopFault } from './use-case.js';

export interface DemoHistoryWish {
  /** The same seed gives the same history, to the last id. */
  readonly seed?: number;
  readonly from?: CalendarDate;
  /** The last day, included. */
  readonly until?: CalendarDate;
  /** The shop as it stands when its records begin; the invented workshop of this package where left out. */
  readonly shop?: Shop;
  readonly causes?: PlantedCauses;
  /** Told how far the history is, from 0 to 1, and at which day. */
  readonly onProgress?: (share: number, date: CalendarDate) => void;
}

export const DEMO_HISTORY = {
  seed: 20_260_302,
  from: '2026-03-02' as CalendarDate,
  until: '2027-02-26' as CalendarDate,
} as const;

/** What stands in a shop that is not empty. */
export interface ShopNotEmpty {
  readonly code: 'demo.shop-not-empty';
  readonly table: string;
}

export interface DemoHistoryTold {
  readonly days: number;
  /** Use cases asked. */
  readonly asked: number;
}

/**
 * Loads the invented workshop and its past into an empty store, day by day and each day in one transaction,
 * through the use cases that people ask. What a use case refuses is a fault of the history, and thrown.
 */
export async function loadDemoHistory(
  store: Store,
  wish: DemoHistoryWish = {},
): Promise<DemoHistoryTold | ShopNotEmpty> {
  const table = await store.read(fullTable);
  if (table !== undefined) return { code: 'demo.shop-not-empty', table };
  const { seed, from, until, causes = PLANTED_CAUSES, onProgress } = { ...DEMO_HISTORY, ...wish };
  const days = workingDays(from, until);
  const chance = seededChance(seed);
  const hand = hands(seededChance(seed + 1));
  const shop = wish.shop ?? (await demoShop());
  let asked = 0;
  const inOne = <T>(work: (shop: InHand) => Promise<T>): Promise<T> =>
    done(
      performMany(store, hand, (ask, tx) => {
        const counted: Ask = (...question) => {
          asked++;
          return ask(...question);
        };
        return work({ ask: counted, tx });
      }),
    );
  hand.take('console', from, EVENING_BEFORE);
  const book = await inOne(({ ask, tx }) => begin(ask, tx, { shop, causes, chance, hands: hand }));
  for (const [at, date] of days.entries()) {
    onProgress?.(at / days.length, date);
    await inOne((inHand) => liveDay(inHand, { date, book }, hand));
  }
  return { days: days.length, asked };
}

const EVENING_BEFORE = 60;

async function liveDay(shop: InHand, day: HistoryDay, hand: Hands): Promise<void> {
  startDay(day.book);
  const acts: readonly Act[] = [
    ...actsAtDesk(day),
    ...actsOfWinding(day),
    ...actsOfChecking(day),
    ...actsOfPacking(day),
    ...actsOfStockTaking(day),
  ];
  for (const { minute, by, work } of [...acts].sort((a, b) => a.minute - b.minute)) {
    hand.take(by, day.date, minute);
    await work(shop);
  }
}

function startDay(book: HistoryBook): void {
  forgetEmptyLots(book);
  book.count.runsToday = 0;
}

async function done<T>(
  work: Promise<
    { readonly ok: true; readonly value: T } | { readonly ok: false; readonly fault: WorkshopFault }
  >,
): Promise<T> {
  const result = await work;
  if (!result.ok) throw new Error(`the demo's history was refused: ${JSON.stringify(result.fault)}`);
  return result.value;
}

async function fullTable({
  tables,
}: Parameters<Parameters<Store['read']>[0]>[0]): Promise<string | undefined> {
  for (const table of tables.names) {
    const { items } = await tables.rows(table, { limit: 1 });
    if (items.length > 0) return table;
  }
  return undefined;
}
