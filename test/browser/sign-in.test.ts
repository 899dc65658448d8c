import { afterAll, afterEach, beforeAll, expect, it } from 'vitest';
import { barriers, describeInBrowser, expectQuiet, focusedName, type House, openHouse } from './harness.js';

describeInBrowser('coming in and going out', () => {
  let house: House;

  beforeAll(async () => {
    house = await openHouse();
  });
  afterAll(() => house?.close());
  afterEach(() => expectQuiet(house));

  it('asks whoever comes for name and password, whatever the address, and then shows that address', async () => {
    await house.client('adviser');
    const page = await house.visit('/sets');
    expect(await page.getByRole('heading', { level: 1 }).textContent()).toBe('Sign in');
    expect(await barriers(page)).toEqual([]);
    await page.getByLabel('Name').fill('Pellim Marchmere');
    await page.getByRole('textbox', { name: 'Password' }).fill('lake, mist and copper');
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { level: 1, name: 'Sets' }).waitFor();
    await page.getByRole('link', { name: 'Pellim Marchmere' }).click();
    await page.getByRole('button', { name: 'Sign out', exact: true }).click();
    await page.getByRole('heading', { level: 1, name: 'Sign in' }).waitFor();
    await page.context().close();
  });

  it('says what is wrong with a wrong password, and keeps the name', async () => {
    const page = await house.visit('/');
    await page.getByLabel('Name').fill('Pellim Marchmere');
    await page.getByRole('textbox', { name: 'Password' }).fill('not that one');
    await page.getByRole('button', { name: 'Sign in' }).click();
    await page.getByRole('alert').waitFor();
    expect(await page.getByLabel('Name').inputValue()).toBe('Pellim Marchmere');
    // The browser itself tells of the refused request.
    expect(house.complaints().every((complaint) => complaint.includes('401'))).toBe(true);
    await page.context().close();
  });

  it('remembers in which units a person sees figures, on another screen too', async () => {
    const one = await house.visit('/account', { as: 'owner' });
    const told = one.waitForResponse((response) => response.url().endsWith('/me/sight'));
    await one.getByText('lbf', { exact: true }).click();
    expect((await told).status()).toBe(200);
    const other = await house.visit('/account', { as: 'owner' });
    expect(await other.getByRole('radio', { name: 'lbf' }).isChecked()).toBe(true);
    expect(await barriers(other)).toEqual([]);
    await one.context().close();
    await other.context().close();
  });

  it('shows each role its own doors, and tells the wrong role what a room takes', async () => {
    const page = await house.visit('/coiling', { as: 'packer' });
    expect(await page.getByRole('navigation', { name: 'Floor' }).getByRole('link').allTextContents()).toEqual(
      ['Coiling', 'Packing', 'Dry room'].filter((door) => door !== 'Coiling'),
    );
    expect(await page.getByRole('heading', { level: 1 }).textContent()).toBe('Not among your rooms');
    expect(await page.getByRole('link', { name: 'Recipes' }).count()).toBe(0);
    expect(await barriers(page)).toEqual([]);
    await page.context().close();
  });

  it('brings people of the floor to the floor', async () => {
    const page = await house.visit('/', { as: 'coiler' });
    await page.waitForURL('**/coiling');
    await page.context().close();
  });

  it('finds a lot or an order by the keyboard alone', async () => {
    const client = await house.client('owner');
    const orders = await client.list('order', { limit: 1 });
    const number = orders.ok ? orders.value.items[0]!.body.number : '';
    const page = await house.visit('/sets', { as: 'owner' });
    await page.keyboard.press('/');
    expect(await focusedName(page)).toBe('Find');
    await page.keyboard.type(number);
    await page.getByRole('option').first().waitFor();
    expect(await barriers(page)).toEqual([]);
    await page.keyboard.press('Enter');
    await page.waitForURL('**/orders/*');
    await page.context().close();
  });
});

describeInBrowser('a shop that nobody has entered yet', () => {
  let house: House;

  beforeAll(async () => {
    house = await openHouse({ shop: 'empty' });
  });
  afterAll(() => house?.close());
  afterEach(() => expectQuiet(house));

  it('lets the owner in by the link of the console, once', async () => {
    const page = await house.visit('/first-sign-in');
    expect(await page.getByText('lacks what stands after its #').count()).toBe(1);
    expect(await barriers(page)).toEqual([]);
    const linked = await house.again(page, `/first-sign-in#${house.firstLink}`);
    await linked.getByLabel('New password').fill('four words, none alike');
    await linked.getByLabel('The same again').fill('four words, not alike');
    expect(await linked.getByRole('button', { name: 'Set the password' }).isDisabled()).toBe(true);
    await linked.getByLabel('The same again').fill('four words, none alike');
    await linked.getByRole('button', { name: 'Set the password' }).click();
    await linked.getByRole('link', { name: 'Owner' }).waitFor();
    const late = await house.again(page, `/first-sign-in#${house.firstLink}`);
    await late.getByLabel('New password').fill('another four words');
    await late.getByLabel('The same again').fill('another four words');
    await late.getByRole('button', { name: 'Set the password' }).click();
    await late.getByRole('alert').waitFor();
    expect(house.complaints().every((complaint) => /40[0-9]/.test(complaint))).toBe(true);
    await page.context().close();
  });
});
