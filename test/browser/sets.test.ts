import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import type { Client } from '../../src/contract/index.js';
import type { Shop } from '../../src/core/day/index.js';
import { recipeBody } from '../../src/core/recipes/index.js';
import { usualTuning } from '../../src/core/sets/index.js';
import { tensionN } from '../../src/core/string/index.js';
import { formatForce, frequencyHz, metresFromInches } from '../../src/core/units/index.js';
import { barriers, describeInBrowser, expectQuiet, type House, openHouse, widerBy } from './harness.js';

const SET = 'Meadow six, 10';

describeInBrowser('sets in a browser', () => {
  let house: House;
  let client: Client;
  let shop: Shop;
  let ids: Readonly<Record<string, string>>;
  let page: Page;

  beforeAll(async () => {
    house = await openHouse();
    client = await house.client('owner');
    const view = await client.read('shop-view', {});
    if (!view.ok) throw new Error(view.fault.detail);
    shop = view.value.shop;
    ids = view.value.ids.sets;
  });
  afterAll(() => house?.close());
  afterEach(async () => {
    await page.close();
    expectQuiet(house);
  });

  const idOf = (name: string): string => ids[name] ?? '';
  const field = (name: string) => page.getByLabel(name, { exact: true });
  const pullsOnPage = () => page.getByRole('img', { name: /^The set from treble to bass/ });

  /** The pulls of a stock set of six, as the core reckons them at one scale length in the usual tuning. */
  function pullsOf(setName: string, scaleM: number): readonly number[] {
    const set = shop.sets.find(({ name }) => name === setName);
    const tuning = usualTuning(set?.strings.length ?? 0);
    return (set?.strings ?? []).map((spec, at) => {
      const recipe = shop.recipes.find(
        ({ gaugeThou, material }) => gaugeThou === spec.gaugeThou && material === spec.material,
      );
      const body = recipe && recipeBody(recipe, shop.seat);
      const pitch = tuning?.pitches[at];
      if (!body?.ok || !pitch) throw new Error('every string of the demo set has a recipe and a pitch');
      return tensionN(body.value.linearDensityKgPerM, scaleM, frequencyHz(pitch));
    });
  }

  describe('a set', () => {
    beforeEach(async () => {
      page = await house.visit(`/sets/${idOf(SET)}`, { as: 'adviser' });
    });

    it('is drawn with the pull that the core reckons for every string', async () => {
      const words = await pullsOnPage().getAttribute('aria-label');
      for (const pullN of pullsOf(SET, metresFromInches(25.5)))
        expect(words).toContain(`pulls ${formatForce(pullN, 'N')}`);
    });

    it('follows a scale that is typed', async () => {
      await field('Scale length').fill('24.75 in');
      const [first = 0] = pullsOf(SET, metresFromInches(24.75));
      await page.getByRole('img', { name: new RegExp(`pulls ${formatForce(first, 'N')}`) }).waitFor();
    });

    it('fans where two lengths are given, and says what it cannot read', async () => {
      await field('Scale length').fill('25.5-27 in');
      await page.getByText(/nut to saddle, 25\.5 in to 27 in/).waitFor();
      await field('Scale length').fill('64.8');
      await page.getByText('can be read as').first().waitFor();
      expect(await barriers(page)).toEqual([]);
    });

    it('shows every string cut across, and the same pulls as a table', async () => {
      const cuts = page.getByRole('table', { name: 'Sections and figures' }).getByRole('img');
      expect(await cuts.count()).toBe(6);
      expect(await cuts.last().getAttribute('aria-label')).toMatch(/^Hexagonal core, 17\.0 thou/);
      await page.getByText('Table', { exact: true }).click();
      const rows = page.getByRole('table', { name: 'Strings and pulls' }).locator('tbody tr');
      expect(await rows.count()).toBe(6);
      expect(await barriers(page)).toEqual([]);
    });

    it('is laid beside another in the same place', async () => {
      await field('Compare with').selectOption('Meadow six, 11');
      const table = page.getByRole('table', { name: `${SET} beside Meadow six, 11` });
      const [here = 0] = pullsOf(SET, metresFromInches(25.5));
      const [there = 0] = pullsOf('Meadow six, 11', metresFromInches(25.5));
      const row = table.getByRole('row', { name: /^1 10 plain/ });
      await row.getByText(formatForce(here, 'N')).waitFor();
      await row.getByText(formatForce(there, 'N')).waitFor();
      await row.getByText(`+${(100 * (there / here - 1)).toFixed(1)} %`).waitFor();
      expect(await barriers(page)).toEqual([]);
    });

    it('is not changed by those who may not', async () => {
      expect(await page.getByRole('link', { name: 'Change' }).count()).toBe(0);
      page = await house.again(page, '/sets/new');
      await page.getByText('The shop has no such set.').waitFor();
    });
  });

  describe('the owner', () => {
    it('finds a set by its gauges and makes a new one of gauges that the shop chose', async () => {
      page = await house.visit('/sets', { as: 'owner' });
      const rows = page.getByRole('table', { name: 'Stock sets' }).locator('tbody tr');
      await field('Find a set').fill('14-18-28');
      await rows.first().waitFor();
      expect(await rows.count()).toBe(
        shop.sets.filter(({ strings }) =>
          strings
            .map(({ gaugeThou }) => gaugeThou)
            .join('-')
            .includes('14-18-28'),
        ).length,
      );
      expect(await barriers(page)).toEqual([]);
      await page.getByRole('link', { name: 'New set' }).click();
      await page.getByRole('button', { name: 'Save the set' }).click();
      await page.getByText('A set needs a name.').waitFor();
      await field('Name').fill('Reed six, even');
      await page.getByText('Let the shop choose gauges').click();
      await field('Instrument').fill('electric 25.5');
      await field('Tuning, low to high').fill('standard six');
      await field('Pulls').fill('75 N');
      await page
        .getByRole('button', { name: /^Take / })
        .first()
        .click();
      expect(await field('Gauges').inputValue()).toMatch(/^\d+(\.\d+)? plain-/);
      await pullsOnPage().waitFor();
      expect(await barriers(page)).toEqual([]);
      await page.getByRole('button', { name: 'Save the set' }).click();
      await page.getByRole('heading', { name: 'Reed six, even', level: 1 }).waitFor();
      const kept = await client.list('set', { name: 'Reed six, even' });
      const strings = kept.ok ? (kept.value.items[0]?.body.strings ?? []) : [];
      expect(strings.map(({ kind }) => kind)).toEqual(['plain', 'plain', 'plain', 'wound', 'wound', 'wound']);
    });

    it('changes a set, sees both versions, and takes it back', async () => {
      const name = 'Kiln six, 10';
      page = await house.visit(`/sets/${idOf(name)}`, { as: 'owner' });
      await page.getByRole('link', { name: 'Change' }).click();
      await field('Gauges').fill('10-13-17-26-36-48');
      await page.getByRole('button', { name: 'Save the set' }).click();
      const versions = page.getByRole('table', { name: 'Two versions side by side' });
      await versions.getByRole('row', { name: /String 6 46 wound.*48 wound.*differs/ }).waitFor();
      expect(await barriers(page)).toEqual([]);
      await page.getByRole('button', { name: 'Undo' }).click();
      await page.getByText(`${name} is as it was.`).waitFor();
      const kept = await client.get('set', idOf(name));
      expect(kept).toMatchObject({ ok: true, value: { version: 3 } });
      expect(kept.ok && kept.value.body.strings.at(-1)?.gaugeThou).toBe(46);
    });

    it('is shown both where somebody else changed the set meanwhile', async () => {
      const name = 'Kiln six, 12 wound third';
      const id = idOf(name);
      page = await house.visit(`/sets/${id}?view=edit`, { as: 'owner' });
      await field('Name').fill('Kiln six, renamed');
      const before = await client.get('set', id);
      if (!before.ok) throw new Error(before.fault.detail);
      const { body, version } = before.value;
      const strings = body.strings.map((spec) => (spec.gaugeThou === 53 ? { ...spec, gaugeThou: 54 } : spec));
      const theirs = { id, expectedVersion: version, body: { ...body, strings } };
      const done = await client.perform('save-set', theirs, {
        requestId: '01a40000-0000-7000-8000-0000000000bb',
      });
      expect(done.ok).toBe(true);
      const box = page.getByRole('alert', { name: /Someone changed it meanwhile/ });
      await box.getByRole('row', { name: /String 6 54 wound/ }).waitFor();
      await box.getByRole('button', { name: 'Take what stands now' }).click();
      expect(await field('Name').inputValue()).toBe(name);
      expect(await field('Gauges').inputValue()).toContain('54');
    });
  });

  it.each([
    [1440, 900, 'dark'],
    [1024, 768, 'light'],
    [820, 1180, 'light'],
  ] as const)('stand on a page of %i by %i, %s, without barriers', async (width, height, scheme) => {
    page = await house.visit('/sets', { as: 'owner', width, height, scheme });
    await page.getByRole('link', { name: 'Orchard twelve', exact: true }).click();
    await pullsOnPage().waitFor();
    expect(await widerBy(page)).toBe(0);
    expect(await barriers(page)).toEqual([]);
    page = await house.again(page, `/sets/${idOf(SET)}?view=edit`);
    await pullsOnPage().waitFor();
    expect(await widerBy(page)).toBe(0);
    expect(await barriers(page)).toEqual([]);
  });
});
