import { describe, expect, it } from 'vitest';
import {
  canReadText,
  misplacedWords,
  pageCount,
  pageTexts,
  runningText,
  wordBoxes,
} from '../../test/fixtures/read-pdf.js';
import { smallDay } from '../../test/fixtures/small-day.js';
import { BENCH, bronze36, PLAIN_12, specOf } from '../../test/fixtures/winders.js';
import { coreEndSheet, type SetUpSheet } from '../core/winding/index.js';
import { setUpSheetsPdf } from './set-up-sheets.js';

const day = smallDay();
/** The same with the ends of strings, as the core reckons them. */
const ended = day.sheets.map((sheet): SetUpSheet => {
  const recipe = sheet.kind === 'cut' ? PLAIN_12 : bronze36('hex');
  const ends = coreEndSheet({ bench: BENCH, recipe, spec: specOf(recipe), quantity: sheet.quantity });
  return ends.ok ? { ...sheet, ends: ends.value } : sheet;
});
const only = (index: number): Promise<Uint8Array> => setUpSheetsPdf({ ...day, sheets: [day.sheets[index]!] });

describe('set-up sheets', () => {
  it('equal days give equal bytes', async () => {
    expect(await setUpSheetsPdf(smallDay())).toEqual(await setUpSheetsPdf(smallDay()));
  });

  it('each run has one page, two layers and all cautions included', async () => {
    expect(pageCount(await setUpSheetsPdf(day))).toBe(day.sheets.length);
  });

  it('of ended strings has the same pages, and the cores of all wound ones on one more at the end', async () => {
    const plain = ended.filter(({ kind }) => kind === 'cut');
    expect(pageCount(await setUpSheetsPdf({ ...day, sheets: plain }))).toBe(plain.length);
    expect(pageCount(await setUpSheetsPdf({ ...day, sheets: ended }))).toBe(ended.length + 1);
  });

  it.skipIf(!canReadText)(
    'a plain string is told its twist, its tail, its pull, and where to write them',
    async () => {
      const plain = ended.filter(({ kind }) => kind === 'cut');
      const text = runningText(await setUpSheetsPdf({ ...day, sheets: plain }));
      expect(text).toMatch(/Twist 9 full turns \(8 to 10\)/);
      expect(text).toContain('Pull: to 123.3 N (27.71 lbf) and hold: 65 % of the least');
      expect(text).toContain('Gave way at');
    },
  );

  it.skipIf(!canReadText)('the cores to end stand on the last page, cautions first', async () => {
    const last = pageTexts(await setUpSheetsPdf({ ...day, sheets: ended })).at(-1)!;
    const text = last.replace(/\s+/g, ' ');
    expect(text).toContain('Cores to end at the bench');
    expect(text.indexOf('Pulling ends')).toBeLessThan(text.indexOf('For the run of'));
    expect(text).toContain('core-hex-16');
  });

  it('the file says its title, its language and that it is tagged', async () => {
    const file = Buffer.from(await setUpSheetsPdf(day)).toString('latin1');
    expect(file).toContain('/Lang (en-GB)');
    expect(file).toContain('/Marked true');
    expect(file).toContain('(Saltmarsh Strings)');
    expect(file).toContain('/S /H1');
  });

  it.skipIf(!canReadText)('cautions stand above every setting', async () => {
    for (const [index, sheet] of day.sheets.entries()) {
      const words = wordBoxes(await only(index));
      const top = (wanted: string): number =>
        Math.min(...words.filter(({ word }) => word === wanted).map(({ top }) => top));
      expect(top('Rules')).toBeLessThan(top('Cut'));
      if (sheet.kind === 'wind') expect(top('Rules')).toBeLessThan(top('Turns'));
    }
  });

  it.skipIf(!canReadText)(
    'where hands meet a spindle the sheet says guard, eyes, no gloves, lock out, local rules',
    async () => {
      const text = runningText(await only(0));
      expect(text).toContain('Close the guard first.');
      expect(text).toContain('No gloves at a turning spindle.');
      expect(text).toContain('Wear eye protection');
      expect(text).toContain('lock its switch');
      expect(text).toContain('Follow local rules and licensed practice');
      expect(text).toContain('A loose tail of 50 mm flies at 15 m/s (54 km/h).');
    },
  );

  it.skipIf(!canReadText)('a gear machine is told its dial, a servo its pitch', async () => {
    const gear = runningText(await only(0));
    expect(gear).toContain('Dial 7.45 gives 14.3 thou (0.362 mm)');
    expect(gear).not.toContain('Pitch to type in');
    const servo = runningText(await only(1));
    expect(servo).toContain('Pitch to type in, mm 0.363');
    expect(servo).toContain('Wrap layer 2 of 2');
  });

  it.skipIf(!canReadText)('sizes are in both units', async () => {
    const text = runningText(await only(0));
    expect(text).toContain('17.0 thou (0.432 mm) across flats');
    expect(text).toContain('Cut to 1100 mm (43.3 in)');
    expect(text).toContain('Ø 46.2 ± 0.5 thou');
    expect(text).toContain('1.174 mm, from 1.161 to 1.187 mm');
    expect(text).toContain('lead angle 7.92°');
    expect(text).toContain('17.2 mm/s (0.68 in/s)');
  });

  it.skipIf(!canReadText)('a tension that nobody recorded is not made up', async () => {
    const text = runningText(await only(0));
    expect(text).toContain(
      'Core tension: a guess: no run of this shop is near. Begin cautiously at 89.2 N (20.05 lbf), likely 41.0 to 193.0 N; upper limit 178.3 N (40.08 lbf), decided by the elastic limit',
    );
    expect(text).toContain('Leans on run of the 3rd (2026-11-03, old-heron, 31 %) and 5 more.');
    expect(text).toContain('Wrap tension: 9.4 N (2.11 lbf), likely 8.1 to 10.9 N; from 6 near runs');
  });

  it.skipIf(!canReadText)('a bench job has nothing that turns', async () => {
    const text = runningText(await only(2));
    expect(text).toContain('Plain wire');
    expect(text).not.toContain('Spindle, rpm');
    expect(text).not.toContain('Wrap tension');
  });

  it.skipIf(!canReadText)('the first-off table names strings, places and turns', async () => {
    const text = runningText(await only(0));
    expect(text).toContain('Measure first: 2 strings, 3 places from the end, 2 turns in the micrometer');
    expect(text).toMatch(/50 mm 485 mm 920 mm/);
    expect(text).toContain('String 2');
  });

  it.skipIf(!canReadText)('pages are numbered and say that the workshop is invented', async () => {
    const pages = pageTexts(await setUpSheetsPdf(day));
    pages.forEach((page, index) => {
      expect(page).toContain(`page ${index + 1} of ${pages.length}`);
      expect(page).toContain('invented demo workshop');
    });
  });

  it.skipIf(!canReadText)('a real workshop is not called invented', async () => {
    const text = runningText(await setUpSheetsPdf({ ...day, shop: { ...day.shop, invented: false } }));
    expect(text).toContain('Saltmarsh Strings');
    expect(text).not.toContain('invented');
  });

  it.skipIf(!canReadText)('a day without runs has a page that says so', async () => {
    const pages = pageTexts(await setUpSheetsPdf({ ...day, sheets: [] }));
    expect(pages).toHaveLength(1);
    expect(pages[0]).toContain('no run starts on this day');
  });

  it.skipIf(!canReadText)('no word runs off the page or over another', async () => {
    expect(misplacedWords(await setUpSheetsPdf(day))).toEqual([]);
  });
});
