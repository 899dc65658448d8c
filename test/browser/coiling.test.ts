import { afterAll, beforeAll, expect, it } from 'vitest';
import type { Client } from '../../src/contract/index.js';
import { allSent, scan } from './floor.js';
import {
  answered,
  barriers,
  describeInBrowser,
  expectQuiet,
  type House,
  openHouse,
  widerBy,
} from './harness.js';

describeInBrowser('a coiler’s day', () => {
  let house: House;
  let owner: Client;

  beforeAll(async () => {
    house = await openHouse();
    owner = await house.client('owner');
  });
  afterAll(() => house.close());

  it('looks a lot through: counts, rejects by reason, takes a slip back, releases', async () => {
    const lot = await lotInCheck(owner, 0);
    const { made, name } = lot.body;
    const page = await house.visit('/coiling', { as: 'coiler', width: 1024, height: 768 });
    expect(await barriers(page)).toEqual([]);
    await scan(page, 'no such lot');
    await page.getByRole('alert').filter({ hasText: 'Not a lot to be coiled' }).waitFor();
    await scan(page, name);
    await page.getByText(name).first().waitFor();
    await page.getByText(`${made} in `).waitFor();
    expect(await barriers(page)).toEqual([]);
    expect(await widerBy(page)).toBe(0);

    await page.getByRole('button', { name: 'gap in the wrap' }).click();
    await page.getByText(`${made - 1} in `).waitFor();
    await page.getByRole('button', { name: 'kinked core' }).click();
    await page.getByText(`${made - 2} in `).waitFor();
    await page.getByRole('button', { name: 'Undo: Rejected: kinked core' }).click();
    await page.getByText(`${made - 1} in `).waitFor();
    await scan(page, '3');
    await page.getByRole('button', { name: 'Release it for packing' }).click();
    await page.getByText('This lot is released').waitFor();
    await allSent(page);

    const tallies = await answered(owner.read('tallies', { lotId: lot.id }));
    expect(tallies.items.map(({ outcome, reason, count }) => `${outcome} ${reason} ${count}`)).toEqual([
      'scrap gap in the wrap 1',
      `good  ${made - 1}`,
    ]);
    const balances = await answered(owner.read('balances', { accountPrefix: 'bin/', lot: lot.id }));
    expect(balances.items.reduce((sum, { quantity }) => sum + quantity, 0)).toBe(made - 1);
    expect((await answered(owner.get('string-lot', lot.id))).state).toBe('released');
    expectQuiet(house);
  });

  it('holds a lot back, and says why to whoever opens it next', async () => {
    const lot = await lotInCheck(owner, 0);
    const page = await house.visit(`/coiling?lot=${lot.id}`, {
      as: 'coiler',
      width: 820,
      height: 1180,
      scheme: 'dark',
    });
    await page.getByRole('button', { name: 'Hold it back' }).click();
    await page.getByLabel('Why is it held?').fill('ends loosen when bent');
    await page.keyboard.press('Enter');
    await page.getByText('held: ends loosen when bent').waitFor();
    await allSent(page);
    expect(await answered(owner.get('string-lot', lot.id))).toMatchObject({
      state: 'on-hold',
      body: { holdReason: 'ends loosen when bent' },
    });
    await page.getByRole('link', { name: 'All lots' }).click();
    await page.getByRole('region', { name: 'On hold' }).getByText('ends loosen when bent').waitFor();
    expect(await barriers(page)).toEqual([]);
    expectQuiet(house);
  });

  it('is no room for the packer', async () => {
    const page = await house.visit('/coiling', { as: 'packer' });
    await page.getByRole('heading', { level: 1, name: 'Not among your rooms' }).waitFor();
    expectQuiet(house);
  });
});

/** Of wound strings, so that the reasons are those of a wrap. */
async function lotInCheck(client: Client, at: number) {
  const { items } = await answered(
    client.list('string-lot', { state: 'in-check', order: 'oldest', limit: 100 }),
  );
  const lot = items.filter(({ body }) => body.spec.kind === 'wound' && body.made > 3)[at];
  if (!lot) throw new Error('no lot is in check');
  return lot;
}
