import { afterAll, afterEach, beforeAll, expect, it } from 'vitest';
import {
  barriers,
  describeInBrowser,
  expectQuiet,
  type House,
  openHouse,
  roomIsThere,
  widerBy,
} from './harness.js';

/* The owner keeps the shop: people and their keys, machines, rules; and looks up who did what. */

describeInBrowser('the shop’s own room', () => {
  let house: House;

  beforeAll(async () => {
    house = await openHouse();
  });
  afterAll(() => house?.close());
  afterEach(() => expectQuiet(house));

  const recordCalled = async <Kind extends 'person' | 'machine' | 'bin' | 'tuning' | 'wire'>(
    kind: Kind,
    name: string,
  ) => {
    const answer = await (await house.client('owner')).list(kind, { name });
    if (!answer.ok || !answer.value.items[0]) throw new Error(`no ${kind} ${name}`);
    return answer.value.items[0];
  };

  it('takes a person in with a link that is shown once and opens the first sign-in', async () => {
    const page = await house.visit('/shop/people', { as: 'owner' });
    await page.getByRole('button', { name: 'Take somebody in' }).click();
    const sheet = page.getByRole('dialog');
    await sheet.getByLabel('Name, as used for signing in').fill('Odda Fenwhistle');
    await sheet.getByLabel('coiler').check();
    await sheet.getByRole('button', { name: 'Take in and make the link' }).click();
    const link = (await sheet.locator('code').textContent())!;
    expect(link.startsWith(`${new URL(house.url).origin}/first-sign-in#`)).toBe(true);
    expect(await barriers(page)).toEqual([]);

    const theirs = await house.visit(new URL(link).pathname + new URL(link).hash);
    await theirs.getByLabel('New password').fill('heron, copper, morning');
    await theirs.getByLabel('The same again').fill('heron, copper, morning');
    await theirs.getByRole('button', { name: 'Set the password and sign in' }).click();
    await theirs.getByRole('link', { name: 'Coiling' }).first().waitFor();
    expect((await recordCalled('person', 'Odda Fenwhistle')).body).toMatchObject({
      roles: ['coiler'],
      active: true,
    });
  });

  it('changes roles, lets a person go and takes the person back', async () => {
    const page = await house.visit('/shop/people', { as: 'owner' });
    const row = page.getByRole('row', { name: /Imbra Sedgeholt/ });
    await row.getByRole('button', { name: 'Change' }).click();
    await page.getByRole('dialog').getByLabel('coiler').check();
    await page.getByRole('dialog').getByRole('button', { name: 'Write it down' }).click();
    await row.getByText('winder, coiler').waitFor();
    await row.getByRole('button', { name: 'Let go' }).click();
    await row.getByText('let go').waitFor();
    expect((await recordCalled('person', 'Imbra Sedgeholt')).body.active).toBe(false);
    await page.getByRole('button', { name: 'Undo' }).last().click();
    await row.getByText('may sign in').waitFor();
    expect((await recordCalled('person', 'Imbra Sedgeholt')).body).toMatchObject({
      roles: ['winder', 'coiler'],
      active: true,
    });
  });

  it('enrols the device that it is looked at on, and ends that again', async () => {
    const page = await house.visit('/shop/devices', { as: 'owner' });
    await page.getByLabel('What people call it').fill('tablet by Old Heron');
    await page.getByRole('button', { name: 'Enrol this device' }).click();
    const row = page.getByRole('row', { name: /tablet by Old Heron \(this one\)/ });
    await row.getByRole('button', { name: 'End it' }).click();
    await page.getByRole('dialog').getByRole('button', { name: 'End it' }).click();
    await page.getByRole('row', { name: /tablet by Old Heron.*ended/ }).waitFor();
  });

  it('makes a token that may do no more than it was given, and ends it', async () => {
    const page = await house.visit('/shop/tokens', { as: 'owner' });
    await page.getByRole('button', { name: 'Make a token' }).click();
    const sheet = page.getByRole('dialog');
    await sheet.getByLabel('What the script is for').fill('the stock list on the wall');
    await sheet.getByLabel('stock.read').check();
    await sheet.getByRole('button', { name: 'Make it' }).click();
    const token = (await sheet.locator('code').textContent())!;
    await sheet.getByRole('button', { name: 'Close' }).click();
    const ask = (path: string) =>
      fetch(`${house.url}api/v1${path}`, { headers: { authorization: `Bearer ${token}` } });
    expect((await ask('/balances')).status).toBe(200);
    expect((await ask('/orders')).status).toBe(403);
    await page
      .getByRole('row', { name: /the stock list/ })
      .getByRole('button', { name: 'End it' })
      .click();
    await page.getByRole('dialog').getByRole('button', { name: 'End it' }).click();
    await page.getByRole('row', { name: /the stock list.*ended/ }).waitFor();
    expect((await ask('/balances')).status).toBe(401);
  });

  it('shows the calibration of a gearbox, and refuses a table that turns back', async () => {
    const page = await house.visit('/shop/machines', { as: 'owner' });
    await page.getByRole('button', { name: 'Old Heron (gearbox)' }).click();
    await page.getByRole('img', { name: /measured rows, traverse from/ }).waitFor();
    await page.getByRole('img', { name: /Rows off their trend/ }).waitFor();
    expect(await barriers(page)).toEqual([]);
    const table = page.getByLabel('Measured: dial and traverse per turn in mm, a line each');
    const before = await table.inputValue();
    await table.fill(`${before}\n70 0.01`);
    await page.getByText('No curve can be laid through these rows').waitFor();
    await page.getByRole('button', { name: 'Write it down' }).click();
    await page.getByRole('alert').waitFor();
    // What was typed is still there to be mended.
    expect(await table.inputValue()).toContain('70 0.01');
    await table.fill(`${before}\n61 0.8`);
    await page.getByRole('button', { name: 'Write it down' }).click();
    await page.getByText('Old Heron (gearbox) is written down.').waitFor();
    const { body } = await recordCalled('machine', 'Old Heron (gearbox)');
    expect('dialTable' in body ? body.dialTable.at(-1) : undefined).toEqual({
      dial: 61,
      traversePerTurnM: 0.0008,
    });
    // A refusal is all that the browser had to tell of.
    expect(house.complaints().filter((complaint) => !complaint.includes('422'))).toEqual([]);
  });

  it('enters a tuning by its notes', async () => {
    const page = await house.visit('/shop/tunings', { as: 'owner' });
    await page.getByRole('button', { name: 'Enter a tuning' }).click();
    await page.getByLabel('Name', { exact: true }).fill('open B, seven down');
    await page.getByLabel('Open strings with their octaves, treble first').fill('B3 F#3 D#3 B2 F#2 B1');
    await page.getByRole('button', { name: 'Write it down' }).click();
    await page.getByText('open B, seven down is written down.').waitFor();
    const { body } = await recordCalled('tuning', 'open B, seven down');
    expect(body.pitches.map(({ midi }) => midi)).toEqual([59, 54, 51, 47, 42, 35]);
  });

  it('settles rules and limits, and lays both versions side by side where two were at it', async () => {
    const one = await house.visit('/shop/rules', { as: 'owner' });
    const other = await house.visit('/shop/rules', { as: 'owner' });
    await one.getByLabel('Usual lot, strings').fill('24');
    await other.getByLabel('Wire to last, days').fill('30');
    await one.getByRole('button', { name: 'Write it down' }).click();
    await one.getByText('Tarnfield Strings is written down.').waitFor();
    const both = other.getByRole('alert', { name: /Someone changed it meanwhile/ });
    await both.getByRole('row', { name: /Usual lot, strings 24 12 ▲ differs/ }).waitFor();
    await both.getByRole('button', { name: 'Take what stands now' }).click();
    await other.getByLabel('Wire to last, days').fill('30');
    await other.getByRole('button', { name: 'Write it down' }).click();
    await other.getByText('Tarnfield Strings is written down.').waitFor();
    const answer = await (await house.client('owner')).list('settings');
    expect(answer.ok && answer.value.items[0]?.body).toMatchObject({
      rules: { lotSize: 24 },
      limits: { wireCoverDays: 30 },
    });
  });

  it('settles an empty shop for the first time', async () => {
    const empty = await openHouse({ shop: 'empty' });
    try {
      const link = await empty.visit(`/first-sign-in#${empty.firstLink}`);
      await link.getByLabel('New password').fill('heron, copper, morning');
      await link.getByLabel('The same again').fill('heron, copper, morning');
      await link.getByRole('button', { name: 'Set the password and sign in' }).click();
      await link.getByRole('link', { name: 'Shop' }).first().waitFor();
      const page = await empty.again(link, '/shop/rules');
      await page.getByText('Nothing is settled yet.').waitFor();
      await page.getByLabel('Name', { exact: true }).fill('Reedmere Strings');
      await page.getByLabel('An hour of work').fill('2600');
      await page.getByRole('button', { name: 'Write it down' }).click();
      await page.getByText('Reedmere Strings is written down.').waitFor();
      const answer = await (await empty.client('owner')).list('settings');
      expect(answer.ok && answer.value.items[0]?.body.rates.labourMinorPerHour).toBe(2600);
    } finally {
      await empty.close();
    }
  });

  it('tells who did what, narrowed to one person', async () => {
    const page = await house.visit('/shop/journal', { as: 'owner' });
    await page.getByLabel('Who', { exact: true }).selectOption('Nessel Quillmarsh');
    const journal = page.getByRole('table', { name: 'Journal' });
    await journal.getByRole('cell', { name: 'Nessel Quillmarsh' }).first().waitFor();
    await expect
      .poll(async () => new Set(await journal.locator('tbody tr td:nth-child(2)').allTextContents()).size)
      .toBeLessThanOrEqual(2);
    await journal
      .getByRole('button', { name: /^Look at/ })
      .first()
      .click();
    await page.getByRole('dialog').getByText('What was asked').waitFor();
  });

  it.each([
    'people',
    'devices',
    'tokens',
    'machines',
    'wires',
    'materials',
    'bins',
    'instruments',
    'tunings',
    'rules',
    'journal',
  ])('has no barrier in %s, and fits a small screen', async (part) => {
    const page = await house.visit(`/shop/${part}`, {
      as: 'owner',
      width: 820,
      height: 1180,
      scheme: 'dark',
    });
    await roomIsThere(page);
    expect(await barriers(page)).toEqual([]);
    expect(await widerBy(page)).toBeLessThanOrEqual(0);
  });
});
