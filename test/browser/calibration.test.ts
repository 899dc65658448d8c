import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, it } from 'vitest';
import type { CalibrationView } from '../../src/contract/index.js';
import { newId } from '../../src/workshop/index.js';
import { barriers, describeInBrowser, expectQuiet, type House, openHouse, widerBy } from './harness.js';

/* The owner sees what the shop's strings teach, and takes it in; a winder sees it and cannot. */

describeInBrowser('what our strings teach', () => {
  let house: House;

  beforeAll(async () => {
    house = await openHouse();
  });
  afterAll(() => house?.close());
  afterEach(() => expectQuiet(house));

  const seen = async (): Promise<CalibrationView> => {
    const answer = await (await house.client('owner')).read('calibration', {});
    if (!answer.ok) throw new Error(answer.fault.code);
    return answer.value;
  };
  const enter = async (as: 'owner' | 'winder'): Promise<Page> => {
    const page = await house.visit('/calibration', { as });
    await page.getByRole('heading', { name: 'Predicted and measured' }).waitFor();
    return page;
  };
  const settings = async () => {
    const answer = await (await house.client('owner')).list('settings', {});
    if (!answer.ok || !answer.value.items[0]) throw new Error('the shop has no settings');
    return answer.value.items[0];
  };

  /** A recipe that meets the rule, but is only on trial. */
  const backOnTrial = async (): Promise<string> => {
    const ready = (await seen()).recipes.find(({ mayBeCalibrated }) => mayBeCalibrated);
    if (!ready) throw new Error('no recipe of this fortnight meets the rule');
    const owner = await house.client('owner');
    let { version } = ready;
    for (const step of ready.state === 'on-trial' ? [] : (['retire', 'revive', 'try'] as const)) {
      const answer = await owner.perform(
        'step-recipe',
        { id: ready.recipeId, expectedVersion: version, step, note: '' },
        { requestId: newId() },
      );
      if (!answer.ok) throw new Error(answer.fault.code);
      version = answer.value.version;
    }
    return ready.recipeId;
  };

  it('is reached from the recipes, and goes on to the run of a string', async () => {
    const page = await house.visit('/recipes', { as: 'owner' });
    await page.getByRole('link', { name: 'What our strings teach' }).click();
    await page.getByRole('heading', { level: 1, name: 'What our strings teach' }).waitFor();
    const part = page.getByRole('region', { name: 'Predicted and measured' });
    await part.getByRole('img', { name: /across what was predicted/ }).waitFor();
    await part.getByText('Table', { exact: true }).click();
    const { diameters } = await seen();
    const first = part.getByRole('table').getByRole('link').first();
    await first.waitFor();
    const runs = diameters.points.map(({ runId }) => `/runs/${runId}`);
    expect(runs).toContain(await first.getAttribute('href'));
    expect(await barriers(page)).toEqual([]);
    await first.click();
    await page.waitForURL('**/runs/**');
    await page.context().close();
  });

  it('tells of a family what was believed before and what is known now', async () => {
    const page = await enter('owner');
    const { families } = await seen();
    const part = page.getByRole('region', { name: 'Families' });
    const [first, other] = await part
      .getByRole('table', { name: 'Families', exact: true })
      .getByRole('rowheader')
      .all();
    expect(families.length).toBeGreaterThan(1);
    const name = await other!.getByRole('button').textContent();
    await other!.getByRole('button').click();
    const learned = part.getByRole('table', { name: `What was learned of ${name}` });
    await learned.getByRole('row', { name: /Height of a turn/ }).waitFor();
    const flattening = families[1]!.unknowns.find((each) => each.name === 'flattening')!;
    expect(await learned.getByRole('row', { name: /Height of a turn/ }).textContent()).toContain(
      flattening.now.value.toFixed(4),
    );
    await learned.getByRole('button', { name: /How Height of a turn/ }).click();
    await page.getByText(/hierarchical regression, 90 % interval/).waitFor();
    expect(await first!.getByRole('button').getAttribute('aria-current')).toBe('false');
    await page.context().close();
  });

  it('can be seen by a winder, who is not asked to take it in', async () => {
    const page = await enter('winder');
    await page.getByRole('heading', { name: 'What to measure next' }).waitFor();
    expect(await page.getByRole('button', { name: 'Take these in' }).count()).toBe(0);
    await page.context().close();
  });

  it('refuses an owner over settings changed meanwhile, loses nothing, and takes it in when told again', async () => {
    const recipeId = await backOnTrial();
    const before = await seen();
    const recipe = before.recipes.find((each) => each.recipeId === recipeId)!;
    expect(recipe.suggests).toBe('calibrate');
    const page = await enter('owner');
    // Left out at first: a person chooses.
    const choice = page.getByRole('checkbox', { name: recipe.name, exact: true });
    await choice.uncheck();
    await page.getByRole('button', { name: 'Take these in' }).click();
    const sheet = page.getByRole('dialog', { name: 'Take these in' });
    expect(await barriers(page)).toEqual([]);

    const stood = await settings();
    const owner = await house.client('owner');
    const body = { ...stood.body, rules: { ...stood.body.rules, dayStartsAtMinute: 425 } };
    const other = await owner.perform(
      'save-settings',
      { id: stood.id, expectedVersion: stood.version, body },
      { requestId: newId() },
    );
    expect(other.ok).toBe(true);
    await sheet.getByRole('button', { name: 'Take them in' }).click();
    await sheet.getByText(/Nothing was written/).waitFor();
    expect((await settings()).body.seat?.families).toBeUndefined();
    house.complaints();

    await sheet.getByRole('button', { name: 'Go by what stands now' }).click();
    await sheet.getByRole('button', { name: 'Take them in' }).click();
    await page.getByText(/^Taken in\./).waitFor();
    const after = await settings();
    expect(after.version).toBe(stood.version + 2);
    expect(after.body.rules.dayStartsAtMinute).toBe(425);
    expect(after.body.seat?.families?.length).toBeGreaterThan(0);
    const still = await owner.get('recipe', recipeId);
    expect(still.ok && still.value.state).toBe('on-trial');
    const wound = before.families.reduce((sum, { strings }) => sum + strings, 0);
    await page.getByText(`The shop reckons by what ${wound} measured wound strings taught.`).waitFor();

    // Left out before, taken in now: the shop says what it did.
    await choice.waitFor();
    await choice.check();
    await page.getByRole('button', { name: 'Take these in' }).click();
    await sheet.getByRole('listitem').filter({ hasText: recipe.name }).waitFor();
    await sheet.getByRole('button', { name: 'Take them in' }).click();
    await page.getByText('Taken in. 1 recipe is called calibrated.').waitFor();
    const called = await owner.get('recipe', recipeId);
    expect(called.ok && called.value.state).toBe('calibrated');
    await page.context().close();
  });

  it.each(['light', 'dark'] as const)('fits every screen in the %s', async (scheme) => {
    const page = await house.visit('/calibration', { as: 'owner', scheme });
    await page.getByRole('heading', { name: 'What to measure next' }).waitFor();
    expect(await barriers(page)).toEqual([]);
    for (const [width, height] of [
      [1440, 900],
      [1024, 768],
      [820, 1180],
      [720, 450],
    ] as const) {
      await page.setViewportSize({ width, height });
      expect(await widerBy(page), `wider than ${width}`).toBe(0);
    }
    await page.context().close();
  });
});
