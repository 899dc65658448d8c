import { DEMO_DATE, PLANTED_CAUSES, type PlantedCauses, workingDays } from '../../demo/index.js';
import type { Shop } from '../core/day/index.js';
import { addDays, type CalendarDate, seededChance } from '../core/foundation/index.js';
import type { Store } from '../store/index.js';
import { demoShop } from './demo.js';
import type { Act, HistoryDay, InHand } from './demo-history/act.js';
import { begin } from './demo-history/begin.js';
import { actsOfChecking } from './demo-history/checking-day.js';
import { actsAtDesk } from './demo-history/desk-day.js';
import { actsOnEve } from './demo-history/eve-of-last-day.js';
import { type Hands, hands } from './demo-history/hands.js';
import { fadeUse, forgetEmptyLots, type HistoryBook } from './demo-history/history-book.js';
import { liveLastDay } from './demo-history/last-day.js';
import { actsOfPacking } from './demo-history/packing-day.js';
import { actsOfRequests } from './demo-history/requests.js';
import { actsOfStockTaking } from './demo-history/stock-taking.js';
import { actsOfMoving } from './demo-history/string-moves.js';
import { actsOfWinding } from './demo-history/winding-day.js';
import { type Ask, performMany } from './perform.js';
import type { WorkshopFault } from './use-case.js';

export interface DemoHistoryWish {
  /** The same seed gives the same history, to the last id. */
  readonly seed?: number;
  readonly from?: CalendarDate;
  /** The day that still goes on when the history ends. */
  readonly until?: CalendarDate;
  /** Only so many days before the last one, those included on which the shop is shut; `from` does not matter then. */
  readonly days?: number;
  /** The shop as it stands when its records begin; the invented workshop of this package where left out. */
  readonly shop?: Shop;
  readonly causes?: PlantedCauses;
  /** Told how far the history is, from 0 to 1, and at which day. */
  readonly onProgress?: (share: number, date: CalendarDate) => void;
}

export const DEMO_HISTORY = {
  seed: 20_260_303,
  from: '2026-03-02' as CalendarDate,
  until: DEMO_DATE,
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
 * through the use cases that people ask. The last day ends at eleven in the morning, with everything under way. What a use
 * case refuses is a fault of the history, and thrown.
 */
export async function loadDemoHistory(
  store: Store,
  wish: DemoHistoryWish = {},
): Promise<DemoHistoryTold | ShopNotEmpty> {
  const table = await store.read(fullTable);
  if (table !== undefined) return { code: 'demo.shop-not-empty', table };
  const { seed, until, causes = PLANTED_CAUSES, onProgress } = { ...DEMO_HISTORY, ...wish };
  const from = wish.days === undefined ? (wish.from ?? DEMO_HISTORY.from) : addDays(until, -wish.days);
  const days = workingDays(from, until);
  const chance = seededChance(seed);
  const hand = hands(seededChance(seed + 1));
  const letterChance = seededChance(seed + 2);
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
  const book = await inOne(({ ask, tx }) =>
    begin(ask, tx, {
      shop,
      causes,
      chance,
      chanceOfEnds: seededChance(seed + 3),
      letterChance,
      hands: hand,
    }),
  );
  for (const [at, date] of days.entries()) {
    onProgress?.(at / days.length, date);
    const day = { date, book };
    startDay(book);
    await inOne((inHand) => {
      const live = (acts: readonly Act[]) => doInTurn(inHand, { day, hand }, acts);
      if (at === days.length - 1) return liveLastDay(day, live);
      return live([...actsOfDay(day), ...(at === days.length - 2 ? actsOnEve(day) : [])]);
    });
  }
  return { days: days.length, asked };
}

const EVENING_BEFORE = 60;

const actsOfDay = (day: HistoryDay): readonly Act[] => [
  ...actsAtDesk(day),
  ...actsOfRequests(day),
  ...actsOfWinding(day),
  ...actsOfChecking(day),
  ...actsOfPacking(day),
  ...actsOfMoving(day),
  ...actsOfStockTaking(day),
];

async function doInTurn(
  shop: InHand,
  { day, hand }: { readonly day: HistoryDay; readonly hand: Hands },
  acts: readonly Act[],
): Promise<void> {
  for (const { minute, by, work } of [...acts].sort((a, b) => a.minute - b.minute)) {
    hand.take(by, day.date, minute);
    await work(shop);
  }
}

function startDay(book: HistoryBook): void {
  forgetEmptyLots(book);
  fadeUse(book);
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
