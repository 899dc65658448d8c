import { describe, expect, it } from 'vitest';
import {
  canReadText,
  misplacedWords,
  pageCount,
  pageTexts,
  runningText,
} from '../../test/fixtures/read-pdf.js';
import { LONG_PLAYER, smallDay } from '../../test/fixtures/small-day.js';
import { packingRollPdf } from './packing-roll.js';

const day = smallDay();

describe('the packing roll', () => {
  it('equal days give equal bytes', async () => {
    expect(await packingRollPdf(smallDay())).toEqual(await packingRollPdf(smallDay()));
  });

  it.skipIf(!canReadText)('bins come in walking order, named at every pick', async () => {
    const [page = ''] = pageTexts(await packingRollPdf(day));
    const walk = page.slice(page.indexOf('The walk'), page.indexOf('The sets'));
    const bins = [...walk.matchAll(/\b[AC]-\d\d\b/g)].map(([bin]) => bin);
    expect(bins).toEqual(['A-01', 'A-02', 'A-02', 'C-11', 'C-11']);
    expect(walk).toMatch(/3\s+46 wound, nickel-plated steel, ball end, 1000 mm\s+2, 4/);
  });

  it.skipIf(!canReadText)('every set names its strings, their bins, and whether it waits', async () => {
    const text = runningText(await packingRollPdf(day));
    expect(text).toContain('4 sets: 2 to pack now, 2 after winding.');
    expect(text).toContain('2 sets alike · Evening six');
    expect(text).toContain('1: 2 × 10 plain A-01');
    expect(text).toContain('4: 105 wound C-04');
    expect(text).toContain('after winding, Tue 14 Apr 2026: L-0414-2');
  });

  it.skipIf(!canReadText)('a long name is cut short', async () => {
    const text = runningText(await packingRollPdf(day));
    expect(text).toMatch(/Ottilie Brackwater-Penhallow-Strandgaard[^…]*…/);
    expect(text).not.toContain(LONG_PLAYER);
  });

  it.skipIf(!canReadText)('the walk goes over pages with its headings again on each', async () => {
    const stop = day.roll.stops[0]!;
    const stops = Array.from({ length: 120 }, (_, index) => ({
      ...stop,
      binId: `B-${index}`,
      walkOrder: index,
    }));
    const pages = pageTexts(await packingRollPdf({ ...day, roll: { stops, sets: [] } }));
    expect(pages.length).toBeGreaterThan(2);
    for (const page of pages) expect(page).toMatch(/Bin\s+Take\s+String\s+For lines/);
    expect(pages.join('').match(/\bB-\d+\b/g)).toHaveLength(120);
  });

  it('sets fill pages and none is lost', async () => {
    const sets = Array.from({ length: 60 }, () => day.roll.sets[0]!);
    const pdf = await packingRollPdf({ ...day, roll: { stops: [], sets } });
    expect(pageCount(pdf)).toBeGreaterThan(4);
    if (canReadText) expect(runningText(pdf).match(/Perrin Oddlestone/g)).toHaveLength(60);
  });

  it.skipIf(!canReadText)('a day with nothing to pack says so', async () => {
    const text = runningText(await packingRollPdf({ ...day, roll: { stops: [], sets: [] } }));
    expect(text).toContain('There is nothing to pack on this day.');
  });

  it.skipIf(!canReadText)('no word runs off the page or over another', async () => {
    expect(misplacedWords(await packingRollPdf(day))).toEqual([]);
  });
});
