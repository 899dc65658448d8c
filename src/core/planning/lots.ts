import { byText, type CalendarDate, daysBetween, invariant } from '../foundation/index.js';
import type { ReorderNeed, StringShortage } from '../stock/index.js';
import type { Lot } from './plan.js';

export interface LotWishes {
  readonly shortages: readonly StringShortage[];
  readonly reorder: readonly ReorderNeed[];
  /** Bins are to be full again by then. */
  readonly binsFullBy: CalendarDate;
  /** Quantities are rounded up to a multiple of this many strings. */
  readonly lotSize: number;
  /** The recipe that makes a kind of string; undefined where the shop has none. */
  readonly recipeIdOf: (stringKey: string) => string | undefined;
  /** Wants of one kind join a lot when due at most so many days after its first; left out, all join. */
  readonly mergeWindowDays?: number;
  /** A lot is cut here, so that several machines can share it; rounded down to whole lot sizes, at least one. */
  readonly largestLot?: number;
}

export interface Lots {
  /** In the order of their due dates, then of the kinds' names. */
  readonly lots: readonly Lot[];
  /** Kinds that are wanted and that no recipe makes: nothing was planned for them. */
  readonly withoutRecipe: readonly string[];
}

/**
 * Turns what is short and what bins lack into lots: one lot a kind of string over all orders, unless due
 * dates lie further apart than the merge window or the lot grows too large. What rounding up makes too many
 * of serves the kind's next want before a new lot is opened, and a line that takes from a lot is named in
 * it. Bins come after orders. Due is the day the first of its lines is due.
 *
 * Law: the lots of a kind hold what is wanted of it and less than one lot size more.
 */
export function lotsFor(wishes: LotWishes): Lots {
  invariant(Number.isInteger(wishes.lotSize) && wishes.lotSize > 0, 'a lot size is a whole number from 1 up');
  const lots: Omit<Lot, 'id'>[] = [];
  const withoutRecipe: string[] = [];
  for (const [stringKey, wants] of wantsByKey(wishes)) {
    const recipeId = wishes.recipeIdOf(stringKey);
    if (recipeId === undefined) withoutRecipe.push(stringKey);
    else
      for (const { poured, lines, due } of pour(wants, wishes))
        lots.push({
          recipeId,
          stringKey,
          quantity: roundUp(poured, wishes.lotSize),
          orderLines: [...lines].sort((a, b) => a - b),
          due,
        });
  }
  const byDue = lots.sort((a, b) => byText(a.due, b.due) || byText(a.stringKey, b.stringKey));
  return { lots: byDue.map((lot, i) => ({ id: `lot-${i + 1}`, ...lot })), withoutRecipe };
}

interface Want {
  readonly count: number;
  readonly due: CalendarDate;
  /** Left out where it fills a bin. */
  readonly line?: number;
}

/** Wants of each kind: orders by due date and line, then the bins. */
function wantsByKey({ shortages, reorder, binsFullBy }: LotWishes): Map<string, Want[]> {
  const wants = new Map<string, Want[]>();
  const add = (key: string, want: Want): void => {
    if (want.count === 0) return;
    const ofKey = wants.get(key);
    if (ofKey) ofKey.push(want);
    else wants.set(key, [want]);
  };
  const dueFirst = [...shortages].sort((a, b) => byText(a.due, b.due) || a.line - b.line);
  for (const { stringKey, count, due, line } of dueFirst) add(stringKey, { count, due, line });
  for (const { stringKey, count } of reorder) add(stringKey, { count, due: binsFullBy });
  return wants;
}

interface OpenLot {
  readonly due: CalendarDate;
  readonly lines: Set<number>;
  poured: number;
}

/** Pours wants into lots one after the other, opening a new lot when the open one may take no more. */
function pour(wants: readonly Want[], wishes: LotWishes): OpenLot[] {
  const lots: OpenLot[] = [];
  for (const want of wants) {
    let left = want.count;
    while (left > 0) {
      let open = lots.at(-1);
      if (!open || room(open, want, wishes) <= 0) {
        open = { due: want.due, lines: new Set(), poured: 0 };
        lots.push(open);
      }
      const count = Math.min(left, room(open, want, wishes));
      open.poured += count;
      left -= count;
      if (want.line !== undefined) open.lines.add(want.line);
    }
  }
  return lots;
}

/** How many more strings of a want may join a lot; outside the window only those that rounding up adds anyway. */
function room(open: OpenLot, want: Want, { lotSize, mergeWindowDays, largestLot }: LotWishes): number {
  const largest = Math.max(lotSize, Math.floor((largestLot ?? Number.POSITIVE_INFINITY) / lotSize) * lotSize);
  const within =
    mergeWindowDays === undefined ||
    open.due === want.due ||
    daysBetween(open.due, want.due) <= mergeWindowDays;
  return (within ? largest : roundUp(open.poured, lotSize)) - open.poured;
}

const roundUp = (count: number, multiple: number): number => Math.ceil(count / multiple) * multiple;
