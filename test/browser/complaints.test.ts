import { afterAll, beforeAll, expect, it } from 'vitest';
import { barriers, describeInBrowser, expectQuiet, type House, openHouse, widerBy } from './harness.js';

describeInBrowser('complaints', () => {
  let house: House;

  beforeAll(async () => {
    house = await openHouse();
  });
  afterAll(() => house.close());

  it('are written down from a letter with the pack found by its order, traced, answered, closed and opened again', async () => {
    const owner = await house.client('owner');
    const shipped = await owner.list('order', { state: 'shipped', limit: 1 });
    if (!shipped.ok) throw new Error('an order was shipped in the fortnight');
    const [order] = shipped.value.items;
    const page = await house.visit('/complaints/new', { as: 'adviser' });
    await page.getByLabel('Player', { exact: true }).fill(order!.body.player);
    await page.getByLabel('What they write').fill('The wrap of the lowest one slips.');
    await page.getByLabel('What the player notices').selectOption('wrap came loose');
    // Whoever looks elsewhere finds the letter again.
    await page.getByRole('link', { name: 'Orders', exact: true }).click();
    await page.getByRole('heading', { name: 'Orders', level: 1 }).waitFor();
    await page.goBack();
    await page.getByText('The wrap of the lowest one slips.').waitFor();
    await page.getByLabel('Find the pack').fill(order!.body.number);
    await page.getByRole('button', { name: `Order ${order!.body.number}` }).click();
    await page.getByRole('button', { name: 'Take it' }).first().click();
    await page.getByLabel('Which string of it').selectOption({ index: 1 });
    expect(await barriers(page)).toEqual([]);
    await page.getByRole('button', { name: 'Write it down' }).click();
    await page.getByRole('heading', { name: `Complaint of ${order!.body.player}` }).waitFor();
    await page.getByRole('region', { name: 'Where it leads' }).getByText('this one').waitFor();
    await page.getByLabel('What we answer').fill('A new set is on its way.');
    expect(await barriers(page)).toEqual([]);
    expect(await widerBy(page)).toBe(0);
    await page.getByRole('button', { name: 'Write the answer down' }).click();
    await page.getByRole('button', { name: 'Close it' }).click();
    await page.getByLabel('Why', { exact: true }).fill('it came back');
    await page.getByRole('button', { name: 'Open it again' }).click();
    await page.getByText('The complaint is open again.').waitFor();
    const kept = await owner.list('complaint', { limit: 1 });
    expect(kept).toMatchObject({
      value: {
        items: [
          {
            state: 'open',
            version: 4,
            body: { faultCode: 'wrap-loose', position: 1, answer: 'A new set is on its way.' },
          },
        ],
      },
    });
    await page.getByRole('link', { name: 'All complaints' }).click();
    await page.getByRole('heading', { name: 'Per thousand strings' }).waitFor();
    await page.getByLabel('Fault', { exact: true }).selectOption('wrap came loose');
    await page.getByRole('searchbox', { name: 'Find' }).fill(order!.body.player.slice(0, 6));
    await page.getByRole('link', { name: order!.body.player }).first().waitFor();
    expect(await barriers(page)).toEqual([]);
    expect(await widerBy(page)).toBe(0);
    expectQuiet(house);
  });
});
