import { afterAll, afterEach, beforeAll, expect, it } from 'vitest';
import type { ListValues, ReadingAnswer } from '../../src/contract/index.js';
import { barriers, describeInBrowser, expectQuiet, type House, openHouse } from './harness.js';

/* Wire comes in and is weighed; strings are judged, moved and counted. What the books say afterwards is asked of the shop. */

describeInBrowser('wire and strings', () => {
  let house: House;

  beforeAll(async () => {
    house = await openHouse();
  });
  afterAll(() => house?.close());
  afterEach(() => expectQuiet(house));

  const spools = async (query: ListValues) => {
    const answer = await (await house.client('owner')).list('spool', { limit: 500, ...query });
    if (!answer.ok) throw new Error(answer.fault.detail);
    return answer.value.items;
  };
  const onBookMg = async (spoolId: string): Promise<number> => {
    const answer = await (await house.client('owner')).read('balances', { account: `spool/${spoolId}` });
    if (!answer.ok) throw new Error(answer.fault.detail);
    return answer.value.items.find(({ unit }) => unit === 'mg')?.quantity ?? 0;
  };
  type Lying = ReadingAnswer<'strings-lying'>['items'];
  const lying = async (): Promise<Lying> => {
    const answer = await (await house.client('owner')).read('strings-lying', {});
    if (!answer.ok) throw new Error(answer.fault.detail);
    return answer.value.items;
  };
  const lot = async (id: string) => {
    const answer = await (await house.client('owner')).get('string-lot', id);
    if (!answer.ok) throw new Error(answer.fault.detail);
    return answer.value;
  };

  it('takes a spool in from a scale that types, and holds its certificate against the standard', async () => {
    const page = await house.visit('/wire', { as: 'winder' });
    await page.getByRole('button', { name: 'Receive a spool' }).click();
    const sheet = page.getByRole('dialog');
    await sheet.getByLabel('Wire', { exact: true }).selectOption('round steel 10');
    expect(await sheet.getByLabel('Name, as written on the spool').inputValue()).toMatch(
      /^round steel 10 \/ \d+$/,
    );
    await sheet.getByLabel('Maker’s lot').fill('heat 5519');
    await sheet.getByLabel('Diameter, thou').fill('10.4');
    await sheet.getByText(/more than the ± .* of ASTM A228/).waitFor();
    await sheet.getByLabel('Diameter, thou').fill('0,2545 mm');
    await sheet.getByText(/within the ± .* of ASTM A228/).waitFor();
    await sheet.getByLabel('Weight with the spool, kg').focus();
    await page.keyboard.type('4,346');
    await page.keyboard.press('Enter');
    await page.keyboard.type('310 g');
    await page.keyboard.press('Enter');
    await sheet.getByText(/4\.04 kg of wire/).waitFor();
    expect(await barriers(page)).toEqual([]);
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { level: 1, name: /^round steel 10/ }).waitFor();
    const [taken] = await spools({ lot: 'heat 5519' });
    expect(taken?.body).toMatchObject({ tareKg: 0.31, weighed: { grossKg: 4.346 } });
    expect(taken?.body.certificate?.diameterM).toBeCloseTo(0.0002545, 9);
    expect(await onBookMg(taken!.id)).toBe(4_036_000);
  });

  it('tells of every wire how long it lasts, and warns of the same that the day warns of', async () => {
    const asked = await house.client('owner');
    const covers = await asked.read('wire-cover', {});
    const needs = await asked.read('needs', {});
    if (!covers.ok || !needs.ok) throw new Error('not told');
    const short = covers.value.items.filter(
      ({ coverDays, wantedDays }) => coverDays !== undefined && coverDays < wantedDays,
    );
    const warned = needs.value.needs.flatMap((need) => (need.kind === 'wire-low' ? [need.wireId] : []));
    expect(warned.toSorted()).toEqual(short.map(({ wireId }) => wireId).toSorted());
    expect(short.length).toBeGreaterThan(0);
    const page = await house.visit('/wire', { as: 'adviser' });
    await page.getByLabel('Only what runs short').check();
    await page.getByText(new RegExp(`^${short.length} wires? on`)).waitFor();
    const lasts = page.getByRole('button', { name: `How how long ${short[0]!.name} lasts is known` });
    expect(await lasts.textContent()).toContain('runs short');
    expect(await page.getByRole('button', { name: 'Receive a spool' }).count()).toBe(0);
  });

  it('shows how scale and books differ before the difference is written', async () => {
    const [spool] = await spools({ state: 'on-shelf' });
    const before = await onBookMg(spool!.id);
    const page = await house.visit(`/wire?spool=${spool!.id}`, { as: 'winder' });
    await page.getByRole('button', { name: 'Weigh', exact: true }).click();
    const sheet = page.getByRole('dialog');
    const grossKg = before / 1e6 + spool!.body.tareKg - 0.025;
    await sheet.getByLabel('Weight with the spool, kg').fill(grossKg.toFixed(6));
    await sheet.getByText('-25 g').waitFor();
    expect(await onBookMg(spool!.id)).toBe(before);
    await page.keyboard.press('Enter');
    await page.keyboard.press('Enter');
    await page.getByText(/is weighed: -25 g against the books/).waitFor();
    expect(await onBookMg(spool!.id)).toBe(before - 25_000);
  });

  it('keeps a spool from use with the reason, and takes a slip back', async () => {
    const [spool] = await spools({ state: 'on-shelf' });
    const page = await house.visit(`/wire?spool=${spool!.id}`, { as: 'owner' });
    await page.getByRole('button', { name: 'Put in quarantine' }).click();
    const sheet = page.getByRole('dialog');
    await sheet.getByLabel('Why').fill('rust under the outer turns');
    await sheet.getByRole('button', { name: 'Put in quarantine' }).click();
    await page.getByText('In quarantine: rust under the outer turns').waitFor();
    const now = async () => (await spools({ name: spool!.body.name }))[0]?.state;
    expect(await now()).toBe('quarantined');
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(now).toBe('on-shelf');
  });

  it('calls a spool empty, and writes what the books still had as a difference', async () => {
    const spool = (await spools({ state: 'on-shelf' })).at(-1)!;
    const page = await house.visit(`/wire?spool=${spool.id}`, { as: 'owner' });
    await page.getByRole('button', { name: 'Call it empty' }).click();
    await page.getByRole('dialog').getByRole('button', { name: 'Call it empty' }).click();
    await page.getByText('is called empty').waitFor();
    expect((await spools({ name: spool.body.name }))[0]?.state).toBe('empty');
    expect(await onBookMg(spool.id)).toBe(0);
  });

  it('releases a lot in the coiler’s name, and asks for a reason', async () => {
    const waiting = (await lying()).find(({ state }) => state === 'in-check')!;
    const page = await house.visit('/strings', { as: 'coiler' });
    await page
      .getByRole('table', { name: 'Lots that wait for a word' })
      .getByRole('link', { name: waiting.lot })
      .click();
    await page.getByRole('heading', { level: 1, name: waiting.lot }).waitFor();
    await page.getByRole('button', { name: 'Release' }).click();
    const sheet = page.getByRole('dialog');
    expect(await sheet.getByRole('button', { name: 'Release' }).isDisabled()).toBe(true);
    await sheet.getByLabel('Why').fill('checked and plucked');
    await sheet.getByRole('button', { name: 'Release' }).click();
    await page.getByText(/^Released by /).waitFor();
    expect(await lot(waiting.lotId)).toMatchObject({ state: 'released' });
  });

  it('moves strings to another bin, and carries a slip back', async () => {
    const held = (await lying()).find(({ state, count }) => state === 'released' && count > 3)!;
    const page = await house.visit(`/strings?lot=${held.lotId}`, { as: 'packer' });
    await page.getByRole('button', { name: 'Move' }).first().click();
    const sheet = page.getByRole('dialog');
    const choices = await sheet.getByLabel('To bin').locator('option').allTextContents();
    await sheet.getByLabel('To bin').selectOption(choices[1]!);
    await sheet.getByLabel('How many').fill('999');
    await sheet.getByText(/^From 1 to /).waitFor();
    await sheet.getByLabel('How many').fill('3');
    await sheet.getByRole('button', { name: 'Move' }).click();
    await page.getByText(`3 moved to ${choices[1]}.`).waitFor();
    const there = async () =>
      (await lying()).find(({ lotId, binId }) => lotId === held.lotId && binId === held.binId)?.count;
    expect(await there()).toBe(held.count - 3);
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(there).toBe(held.count);
  });

  it('counts a bin lot by lot: the difference first, then the reason, then the books', async () => {
    const items = await lying();
    const of = (binId: string) => items.filter((one) => one.binId === binId);
    const { binId } = items.find((one) => of(one.binId).length > 1)!;
    const [one, two] = of(binId);
    const page = await house.visit(`/strings?bin=${binId}`, { as: 'packer' });
    await page.getByLabel(`Counted of ${one!.lot}`).fill(String(one!.count));
    await page.getByLabel(`Counted of ${two!.lot}`).fill(String(two!.count + 2));
    await page.getByText('2 counted, 1 differ from the books.').waitFor();
    await page.getByRole('cell', { name: '+2' }).waitFor();
    const write = page.getByRole('button', { name: 'Write the count' });
    expect(await write.isDisabled()).toBe(true);
    await page.getByLabel('Why it differs').fill('two found behind the rack');
    expect(await barriers(page)).toEqual([]);
    await write.click();
    await page.getByText(/^The count of .* is written/).waitFor();
    const after = (await lying()).filter((each) => each.binId === binId);
    expect(after.find(({ lotId }) => lotId === two!.lotId)?.count).toBe(two!.count + 2);
    expect(after.find(({ lotId }) => lotId === one!.lotId)?.count).toBe(one!.count);
  });

  it('enters strings that no run made', async () => {
    const page = await house.visit('/strings', { as: 'owner' });
    await page.getByRole('button', { name: 'Enter a lot' }).click();
    const sheet = page.getByRole('dialog');
    await sheet.getByLabel('Name of the lot').fill('found in the drawer');
    await sheet.getByLabel('Gauge').fill('10');
    await sheet.getByLabel('Kind').selectOption('plain');
    await sheet.getByLabel('Bin').selectOption('new strings');
    await sheet.getByLabel('Strings counted').fill('7');
    await sheet.getByLabel('Why they are entered').fill('they lay there before the records');
    await sheet.getByRole('button', { name: 'Enter it' }).click();
    await page.getByRole('heading', { level: 1, name: 'found in the drawer' }).waitFor();
    expect((await lying()).find((one) => one.lot === 'found in the drawer')).toMatchObject({
      count: 7,
      state: 'released',
    });
  });

  it('tells the record of a run, in a picture and as a table', async () => {
    const answer = await (await house.client('owner')).list('run', { state: 'closed', limit: 1 });
    const run = answer.ok ? answer.value.items[0]! : undefined;
    const page = await house.visit(`/runs/${run!.id}`, { as: 'winder' });
    await page.getByRole('img', { name: /Diameters of \d+ strings/ }).waitFor();
    await page.getByText('Table', { exact: true }).click();
    const readings = page.getByRole('table', { name: 'Diameter through the run' });
    await readings.getByRole('rowheader', { name: 'trial 1' }).waitFor();
    await page.getByRole('table', { name: 'Wire used' }).getByRole('link').first().waitFor();
    expect(await barriers(page)).toEqual([]);
  });
});
