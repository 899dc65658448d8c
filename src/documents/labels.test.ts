import { describe, expect, it } from 'vitest';
import {
  canReadCodes,
  canReadText,
  codesOn,
  misplacedWords,
  pageCount,
  pageTexts,
  runningText,
  wordBoxes,
} from '../../test/fixtures/read-pdf.js';
import { LONG_PLAYER, smallDay } from '../../test/fixtures/small-day.js';
import type { Day } from '../core/day/index.js';
import { LABELS_3_BY_8 } from './label-sheet.js';
import { labelsPdf } from './labels.js';
import { mm } from './look.js';

const day = smallDay();

/** The small day with as many sets as wished, each with a code of its own. */
function dayOfSets(count: number, orderId = (index: number): string => `R-${1000 + index}`): Day {
  const lines = Array.from({ length: count }, (_, index) => index + 2);
  const set = day.roll.sets[0]!;
  const sets = lines.map((line, index) => ({
    ...set,
    line,
    orderId: orderId(index),
    quantity: 1,
    labelCode: `TW1:${orderId(index)}:${line}`,
  }));
  const orders = lines.map((line, index) => ({ ...day.orders[0]!, line, orderId: orderId(index) }));
  return { ...day, orders, roll: { ...day.roll, sets } };
}

describe('labels', () => {
  it('equal days give equal bytes', async () => {
    expect(await labelsPdf(smallDay())).toEqual(await labelsPdf(smallDay()));
  });

  it('a sheet takes 24; the twenty-fifth begins a new one', async () => {
    expect(pageCount(await labelsPdf(dayOfSets(24)))).toBe(1);
    expect(pageCount(await labelsPdf(dayOfSets(25)))).toBe(2);
  });

  it('a sheet of another size takes what it holds', async () => {
    const sheet = { ...LABELS_3_BY_8, columns: 2, rows: 4, labelWidthM: 0.105, labelHeightM: 0.074 };
    expect(pageCount(await labelsPdf(dayOfSets(9), sheet))).toBe(2);
  });

  it.skipIf(!canReadText)(
    'every envelope gets a label with player, set, gauges, order and origin',
    async () => {
      const text = runningText(await labelsPdf(day));
      expect(text).toContain('Perrin Oddlestone Evening six 10 13 17 26 36 46 Order R-1043 · 1 of 2');
      expect(text).toContain('Order R-1043 · 2 of 2 · Tue 14 Apr 2026 Strings from the shelf');
      expect(text).toContain('10½ to 46, pure → bright');
      expect(text).toContain('Made in L-0414-1, ready Tue 14 Apr 2026');
      expect(text).toContain('invented: Saltmarsh Strings');
    },
  );

  it.skipIf(!canReadText)('a name too long for its label is cut short and stays on it', async () => {
    const pdf = await labelsPdf(day);
    expect(runningText(pdf)).not.toContain(LONG_PLAYER);
    const words = wordBoxes(pdf);
    expect(words.find(({ word }) => word.startsWith('Brackwater') && word.endsWith('…'))).toBeDefined();
    const ownColumn = words.filter(({ left }) => left < mm(70));
    for (const { right } of ownColumn) expect(right).toBeLessThan(mm(70 - 4));
  });

  it.skipIf(!canReadText)('no labels give a page that says so', async () => {
    const pages = pageTexts(await labelsPdf({ ...day, roll: { stops: [], sets: [] } }));
    expect(pages).toHaveLength(1);
    expect(pages[0]).toContain('There are none');
  });

  it.skipIf(!canReadCodes)('every code reads as the label code of its set', async () => {
    const many = dayOfSets(30);
    const codes = codesOn(await labelsPdf(many));
    expect(codes.toSorted()).toEqual(many.roll.sets.map((set) => set.labelCode).toSorted());
  });

  it.skipIf(!canReadCodes)('codes too long or too foreign for bars read too', async () => {
    const many = dayOfSets(24, (index) => `Bestellung-2026-04-14-Strandgård-${index}`);
    const codes = codesOn(await labelsPdf(many));
    expect(codes.toSorted()).toEqual(many.roll.sets.map((set) => set.labelCode).toSorted());
  });

  it.skipIf(!canReadText)('no word runs off the page or over another', async () => {
    expect(misplacedWords(await labelsPdf(day))).toEqual([]);
  });
});
