import { afterAll, afterEach, beforeAll, expect, it } from 'vitest';
import { cautionInWords, firstOffInWords, setPointInWords } from '../../src/contract/index.js';
import type { SetUpSheet } from '../../src/core/winding/index.js';
import { demoShop } from '../../src/workshop/index.js';
import { smallDay } from '../fixtures/small-day.js';
import { barriers, describeInBrowser, expectQuiet, type House, openHouse } from './harness.js';

const TABLET = { width: 820, height: 1180 };

describeInBrowser('a set-up sheet in a browser', () => {
  const day = smallDay();
  let house: House;

  beforeAll(async () => {
    house = await openHouse({ dayOf: async () => day, shopOf: demoShop });
  });
  afterAll(() => house?.close());
  afterEach(() => expectQuiet(house));

  const openSheet = (sheet: SetUpSheet) => house.visit(`/runs/${sheet.lotId}`, TABLET);

  it('gives all cautions before anything that a hand could act on', async () => {
    for (const sheet of day.sheets) {
      const page = await openSheet(sheet);
      const said = (await page.locator('main').textContent()) ?? '';
      const firstSetting = said.indexOf(sheet.kind === 'cut' ? 'Plain wire:' : 'Wrap');
      for (const caution of sheet.cautions) {
        const at = said.indexOf(cautionInWords(caution).sentence);
        expect(at, caution).toBeGreaterThan(0);
        expect(at, caution).toBeLessThan(firstSetting);
      }
      await page.close();
    }
  });

  it('shows what is set or counted large enough to be read from a metre', async () => {
    for (const sheet of day.sheets.filter(({ layers }) => layers.length > 0)) {
      const page = await openSheet(sheet);
      for (const layer of sheet.layers) {
        const set = layer.drive.kind === 'gear' ? layer.drive.dial : layer.drive.pitchM * 1000;
        const figure = page
          .locator('dd')
          .filter({ hasText: new RegExp(`^${Number(set.toFixed(4))}( mm)?$`) });
        const box = await figure.first().boundingBox();
        expect(box?.height).toBeGreaterThanOrEqual(56);
        const said = await page.locator('main').textContent();
        expect(said).toContain(`${Math.round(layer.spindleRpm)} rpm`);
        expect(said).toContain(setPointInWords(layer.wrapTension));
      }
      await page.close();
    }
  });

  it('leaves a box for every reading of the first strings', async () => {
    const [sheet] = day.sheets;
    if (!sheet) throw new Error('the small day has a sheet');
    const page = await openSheet(sheet);
    const { strings, placesFromEndM, rotationsDeg, why } = sheet.firstOff;
    const boxes = page.getByRole('table').locator('tbody td');
    expect(await boxes.count()).toBe(strings * (placesFromEndM.length * rotationsDeg.length + 1));
    expect(await page.locator('main').textContent()).toContain(firstOffInWords(why));
    await page.close();
  });

  it('has nothing to touch that is smaller than a finger in a glove', async () => {
    const [sheet] = day.sheets;
    if (!sheet) throw new Error('the small day has a sheet');
    const page = await openSheet(sheet);
    for (const link of await page.locator('main a').all()) {
      const box = await link.boundingBox();
      expect(box?.height, (await link.textContent()) ?? '').toBeGreaterThanOrEqual(44);
    }
    await page.close();
  });

  it('has no barriers with one layer, with two, and at the bench', async () => {
    for (const sheet of day.sheets) {
      const page = await openSheet(sheet);
      expect(await barriers(page)).toEqual([]);
      await page.close();
    }
  });

  it('says so where the plan has no such lot', async () => {
    const page = await house.visit('/runs/lot-of-nobody');
    expect(await page.locator('main').textContent()).toContain('The plan has no lot lot-of-nobody.');
    await page.close();
  });
});
