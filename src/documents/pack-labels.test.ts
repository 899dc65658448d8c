import { describe, expect, it } from 'vitest';
import {
  canReadCodes,
  canReadText,
  codesOn,
  misplacedWords,
  pageCount,
  runningText,
  wordBoxes,
} from '../../test/fixtures/read-pdf.js';
import type { CalendarDate } from '../core/foundation/index.js';
import type { StringSpec } from '../core/sets/index.js';
import { mm } from './look.js';
import { type LabelledPack, packLabelsPdf } from './pack-labels.js';

const SPECS: readonly StringSpec[] = [10, 13, 17].map((gaugeThou) => ({
  gaugeThou,
  kind: 'plain',
  material: 'plain-steel',
  end: 'ball',
  lengthM: 1,
}));
const STRINGS = SPECS.map((spec, at) => ({
  position: at + 1,
  spec,
  stringKey: `${spec.gaugeThou} plain plain-steel ball 1000 mm`,
  recipeId: '01a3b681-6b80-7065-bb23-4d2c72d0d027',
}));

const packed = (copy: number, quantity: number): LabelledPack => ({
  pack: {
    orderId: '01a3b681-6b80-7065-bb23-4d2c72d0d027',
    lineNumber: 1,
    copy,
    labelCode: `TW1:R-7:1:${copy}`,
    setName: 'Evening three',
    wanted: STRINGS,
    picked: [],
  },
  order: {
    number: 'R-7',
    player: 'Perrin Oddlestone',
    due: '2026-04-17',
    note: '',
    lines: [{ lineNumber: 1, kind: 'stock', setName: 'Evening three', quantity, strings: STRINGS }],
  },
  lots: ['2026-04-14 lot 3', '2026-04-13 lot 1'],
});

const paper = {
  shop: { name: 'Saltmarsh Strings', invented: true },
  date: '2026-04-14' as CalendarDate,
  packs: [packed(1, 2), packed(2, 2)],
};

describe('labels of packs', () => {
  it.skipIf(!canReadText)('tell player, set, gauges, order, day and the lots of the strings', async () => {
    const text = runningText(await packLabelsPdf(paper));
    expect(text).toContain('Perrin Oddlestone Evening three 10 13 17 Order R-7 · 1 of 2 · due');
    expect(text).toContain('Fri 17 Apr 2026');
    expect(text).toContain('From 2026-04-14 lot 3 and 2026-04-13 lot 1');
    expect(text).toContain('invented: Saltmarsh Strings');
  });

  it.skipIf(!canReadCodes)('bear the code of their pack', async () => {
    const codes = codesOn(await packLabelsPdf(paper));
    expect(codes.toSorted()).toEqual(['TW1:R-7:1:1', 'TW1:R-7:1:2']);
  });

  it.skipIf(!canReadText)('begin where a sheet still has labels, and go on to the next sheet', async () => {
    const pdf = await packLabelsPdf({ ...paper, firstPlace: 23 });
    expect(pageCount(pdf)).toBe(2);
    const [first] = wordBoxes(pdf).filter(({ word }) => word === 'Perrin');
    expect(first!.left).toBeGreaterThan(mm(140));
    expect(misplacedWords(pdf)).toEqual([]);
  });
});
