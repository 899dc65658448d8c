import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, it } from 'vitest';
import type { Client, Need } from '../../src/contract/index.js';
import { newId } from '../../src/workshop/index.js';
import { barriers, describeInBrowser, expectQuiet, type House, openHouse, widerBy } from './harness.js';

describeInBrowser('the room of today', () => {
  let house: House;
  let owner: Client;
  let page: Page;

  beforeAll(async () => {
    house = await openHouse();
    owner = await house.client('owner');
    page = await house.visit('/', { as: 'owner' });
  });
  afterAll(() => house?.close());
  afterEach(() => expectQuiet(house));

  const needs = async (client = owner): Promise<readonly Need[]> => {
    const read = await client.read('needs', {});
    if (!read.ok) throw new Error(read.fault.detail);
    return read.value.needs;
  };
  const kindsOf = (all: readonly Need[]) => new Set(all.map(({ kind }) => kind));
  const urgent = () => page.getByRole('region', { name: /^Now: / });

  it('shows everything that needs a person, the most urgent first, with counts', async () => {
    const all = await needs();
    expect(kindsOf(all).size).toBeGreaterThan(4);
    expect(await page.getByRole('listitem').count()).toBe(all.length);
    const now = all.filter(({ urgency }) => urgency === 'now');
    expect(await urgent().getByRole('listitem').count()).toBe(now.length);
    await page.getByText(`${all.length} things need you, ${now.length} of them at once.`).waitFor();
    const [first] = await page.getByRole('heading', { level: 2 }).allTextContents();
    expect(first).toContain(`Now: ${now.length}`);
  });

  it('leads from each order to where it is mended', async () => {
    const late = (await needs()).find((need) => need.kind === 'order-late');
    if (late?.kind !== 'order-late') throw new Error('an order of the demo is late');
    await page.getByRole('link', { name: `${late.number}, ${late.player}` }).click();
    await page.getByRole('heading', { level: 1, name: `Order ${late.number}` }).waitFor();
    await page.goBack();
    await urgent().waitFor();
  });

  it('says of the climate of the dry room who sets its limits', async () => {
    await page.getByRole('button', { name: /How climate of the dry room is known/ }).click();
    await page.getByText('Limits: common practice, no source').waitFor();
    await page.keyboard.press('Escape');
  });

  it('follows what happens elsewhere while it is looked at', async () => {
    const before = await page.getByRole('listitem').count();
    const packer = await house.client('packer');
    const done = await packer.perform(
      'record-dry-room',
      { id: newId(), room: 'dry room', temperatureC: 20.4, relativeHumidity: 0.41 },
      { requestId: newId() },
    );
    expect(done.ok).toBe(true);
    await page.getByRole('heading', { name: /^Dry room outside its limits/ }).waitFor({ state: 'detached' });
    expect(await page.getByRole('listitem').count()).toBe(before - 1);
  });

  it('closes a complaint where it is read, and takes the slip back', async () => {
    const complaint = (await needs()).find((need) => need.kind === 'complaint-open');
    if (complaint?.kind !== 'complaint-open') throw new Error('the demo has a complaint');
    const stateOf = async () => {
      const record = await owner.get('complaint', complaint.complaintId);
      return record.ok && record.value.state;
    };
    const item = page.getByRole('listitem').filter({ hasText: complaint.player });
    await item.getByRole('button', { name: 'Answer or close' }).click();
    expect(await barriers(page)).toEqual([]);
    await page.getByRole('button', { name: 'Close the complaint' }).click();
    await item.waitFor({ state: 'detached' });
    expect(await stateOf()).toBe('closed');
    await page.getByRole('button', { name: 'Undo' }).click();
    await item.waitFor();
    expect(await stateOf()).toBe('open');
  });

  it('shows each person what they may read, and no more', async () => {
    const coiler = await needs(await house.client('coiler'));
    expect(kindsOf(coiler)).toContain('lot-on-hold');
    for (const kind of ['order-late', 'request-waiting', 'complaint-open'] as const)
      expect(kindsOf(coiler)).not.toContain(kind);
    const adviser = kindsOf(await needs(await house.client('adviser')));
    expect(adviser).toContain('request-waiting');
    expect(adviser).not.toContain('run-paused');
  });

  it('has no barriers, and fits every screen, light and dark', async () => {
    for (const colorScheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme });
      expect(await barriers(page), colorScheme).toEqual([]);
    }
    for (const [width, height] of [
      [1440, 900],
      [1024, 768],
      [820, 1180],
    ] as const) {
      await page.setViewportSize({ width, height });
      expect(await widerBy(page), `${width}`).toBe(0);
    }
  });
});
