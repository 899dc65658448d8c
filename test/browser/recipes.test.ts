import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, it } from 'vitest';
import type { BodyOf, StoredRecord } from '../../src/contract/index.js';
import { barriers, describeInBrowser, expectQuiet, focusedName, type House, openHouse } from './harness.js';

/* The owner designs: from a gauge to the ways to make it, to a recipe on trial; and two owners at the same recipe. */

describeInBrowser('the recipes', () => {
  let house: House;

  beforeAll(async () => {
    house = await openHouse();
  });
  afterAll(() => house?.close());
  afterEach(() => expectQuiet(house));

  const recipeCalled = async (name: string): Promise<StoredRecord<BodyOf<'recipe'>>> => {
    const answer = await (await house.client('owner')).list('recipe', { name });
    if (!answer.ok || !answer.value.items[0]) throw new Error(`no recipe ${name}`);
    return answer.value.items[0];
  };
  const at = async (name: string) =>
    house.visit(`/recipes/${(await recipeCalled(name)).id}`, { as: 'owner' });
  const noteField = (page: Page) => page.getByLabel('Note', { exact: true });
  const recipeForm = (page: Page) => page.getByRole('region', { name: 'The recipe' });

  it('narrows the book by gauge, however it is written, and by state', async () => {
    const page = await house.visit('/recipes', { as: 'owner' });
    await page.getByLabel('Gauge').fill('.042');
    await page.getByText(/^\d of 267 recipes$/).waitFor();
    const book = page.getByRole('table', { name: 'Recipes' });
    expect(await book.getByRole('link').allTextContents()).toContain('bronze-80-20 42');
    expect(page.url()).toContain('gauge=.042');
    await page.getByLabel('State').selectOption('retired');
    await page.getByText('No recipe is like that.').waitFor();
    await page.getByRole('button', { name: 'Show all' }).click();
    await page.getByText('267 recipes', { exact: true }).waitFor();
  });

  it('scrolls through a long list to its end, drawing what is in sight', async () => {
    const page = await house.visit('/recipes', { as: 'owner' });
    const book = page.getByRole('table', { name: 'Recipes' });
    await book.getByRole('link').first().waitFor();
    await page.getByRole('group', { name: 'Recipes' }).focus();
    await page.keyboard.press('End');
    await book.locator('tr[aria-rowindex="268"]').waitFor();
    expect(await book.getByRole('link').count()).toBeLessThan(60);
    expect(await barriers(page)).toEqual([]);
  });

  it('marks in the picture what is marked in the table, and the other way round, by keys alone', async () => {
    const page = await at('bronze-80-20 42');
    const table = page.getByRole('table', { name: 'Ways to make the gauge' });
    const picture = page.getByRole('radiogroup', { name: /ways to make the gauge/ });
    const rows = table.getByRole('radio');
    await rows.nth(1).check();
    const marked = picture.getByRole('radio', { checked: true });
    const name = (await rows.nth(1).getAttribute('aria-label'))!.replace('Mark ', '');
    expect(await marked.getAttribute('aria-label')).toContain(name);
    await marked.focus();
    await page.keyboard.press('Home');
    await page.keyboard.press('ArrowRight');
    const walkedTo = (await focusedName(page)).split(':')[0];
    expect(walkedTo).not.toBe(name);
    expect(await table.getByRole('radio', { name: `Mark ${walkedTo}`, exact: true }).isChecked()).toBe(true);
    expect(await barriers(page)).toEqual([]);
  });

  it('makes a new recipe from a way that was chosen, and puts it on trial', async () => {
    const page = await house.visit('/recipes/new', { as: 'owner' });
    await page.getByLabel('Name', { exact: true }).fill('soft 44 for Tavik');
    await page.getByLabel('Gauge', { exact: true }).fill('44');
    await page.getByLabel('Material').selectOption('pure-nickel');
    await page.getByRole('radiogroup', { name: /ways to make the gauge/ }).waitFor();
    const table = page.getByRole('table', { name: 'Ways to make the gauge' });
    await table.getByRole('radio').first().check();
    await page.getByRole('button', { name: 'Take this way into the recipe' }).click();
    await page.getByRole('heading', { name: 'What it will be' }).waitFor();
    await page.getByRole('button', { name: 'Write the new recipe down' }).click();
    await page.getByRole('heading', { level: 1, name: 'soft 44 for Tavik' }).waitFor();

    await page.getByRole('button', { name: 'Put on trial' }).click();
    const sheet = page.getByRole('dialog');
    await sheet.getByLabel('Note, kept with the recipe').fill('wind six and weigh them');
    await sheet.getByRole('button', { name: 'Put on trial' }).click();
    await page.getByText('It is on trial.').waitFor();

    const written = await recipeCalled('soft 44 for Tavik');
    expect(written).toMatchObject({ state: 'on-trial', version: 2 });
    expect(written.body).toMatchObject({
      gaugeThou: 44,
      material: 'pure-nickel',
      note: 'wind six and weigh them',
    });
    expect(written.body.wrapWireIds).toHaveLength(1);
    await page.getByRole('row', { name: /State predicted on trial/ }).waitFor();
  });

  it('tells how a figure is known', async () => {
    const page = await at('bronze-80-20 42');
    await page.getByLabel('Scale').fill('27 in');
    await page.getByLabel('Tuned to').fill('B1');
    const pull = page.getByRole('button', { name: /How Pull is known/ });
    await pull.click();
    await page.getByText('T = 4 µ L² f²').waitFor();
    await page.getByText('B1, 61.74 Hz').waitFor();
  });

  const twoAtOnce = async (name: string) => {
    const one = await at(name);
    const other = await at(name);
    await noteField(one).fill('one says: softer');
    await noteField(other).fill('the other says: brighter');
    await recipeForm(one).getByRole('button', { name: 'Write it down' }).click();
    await one.getByText(/is written down as version/).waitFor();
    // The other one's page hears of it, keeps what was typed, and lays both side by side.
    const both = other.getByRole('alert', { name: /Someone changed it meanwhile/ });
    await both
      .getByRole('row', { name: /Note one says: softer the other says: brighter ▲ differs/ })
      .waitFor();
    return { one, other, both };
  };

  it('lays both versions before the second of two people, who may write theirs over it', async () => {
    const { one, other, both } = await twoAtOnce('phosphor-bronze 24');
    expect(await barriers(other)).toEqual([]);
    await both.getByRole('button', { name: 'Write mine over it' }).click();
    await other.getByText(/is written down as version/).waitFor();
    const answer = await (await house.client('owner')).versions(
      'recipe',
      (await recipeCalled('phosphor-bronze 24')).id,
    );
    const notes = answer.ok ? answer.value.items.map(({ body }) => body.note) : [];
    expect(notes.slice(-2)).toEqual(['one says: softer', 'the other says: brighter']);
    // Nothing was changed in the first one's page since, so that it follows.
    await expect.poll(() => noteField(one).inputValue()).toBe('the other says: brighter');
  });

  it('or take what stands now, and have theirs back by a touch', async () => {
    const { other, both } = await twoAtOnce('phosphor-bronze 26');
    await both.getByRole('button', { name: 'Take what stands now' }).click();
    expect(await noteField(other).inputValue()).toBe('one says: softer');
    await other.getByRole('button', { name: 'Undo' }).click();
    expect(await noteField(other).inputValue()).toBe('the other says: brighter');
    expect((await recipeCalled('phosphor-bronze 26')).body.note).toBe('one says: softer');
  });

  it('refuses the second of two people where no word of the first came, and loses nothing', async () => {
    const one = await at('phosphor-bronze 28');
    const other = await at('phosphor-bronze 28');
    await other.route('**/api/v1/events', (route) => route.abort());
    await other.reload();
    await noteField(other).fill('the other says: brighter');
    await noteField(one).fill('one says: softer');
    await recipeForm(one).getByRole('button', { name: 'Write it down' }).click();
    await one.getByText(/is written down as version/).waitFor();
    await recipeForm(other).getByRole('button', { name: 'Write it down' }).click();
    const both = other.getByRole('alert', { name: /Someone changed it meanwhile/ });
    await both.getByRole('row', { name: /Note one says: softer the other says: brighter/ }).waitFor();
    expect(await noteField(other).inputValue()).toBe('the other says: brighter');
    expect((await recipeCalled('phosphor-bronze 28')).body.note).toBe('one says: softer');
    // Its page would go on asking for the line that was cut.
    await other.close();
    const others = house.complaints().filter((complaint) => !/412|ERR_FAILED/.test(complaint));
    expect(others).toEqual([]);
  });

  it('shows the adviser everything and lets the adviser change nothing', async () => {
    const { id } = await recipeCalled('bronze-80-20 42');
    const page = await house.visit(`/recipes/${id}`, { as: 'adviser' });
    await page.getByRole('heading', { name: 'What it will be' }).waitFor();
    expect(await page.getByRole('button', { name: 'Write it down' }).count()).toBe(0);
    expect(await page.getByRole('button', { name: 'Retire it' }).count()).toBe(0);
    await page.getByText('None of its steps is yours to take.').waitFor();
  });
});
