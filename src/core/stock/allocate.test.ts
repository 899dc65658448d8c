import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type CalendarDate, calendarDate } from '../foundation/index.js';
import { type StringSpec, stringKey } from '../sets/index.js';
import { allocate, type StringDemand } from './allocate.js';
import type { StringStock } from './stock.js';

const day = (text: string): CalendarDate => calendarDate(text) as CalendarDate;

const wound = (gaugeThou: number): StringSpec => ({
  gaugeThou,
  kind: 'wound',
  material: 'nickel-plated-steel',
  end: 'ball',
  lengthM: 0.98,
});
const k46 = stringKey(wound(46));

const lying = (gaugeThou: number, count: number, binId: string, lot: string): StringStock => ({
  spec: wound(gaugeThou),
  count,
  binId,
  lot,
  reorderLevel: 0,
});

const wants = (line: number, count: number, due: string, key = k46): StringDemand => ({
  line,
  stringKey: key,
  count,
  due: day(due),
});

describe('giving the strings on the shelf to the lines', () => {
  it('serves the line due first, and of two due the same day the one that stands first in the file', () => {
    const { takes, shortages } = allocate({
      demands: [wants(2, 3, '2026-03-05'), wants(3, 3, '2026-03-04'), wants(4, 3, '2026-03-05')],
      strings: [lying(46, 7, 'A', 'lot-1')],
    });
    expect(takes.map(({ line, count }) => [line, count])).toEqual([
      [3, 3],
      [2, 3],
      [4, 1],
    ]);
    expect(shortages).toEqual([wants(4, 2, '2026-03-05')]);
  });

  it('empties the oldest lot before it opens the next, whichever bin it lies in', () => {
    const { takes, left } = allocate({
      demands: [wants(2, 6, '2026-03-05')],
      strings: [lying(46, 5, 'A', '2026-02'), lying(46, 4, 'B', '2026-01')],
    });
    expect(takes.map(({ binId, lot, count }) => [binId, lot, count])).toEqual([
      ['B', '2026-01', 4],
      ['A', '2026-02', 2],
    ]);
    expect(left.map((stock) => stock.count)).toEqual([3, 0]);
  });

  it('adds up one line wanting a kind twice, so that it is short of it once', () => {
    const { shortages } = allocate({
      demands: [wants(2, 1, '2026-03-05'), wants(2, 1, '2026-03-05')],
      strings: [],
    });
    expect(shortages).toEqual([wants(2, 2, '2026-03-05')]);
  });

  it('never gives a string of another kind', () => {
    const { takes, shortages } = allocate({
      demands: [wants(2, 1, '2026-03-05')],
      strings: [lying(42, 9, 'A', 'lot-1')],
    });
    expect(takes).toEqual([]);
    expect(shortages).toHaveLength(1);
  });

  it('refuses half a string', () => {
    expect(() => allocate({ demands: [], strings: [lying(46, 0.5, 'A', 'x')] })).toThrow(/whole number/);
  });
});

const shelves = fc.array(
  fc
    .tuple(fc.constantFrom(10, 26, 46), fc.nat(30), fc.constantFrom('A', 'B', 'C'), fc.constantFrom('x', 'y'))
    .map(([gauge, count, bin, lot]) => lying(gauge, count, bin, lot)),
  { maxLength: 12 },
);
const wishes = fc.array(
  fc
    .tuple(
      fc.integer({ min: 2, max: 9 }),
      fc.nat(20),
      fc.constantFrom('2026-03-04', '2026-03-05'),
      fc.constantFrom(10, 26, 46),
    )
    .map(([line, count, due, gauge]) => wants(line, count, due, stringKey(wound(gauge)))),
  { maxLength: 15 },
);

const total = (rows: readonly { readonly count: number }[]): number =>
  rows.reduce((sum, row) => sum + row.count, 0);

describe('laws of allocation', () => {
  it('nothing is allocated twice: out of each lot in each bin, taken + left = what lay there', () => {
    fc.assert(
      fc.property(wishes, shelves, (demands, strings) => {
        const { takes, left } = allocate({ demands, strings });
        const place = (key: string, binId: string, lot: string) => `${key}|${binId}|${lot}`;
        const at = (stock: StringStock) => place(stringKey(stock.spec), stock.binId, stock.lot);
        for (const spot of new Set(strings.map(at))) {
          const lay = total(strings.filter((stock) => at(stock) === spot));
          const remains = total(left.filter((stock) => at(stock) === spot));
          const out = total(takes.filter((t) => place(t.stringKey, t.binId, t.lot) === spot));
          expect(out + remains).toBe(lay);
        }
        expect(total(takes) + total(left)).toBe(total(strings));
        expect(left.every((stock) => stock.count >= 0)).toBe(true);
        expect(takes.every((take) => take.count > 0)).toBe(true);
      }),
    );
  });

  it('every line gets or is short of exactly what it wanted of each kind', () => {
    fc.assert(
      fc.property(wishes, shelves, (demands, strings) => {
        const { takes, shortages } = allocate({ demands, strings });
        for (const { line, stringKey: key } of demands) {
          const of = (rows: readonly { line: number; stringKey: string; count: number }[]) =>
            total(rows.filter((row) => row.line === line && row.stringKey === key));
          expect(of(takes) + of(shortages)).toBe(of(demands));
        }
      }),
    );
  });

  it('no line is short of a kind that still lies on the shelf', () => {
    fc.assert(
      fc.property(wishes, shelves, (demands, strings) => {
        const { shortages, left } = allocate({ demands, strings });
        const lies = new Set(left.filter((stock) => stock.count > 0).map((stock) => stringKey(stock.spec)));
        expect(shortages.every((shortage) => !lies.has(shortage.stringKey))).toBe(true);
      }),
    );
  });

  it('a line later in due date and file never gets what an earlier one is short of', () => {
    fc.assert(
      fc.property(wishes, shelves, (demands, strings) => {
        const { takes, shortages } = allocate({ demands, strings });
        const firstDue = (line: number, key: string) =>
          demands
            .filter((demand) => demand.line === line && demand.stringKey === key && demand.count > 0)
            .map((demand) => demand.due)
            .sort()[0] as string;
        for (const short of shortages)
          for (const take of takes.filter((t) => t.stringKey === short.stringKey)) {
            const [dueTaken, dueShort] = [firstDue(take.line, take.stringKey), short.due as string];
            expect(dueTaken < dueShort || (dueTaken === dueShort && take.line <= short.line)).toBe(true);
          }
      }),
    );
  });
});
