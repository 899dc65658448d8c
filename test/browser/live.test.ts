import { afterAll, afterEach, beforeAll, expect, it } from 'vitest';
import { describeInBrowser, expectQuiet, type House, openHouse } from './harness.js';

describeInBrowser('two people at work', () => {
  let house: House;

  beforeAll(async () => {
    house = await openHouse();
  });
  afterAll(() => house?.close());
  afterEach(() => expectQuiet(house));

  it('what one writes down appears before the other, who touches nothing', async () => {
    const adviser = await house.visit('/', { as: 'adviser' });
    const packer = await house.visit('/dry-room', { as: 'packer' });
    await packer.getByText('Table', { exact: true }).click();
    const room = adviser.getByText(/61(\.0)?(\s?%)?/);
    expect(await room.count()).toBe(0);
    const client = await house.client('packer');
    const written = await client.perform(
      'record-dry-room',
      {
        id: '01900000-0000-7000-8000-000000000061',
        room: 'dry room',
        temperatureC: 21,
        relativeHumidity: 0.61,
      },
      { requestId: '01900000-0000-7000-8000-000000000062' },
    );
    expect(written.ok).toBe(true);
    await room.first().waitFor();
    await packer
      .getByText(/61(\.0)?(\s?%)?/)
      .first()
      .waitFor();
    await adviser.context().close();
    await packer.context().close();
  });

  it('a page that lost its line catches up when the server is back', async () => {
    const page = await house.visit('/dry-room', { as: 'coiler' });
    await page.getByText('Table', { exact: true }).click();
    await house.stop();
    await house.startAgain();
    const client = await house.client('owner');
    const written = await client.perform(
      'record-dry-room',
      {
        id: '01900000-0000-7000-8000-000000000063',
        room: 'dry room',
        temperatureC: 21,
        relativeHumidity: 0.37,
      },
      { requestId: '01900000-0000-7000-8000-000000000064' },
    );
    expect(written.ok).toBe(true);
    await page
      .getByText(/\b37\.0/)
      .first()
      .waitFor({ timeout: 20_000 });
    house.complaints();
    await page.context().close();
  });
});
