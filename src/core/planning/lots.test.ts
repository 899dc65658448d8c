import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addDays, type CalendarDate, calendarDate, daysBetween } from '../foundation/index.js';
import type { StringShortage } from '../stock/index.js';
import { type LotWishes, lotsFor } from './lots.js';

const FIRST = calendarDate('2026-03-02') as CalendarDate;
const short = (line: number, stringKey: string, count: number, day = 0): StringShortage => ({
  line,
  stringKey,
  count,
  due: addDays(FIRST, day),
});
const wishes = (parts: Partial<LotWishes>): LotWishes => ({
  shortages: [],
  reorder: [],
  binsFullBy: addDays(FIRST, 10),
  lotSize: 24,
  recipeIdOf: (key) => `recipe of ${key}`,
  ...parts,
});
const quantities = (parts: Partial<LotWishes>) => lotsFor(wishes(parts)).lots.map((lot) => lot.quantity);

describe('lots from what is short', () => {
  it('one lot a kind over all orders, rounded up to the lot size, due when the first is due', () => {
    const { lots } = lotsFor(
      wishes({ shortages: [short(5, 'b', 20, 4), short(3, 'b', 10, 2), short(4, 'a', 1, 9)] }),
    );
    expect(lots).toEqual([
      {
        id: 'lot-1',
        recipeId: 'recipe of b',
        stringKey: 'b',
        quantity: 48,
        orderLines: [3, 5],
        due: addDays(FIRST, 2),
      },
      {
        id: 'lot-2',
        recipeId: 'recipe of a',
        stringKey: 'a',
        quantity: 24,
        orderLines: [4],
        due: addDays(FIRST, 9),
      },
    ]);
  });

  it('what a bin lacks joins the lot that orders ask for, and does not hurry it', () => {
    const { lots } = lotsFor(
      wishes({
        shortages: [short(3, 'a', 10, 12)],
        reorder: [{ stringKey: 'a', binId: 'B', count: 30 }],
      }),
    );
    expect(lots).toMatchObject([{ quantity: 48, orderLines: [3], due: addDays(FIRST, 12) }]);
  });

  it('a lot that only fills a bin names no line and is due when bins are to be full', () => {
    const { lots } = lotsFor(wishes({ reorder: [{ stringKey: 'a', binId: 'B', count: 30 }] }));
    expect(lots).toMatchObject([{ quantity: 48, orderLines: [], due: addDays(FIRST, 10) }]);
  });

  it('keeps lots of one kind apart that are due further apart than the window', () => {
    const shortages = [short(3, 'a', 24, 0), short(4, 'a', 24, 3), short(5, 'a', 24, 20)];
    expect(quantities({ shortages, mergeWindowDays: 7 })).toEqual([48, 24]);
    expect(quantities({ shortages })).toEqual([72]);
  });

  it('lets what rounding made too many serve the next want before a new lot is opened', () => {
    const shortages = [short(3, 'a', 20, 0), short(4, 'a', 6, 20)];
    const { lots } = lotsFor(wishes({ shortages, mergeWindowDays: 7 }));
    expect(lots.map(({ quantity, orderLines }) => [quantity, orderLines])).toEqual([
      [24, [3, 4]],
      [24, [4]],
    ]);
  });

  it('cuts a lot that grows too large for one machine', () => {
    expect(quantities({ shortages: [short(3, 'a', 130)], largestLot: 60 })).toEqual([48, 48, 48]);
    expect(quantities({ shortages: [short(3, 'a', 30)], largestLot: 1 })).toEqual([24, 24]);
  });

  it('names a kind that no recipe makes instead of losing it', () => {
    const result = lotsFor(wishes({ shortages: [short(3, 'odd', 1)], recipeIdOf: () => undefined }));
    expect(result).toEqual({ lots: [], withoutRecipe: ['odd'] });
  });

  it('refuses a lot size of nothing', () => {
    expect(() => lotsFor(wishes({ lotSize: 0 }))).toThrow(/lot size/);
  });
});

describe('laws of lots', () => {
  const any = fc.record({
    shortages: fc.array(
      fc
        .tuple(fc.integer({ min: 2, max: 9 }), fc.constantFrom('a', 'b'), fc.nat(60), fc.nat(30))
        .map(([line, key, count, days]) => short(line, key, count, days)),
      { maxLength: 12 },
    ),
    reorder: fc.array(
      fc
        .tuple(fc.constantFrom('a', 'b', 'c'), fc.nat(90))
        .map(([stringKey, count]) => ({ stringKey, binId: 'B', count })),
      { maxLength: 3 },
    ),
    lotSize: fc.integer({ min: 1, max: 40 }),
    mergeWindowDays: fc.integer({ min: 0, max: 30 }),
    largestLot: fc.integer({ min: 1, max: 200 }),
  });

  it('the lots of a kind hold what is wanted of it and less than one lot size more', () => {
    fc.assert(
      fc.property(any, (parts) => {
        const { lots } = lotsFor(wishes(parts));
        for (const key of ['a', 'b', 'c']) {
          const sum = (rows: readonly { stringKey: string }[], of: (row: never) => number) =>
            rows.filter((row) => row.stringKey === key).reduce((total, row) => total + of(row as never), 0);
          const wanted =
            sum(parts.shortages, (row: StringShortage) => row.count) +
            sum(parts.reorder, (row: { count: number }) => row.count);
          const made = sum(lots, (lot: { quantity: number }) => lot.quantity);
          expect(made).toBeGreaterThanOrEqual(wanted);
          expect(made - wanted).toBeLessThan(parts.lotSize);
        }
        expect(lots.every((lot) => lot.quantity > 0 && lot.quantity % parts.lotSize === 0)).toBe(true);
      }),
    );
  });

  it('every line that is short is named in a lot of its kind that is due no later than the line', () => {
    fc.assert(
      fc.property(any, (parts) => {
        const { lots } = lotsFor(wishes(parts));
        for (const { line, stringKey, due } of parts.shortages.filter((shortage) => shortage.count > 0))
          expect(
            lots.some(
              (lot) => lot.stringKey === stringKey && lot.orderLines.includes(line) && lot.due <= due,
            ),
          ).toBe(true);
      }),
    );
  });

  it('the ids are all different and due dates ascend', () => {
    fc.assert(
      fc.property(any, (parts) => {
        const { lots } = lotsFor(wishes(parts));
        expect(new Set(lots.map((lot) => lot.id)).size).toBe(lots.length);
        for (const [i, lot] of lots.entries())
          if (i > 0) expect(daysBetween(lots[i - 1]!.due, lot.due)).toBeGreaterThanOrEqual(0);
      }),
    );
  });
});
