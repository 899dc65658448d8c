import { byText, type CalendarDate, grouped, invariant } from '../foundation/index.js';
import { stringKey } from '../sets/index.js';
import type { StringStock } from './stock.js';

/** Strings of one kind that an order line wants. */
export interface StringDemand {
  /** Line of the orders file. */
  readonly line: number;
  readonly stringKey: string;
  readonly count: number;
  readonly due: CalendarDate;
}

/** Strings that a line takes from one lot in one bin. */
export interface StringTake {
  readonly line: number;
  readonly stringKey: string;
  readonly binId: string;
  readonly lot: string;
  readonly count: number;
}

/** What the shelf could not give a line: a demand for new strings. */
export type StringShortage = StringDemand;

export interface Allocation {
  readonly takes: readonly StringTake[];
  /** At most one for a line and kind of string. */
  readonly shortages: readonly StringShortage[];
  /** The shelf as it stands after the takes, rows in the order they came, empty ones included. */
  readonly left: readonly StringStock[];
}

/**
 * Gives the strings on the shelf to the lines that want them: the line due first is served first, of lines
 * due the same day the one that stands earlier in the file; from each kind the oldest lot goes first, lots
 * told apart by their text, then by bin. A line may be served in part.
 *
 * Laws: for every kind, taken + left = on shelf and taken + short = wanted; no count is ever negative.
 */
export function allocate({
  demands,
  strings,
}: {
  readonly demands: readonly StringDemand[];
  readonly strings: readonly StringStock[];
}): Allocation {
  const shelf = strings.map((stock) => ({
    stock,
    key: stringKey(stock.spec),
    left: wholeCount(stock.count),
  }));
  const rowsByKey = grouped(shelf, (row) => row.key);
  for (const rows of rowsByKey.values()) rows.sort((a, b) => oldestFirst(a.stock, b.stock));

  const takes: StringTake[] = [];
  const shortages: StringShortage[] = [];
  for (const demand of oneALineAndKey(demands).sort(dueFirst)) {
    const { line, stringKey: key } = demand;
    let missing = demand.count;
    for (const row of rowsByKey.get(key) ?? []) {
      const count = Math.min(row.left, missing);
      if (count === 0) continue;
      row.left -= count;
      missing -= count;
      takes.push({ line, stringKey: key, binId: row.stock.binId, lot: row.stock.lot, count });
    }
    if (missing > 0) shortages.push({ ...demand, count: missing });
  }
  return { takes, shortages, left: shelf.map(({ stock, left }) => ({ ...stock, count: left })) };
}

/** A twelve-string set wants one kind twice: such wishes of a line are added up, the earliest due kept. */
function oneALineAndKey(demands: readonly StringDemand[]): StringDemand[] {
  const lines = new Map<number, Map<string, StringDemand>>();
  for (const demand of demands) {
    if (wholeCount(demand.count) === 0) continue;
    const ofLine = lines.get(demand.line) ?? new Map<string, StringDemand>();
    const before = ofLine.get(demand.stringKey);
    ofLine.set(demand.stringKey, before ? joined(before, demand) : demand);
    lines.set(demand.line, ofLine);
  }
  return [...lines.values()].flatMap((ofLine) => [...ofLine.values()]);
}

const joined = (a: StringDemand, b: StringDemand): StringDemand => ({
  ...a,
  count: a.count + b.count,
  due: byText(a.due, b.due) <= 0 ? a.due : b.due,
});

const dueFirst = (a: StringDemand, b: StringDemand): number =>
  byText(a.due, b.due) || a.line - b.line || byText(a.stringKey, b.stringKey);

const oldestFirst = (a: StringStock, b: StringStock): number =>
  byText(a.lot, b.lot) || byText(a.binId, b.binId);

function wholeCount(count: number): number {
  invariant(Number.isInteger(count) && count >= 0, `a count of strings is a whole number, not ${count}`);
  return count;
}
