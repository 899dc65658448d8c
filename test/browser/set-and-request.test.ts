import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { gaugesInWords, orderFaultWords } from '../../src/contract/index.js';
import type { Shop } from '../../src/core/day/index.js';
import { type PlayerRequest, readOrders, requestAnswerer } from '../../src/core/orders/index.js';
import { recipeBody } from '../../src/core/recipes/index.js';
import { usualTuning } from '../../src/core/sets/index.js';
import { tensionN } from '../../src/core/string/index.js';
import { formatForce, frequencyHz, metresFromInches } from '../../src/core/units/index.js';
import { demoShop } from '../../src/workshop/index.js';
import { smallDay } from '../fixtures/small-day.js';
import { barriers, describeInBrowser, expectQuiet, type House, openHouse } from './harness.js';

describeInBrowser('sets and requests in a browser', () => {
  let shop: Shop;
  let house: House;
  let page: Page;

  beforeAll(async () => {
    shop = await demoShop();
    house = await openHouse({ dayOf: async () => smallDay(), shopOf: async () => shop });
  });
  afterAll(() => house?.close());
  afterEach(async () => {
    await page.close();
    expectQuiet(house);
  });

  describe('a set', () => {
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

    beforeEach(async () => {
      page = await house.visit('/sets/meadow-six-10');
    });

    it('is drawn with the pull that the core reckons for every string', async () => {
      const words = await pullsOnPage().getAttribute('aria-label');
      for (const pullN of pullsOf('Meadow six, 10', metresFromInches(25.5)))
        expect(words).toContain(`pulls ${formatForce(pullN, 'N')}`);
    });

    it('follows a scale that is typed, in the unit that is chosen, and keeps the unit', async () => {
      await page.getByLabel('Scale length').fill('24.75 in');
      await page.getByText('lbf', { exact: true }).click();
      const [first = 0] = pullsOf('Meadow six, 10', metresFromInches(24.75));
      await page.getByRole('img', { name: new RegExp(`pulls ${formatForce(first, 'lbf')}`) }).waitFor();
      await page.reload();
      await page.getByRole('img', { name: /lbf/ }).waitFor();
    });

    it('fans where two lengths are given, and says what it cannot read', async () => {
      await page.getByLabel('Scale length').fill('25.5-27 in');
      await page.getByText('nut to saddle, 648 to 686 mm').waitFor();
      await page.getByLabel('Scale length').fill('64.8');
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
  });

  describe('a request', () => {
    const best = () => page.getByRole('article').first();

    function asked(cells: Readonly<Record<string, string>>): PlayerRequest {
      const whole = {
        order: 'A-1',
        quantity: '1',
        due: '2027-03-05',
        material: 'nickel-plated steel',
        likes: 'Meadow six, 10',
        ...cells,
      };
      const { lines } = readOrders(Object.keys(whole), [{ line: 2, cells: whole }], shop);
      const wanted = lines[0]?.wanted;
      if (wanted?.kind !== 'request') throw new Error('the cells make a request');
      return wanted.request;
    }

    function bestFor(cells: Readonly<Record<string, string>>): { gauges: string; totalN: number } {
      const answer = requestAnswerer(shop)({ request: asked(cells), quantity: 1, count: 3 });
      const set = answer.ok ? answer.value.sets[0] : undefined;
      if (!set) throw new Error('the shop can answer');
      return {
        gauges: gaugesInWords(set.strings.map(({ candidate }) => candidate)),
        totalN: set.totalTensionN,
      };
    }

    beforeEach(async () => {
      page = await house.visit('/request');
      await best().waitFor();
    });

    it('is answered by the three best sets of the core, and anew when the tuning changes', async () => {
      expect(await page.getByRole('article').count()).toBe(3);
      const first = bestFor({ instrument: 'electric 25.5', tuning: 'D A D F# A D' });
      expect(await best().getByRole('heading').textContent()).toBe(first.gauges);
      await page.getByLabel('Tuning, low to high').fill('D A D G A D');
      const second = bestFor({ instrument: 'electric 25.5', tuning: 'D A D G A D' });
      await best()
        .getByText(`All together ${formatForce(second.totalN, 'N')}`)
        .waitFor();
      expect(await best().getByRole('heading').textContent()).toBe(second.gauges);
      expect(second.totalN).not.toBe(first.totalN);
    });

    it('follows a slider that is moved by keyboard', async () => {
      await page.getByRole('slider', { name: 'Basses' }).focus();
      for (let step = 0; step < 12; step++) await page.keyboard.press('ArrowRight');
      await page.getByText('12 % heavier').waitFor();
      const heavier = bestFor({
        instrument: 'electric 25.5',
        tuning: 'D A D F# A D',
        wishes: 'heavier bass 12 %',
      });
      await best()
        .getByText(`All together ${formatForce(heavier.totalN, 'N')}`)
        .waitFor();
    });

    it('carries the feel of tens to a baritone in open B', async () => {
      await page.getByLabel('Instrument').fill('baritone 27');
      await page.getByLabel('Tuning, low to high').fill('open B baritone');
      await page.getByLabel('Liked at scale length').fill('25.5 in');
      const carried = bestFor({
        instrument: 'baritone 27',
        tuning: 'open B baritone',
        likesScale: '25.5 in',
      });
      await best()
        .getByText(`All together ${formatForce(carried.totalN, 'N')}`)
        .waitFor();
      expect(await best().getByRole('heading').textContent()).toBe(carried.gauges);
    });

    it('says in plain words what it cannot read, where it stands, and what it needs', async () => {
      await page.getByLabel('Tuning, low to high').fill('D A D H A D');
      const { lines: _, faults } = readOrders(
        ['order', 'quantity', 'due', 'instrument', 'tuning', 'material', 'likes'],
        [
          {
            line: 1,
            cells: {
              order: 'A-1',
              quantity: '1',
              due: '2027-03-05',
              instrument: 'electric 25.5',
              tuning: 'D A D H A D',
              material: 'nickel-plated steel',
              likes: 'Meadow six, 10',
            },
          },
        ],
        shop,
      );
      const [fault] = faults;
      if (!fault) throw new Error('an H is no note');
      await page.getByText(orderFaultWords(fault).what).first().waitFor();
      await page.getByLabel('Tuning, low to high').fill('');
      await page.getByText('No tuning is given.').first().waitFor();
      expect(await barriers(page)).toEqual([]);
    });

    it('says which string would break, and up to where it may go', async () => {
      await page.getByLabel('Scale length', { exact: true }).fill('34 in');
      await page.getByLabel('Tuning, low to high').fill('E A D G B E');
      await page
        .getByText(/would break before it reaches E4/)
        .first()
        .waitFor();
    });
  });
});
