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

  it("takes a logger's file after showing it, tells the excursion in it and what lay there", async () => {
    const page = await house.visit('/dry-room/import', { as: 'coiler', width: 1024, height: 768 });
    await page.getByLabel('Room', { exact: true }).fill('wire room');
    const rows = Array.from({ length: 36 }, (_, hour) => {
      const day = hour < 24 ? '27' : '28';
      const damp = hour >= 10 && hour < 14 ? '83.5' : '42.0';
      return `2027-02-${day} ${String(hour % 24).padStart(2, '0')}:00;20.5;${damp}`;
    });
    const bad = '2027-02-28 12:00;20.5;';
    const file = (...more: readonly string[]) => ({
      name: 'logger.csv',
      mimeType: 'text/csv',
      buffer: Buffer.from(['Logger 7', 'Date/Time;Temp;RH %', ...rows, ...more].join('\n')),
    });
    await page.getByLabel('Choose a file').setInputFiles(file(bad));
    await page.getByRole('heading', { name: '1 line to mend' }).waitFor();
    await page.getByText('Nothing is taken while a line is to be mended.').waitFor();
    expect(await barriers(page)).toEqual([]);
    await page.getByLabel('Choose a file').setInputFiles(file());
    await page.getByRole('button', { name: 'Take in 36 readings' }).click();
    await page.getByText('36 readings taken in.').waitFor();
    await page.getByRole('img', { name: /36 readings of wire room/ }).waitFor();
    await page.getByText('At times metal counts as wet').waitFor();
    const excursion = page.getByRole('region', { name: 'Out of limits' });
    await excursion.getByText('up to 83.5 %, 33.5 above the limit').waitFor();
    expect(await barriers(page)).toEqual([]);
    expect(await widerBy(page)).toBe(0);
    await excursion.getByRole('button', { name: 'What lay there' }).click();
    await page.getByRole('dialog').getByRole('row').nth(1).waitFor();
    const client = await house.client('owner');
    const air = await client.read('dry-room-air', { room: 'wire room' });
    expect(air).toMatchObject({
      value: { readingCount: 36, excursions: [{ readings: 4 }], risk: { verdict: 'wet', wetHours: 4 } },
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
