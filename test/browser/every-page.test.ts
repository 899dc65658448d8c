import { afterAll, afterEach, beforeAll, expect, it } from 'vitest';
import type { Day } from '../../src/core/day/index.js';
import { demoDay, demoShop } from '../../src/workshop/index.js';
import { barriers, describeInBrowser, expectQuiet, type House, openHouse, widerBy } from './harness.js';

const SIZES = [
  [1440, 900],
  [1024, 768],
  [820, 1180],
] as const;
const SCHEMES = ['light', 'dark'] as const;

/** One address of every kind. */
const PATHS = {
  'the day': () => '/',
  'a set-up sheet': (day: Day) => `/runs/${day.sheets.find(({ kind }) => kind === 'wind')?.lotId}`,
  'a sheet of the bench': (day: Day) => `/runs/${day.sheets.find(({ kind }) => kind === 'cut')?.lotId}`,
  'a run of another day': (day: Day) =>
    `/runs/${day.plan.runs.find(({ setUpFrom }) => setUpFrom.date > day.date)?.lotId}`,
  'all sets': () => '/sets',
  'a set of twelve strings': () => '/sets/orchard-twelve',
  'a set of five, two layers among them': () => '/sets/cellar-bass-five',
  'the answer to a request': (day: Day) =>
    `/sets/line-${day.orders.find(({ kind }) => kind === 'request')?.line}`,
  'a custom set': (day: Day) => `/sets/line-${day.orders.find(({ kind }) => kind === 'custom')?.line}`,
  'the request': () => '/request',
  'no page at all': () => '/no/such/place',
} as const;

describeInBrowser('every page', () => {
  let day: Day;
  let house: House;

  beforeAll(async () => {
    day = await demoDay();
    house = await openHouse({ dayOf: async () => day, shopOf: demoShop });
  });
  afterAll(() => house?.close());
  afterEach(() => expectQuiet(house));

  it.each(Object.keys(PATHS) as (keyof typeof PATHS)[])(
    '%s has no barriers, fits, and has its name',
    async (name) => {
      const page = await house.visit(PATHS[name](day));
      const headings = page.getByRole('heading', { level: 1 });
      expect(await headings.count()).toBe(1);
      expect(await page.title()).toBe(`${await headings.textContent()} · Tautwork`);
      for (const colorScheme of SCHEMES) {
        await page.emulateMedia({ colorScheme });
        expect(await barriers(page), colorScheme).toEqual([]);
      }
      for (const [width, height] of SIZES) {
        await page.setViewportSize({ width, height });
        expect(await widerBy(page), `${width} by ${height}`).toBe(0);
      }
      await page.context().close();
    },
  );

  it('is seen as the person chose, light or dark, also when coming back', async () => {
    const page = await house.visit('/sets', { scheme: 'light' });
    const ground = () => page.evaluate('getComputedStyle(document.body).backgroundColor');
    const light = await ground();
    await page.getByText('Dark', { exact: true }).click();
    const dark = await ground();
    expect(dark).not.toBe(light);
    await page.reload();
    await page.getByRole('heading', { level: 1 }).waitFor();
    expect(await ground()).toBe(dark);
    await page.context().close();
  });

  it('moves nothing for those who wish for no motion', async () => {
    const page = await house.visit('/');
    const moving = await page.evaluate(
      `[...document.querySelectorAll('*')].filter((node) => {
        const style = getComputedStyle(node);
        return style.animationName !== 'none' || parseFloat(style.transitionDuration) > 0;
      }).length`,
    );
    expect(moving).toBe(0);
    await page.context().close();
  });
});
