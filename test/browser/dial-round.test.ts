import { afterAll, beforeAll, expect, it } from 'vitest';
import { dialTableOf } from '../../src/core/winding/index.js';
import { allSent } from './floor.js';
import { answered, barriers, describeInBrowser, expectQuiet, type House, openHouse } from './harness.js';

describeInBrowser('measuring the dial of an old machine', () => {
  let house: House;

  beforeAll(async () => {
    house = await openHouse();
  });
  afterAll(() => house.close());

  it('leads a winder from number to number by digits and Enter, without a line, up to a table that the owner adopts', async () => {
    const owner = await house.client('owner');
    const machines = await answered(owner.list('machine', { limit: 50 }));
    const heron = machines.items.find(({ body }) => body.name.startsWith('Old Heron'))!;
    const before = dialTableOf(heron.body as never, 'traverse')!;
    const page = await house.visit(`/machine/dial?machine=${heron.id}`, {
      as: 'winder',
      width: 820,
      height: 1180,
    });
    await page.getByLabel('Lowest number').fill('10');
    await page.getByLabel('Highest number').fill('40');
    await page.getByLabel('How many numbers').fill('3');
    expect(await barriers(page)).toEqual([]);
    await page.getByLabel('How many numbers').press('Enter');
    await page.getByText('Turn back to').waitFor();
    await allSent(page, 20_000);

    // The hands stay on the keys: start, turns, end; the box lays 2 % more than its table says.
    await page.context().setOffline(true);
    for (let read = 0; read < 6; read++) {
      const dial = [10, 25, 40][read % 3]!;
      await page.getByRole('form', { name: `Read at ${dial}` }).waitFor();
      await page.keyboard.type('50');
      await page.keyboard.press('Enter');
      await page.getByLabel('Where the guide stands now').waitFor();
      const turns = Number(await page.getByLabel('Turns counted').inputValue());
      const perTurnM = 1.02 * before.find((row) => row.dial === dial)!.value;
      await page.keyboard.type((50 + turns * perTurnM * 1000).toFixed(3));
      await page.keyboard.press('Enter');
    }
    await page.getByText('Every number is read').waitFor();
    await page.getByText('otherwise than the table in force says').waitFor();
    await page.getByText('Readings wait on this screen').waitFor();
    expect(await barriers(page)).toEqual([]);
    await page.context().setOffline(false);
    await allSent(page, 45_000);
    await page.getByText('An owner looks at it').waitFor();

    house.complaints();
    const desk = await house.visit(`/machine/dial?machine=${heron.id}`, { as: 'owner' });
    await desk.getByRole('button', { name: 'Set the machine by this table' }).click();
    await desk.getByText('is set by the measured table').waitFor();
    const now = await answered(owner.get('machine', heron.id));
    const after = dialTableOf(now.body as never, 'traverse')!;
    expect(after.map(({ dial }) => dial)).toEqual([10, 25, 40]);
    for (const { dial, value } of after)
      expect(value / before.find((row) => row.dial === dial)!.value).toBeCloseTo(1.02, 3);
    await desk.getByRole('button', { name: 'Undo' }).click();
    await desk.getByText('Every number is read').waitFor();
    const back = await answered(owner.get('machine', heron.id));
    expect(dialTableOf(back.body as never, 'traverse')).toEqual(before);
    expectQuiet(house);
  });
});
