import { afterAll, beforeAll, expect, it } from 'vitest';
import { barriers, describeInBrowser, expectQuiet, type House, openHouse, widerBy } from './harness.js';

describeInBrowser('the dry room', () => {
  let house: House;

  beforeAll(async () => {
    house = await openHouse();
  });
  afterAll(() => house.close());

  it('takes a reading by digits and Enter, says whether it lies within the limits, and draws it', async () => {
    const page = await house.visit('/dry-room', { as: 'packer', width: 820, height: 1180 });
    await page.getByRole('img', { name: /readings of/ }).waitFor();
    expect(await barriers(page)).toEqual([]);
    expect(await widerBy(page)).toBe(0);
    await page.getByLabel('Temperature').focus();
    await page.keyboard.type('22,4');
    await page.keyboard.press('Enter');
    await page.keyboard.type('57.5');
    await page.keyboard.press('Enter');
    await page.getByRole('alert').filter({ hasText: 'Damper than 50 %' }).waitFor();
    expect(await barriers(page)).toEqual([]);
    await page.getByText('Table', { exact: true }).click();
    await page.getByRole('row').filter({ hasText: '57.5 %' }).getByText('out of limits').waitFor();
    await page.getByText('All that was entered here is with the shop.').waitFor();
    const client = await house.client('owner');
    const readings = await client.list('dry-room-reading', { limit: 1 });
    expect(readings).toMatchObject({
      value: { items: [{ body: { temperatureC: 22.4, relativeHumidity: 0.575 } }] },
    });
    expectQuiet(house);
  });

  it('does not take what is no reading, and keeps what was typed', async () => {
    const page = await house.visit('/dry-room', { as: 'winder', scheme: 'dark' });
    await page.getByLabel('Temperature').fill('warm');
    await page.getByLabel('Relative humidity').fill('140');
    expect(await page.getByRole('button', { name: 'Write it down' }).isDisabled()).toBe(true);
    expect(await page.getByLabel('Temperature').inputValue()).toBe('warm');
    expect(await barriers(page)).toEqual([]);
    expectQuiet(house);
  });
});
