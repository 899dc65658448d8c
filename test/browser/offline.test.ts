import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { Client, InputNamed } from '../../src/contract/index.js';
import { allSent } from './floor.js';
import { answered, barriers, describeInBrowser, expectQuiet, type House, openHouse } from './harness.js';

describeInBrowser('the floor without a line', () => {
  let house: House;
  let owner: Client;

  beforeAll(async () => {
    house = await openHouse();
    owner = await house.client('owner');
  });
  afterAll(() => house.close());

  it('takes entries in mid-entry, through a closed tab and a restarted server, each once and in order', async () => {
    const { page, run, machine } = await atTheMachine(house, owner);
    await good(page);
    await page.context().setOffline(true);
    await page.getByText('No line').waitFor();
    for (let count = 2; count <= 4; count++) await good(page);
    expect(await barriers(page)).toEqual([]);
    const context = page.context();
    await page.close();

    // The tab is opened again, with no network and no server.
    await house.stop();
    const again = await context.newPage();
    await again.goto(`${house.url}machine?run=${run.id}`);
    await again.getByText(`${run.before + 4} of ${run.quantity} good`).waitFor();
    await again.getByRole('button', { name: 'Pause' }).click();
    await again.getByText('Paused').first().waitFor();
    await again.getByRole('link', { name: 'All runs of this machine' }).click();
    await again.getByRole('heading', { level: 1, name: machine }).waitFor();
    await again.getByRole('region', { name: 'On the machine' }).getByText('Paused').waitFor();
    // A planned run opens too, with its sheet worked out here.
    await again.getByRole('region', { name: 'Next' }).getByRole('link').first().click();
    await again.getByRole('heading', { name: 'Before your hands go near the machine' }).waitFor();
    await again.getByText('kept on this screen').waitFor();
    expect(await barriers(again)).toEqual([]);

    await house.startAgain();
    await context.setOffline(false);
    await allSent(again, 45_000);
    const tallies = await answered(owner.read('tallies', { runId: run.id, limit: 500 }));
    expect(tallies.items.filter(({ count }) => count === 1)).toHaveLength(run.ones + 4);
    const journal = await answered(owner.read('journal', { recordId: run.id, limit: 50 }));
    expect(journal.items.some(({ useCase }) => useCase === 'pause-run')).toBe(true);
    const paused = await answered(owner.get('run', run.id));
    expect(paused.state).toBe('paused');
    await asWinder(house, 'resume-run', { runId: run.id, expectedVersion: paused.version });
    house.complaints();
  });

  it('does what an answer was lost of exactly once', async () => {
    const { page, run } = await atTheMachine(house, owner);
    const keys: string[] = [];
    let isLost = false;
    await page.route('**/api/v1/tallies', async (route) => {
      keys.push(route.request().headers()['idempotency-key'] ?? '');
      if (isLost) return route.continue();
      isLost = true;
      // The server does it; the answer never comes.
      await route.fetch();
      await route.abort('connectionreset');
    });
    await good(page);
    await allSent(page, 45_000);
    expect(keys.length).toBeGreaterThan(1);
    expect(new Set(keys).size).toBe(1);
    const tallies = await answered(owner.read('tallies', { runId: run.id, limit: 500 }));
    expect(tallies.items.filter(({ count }) => count === 1)).toHaveLength(run.ones + 1);
    house.complaints();
  });

  it('keeps what the shop refused, with its words, stops only what builds on it, and goes on by a person’s word', async () => {
    const { page, run } = await atTheMachine(house, owner);
    await page.context().setOffline(true);
    await page.getByText('No line').waitFor();
    // Somebody else pauses the run meanwhile, and here it is paused and gone on with; and the dry room is read.
    const { version } = await answered(owner.get('run', run.id));
    await asWinder(house, 'pause-run', { runId: run.id, expectedVersion: version });
    await page.getByRole('button', { name: 'Pause' }).click();
    await page.getByRole('button', { name: 'Go on' }).click();
    await page.getByText('Running').first().waitFor();
    await page.getByRole('link', { name: 'Dry room' }).click();
    await page.getByLabel('Temperature').fill('21,5');
    await page.getByLabel('Relative humidity').fill('41');
    await page.keyboard.press('Enter');
    await page.getByText('Within the limits').waitFor();

    await page.context().setOffline(false);
    const refused = page.getByRole('article', { name: 'Refused: Paused' });
    await refused.waitFor();
    await refused.getByText('1 entry about the same waits behind it').waitFor();
    expect(await barriers(page)).toEqual([]);
    // What is about something else went by.
    await expect.poll(async () => (await newestReading(owner))?.temperatureC, { timeout: 10_000 }).toBe(21.5);

    // It is still there after the page was opened anew. Discarded, it lets the other go, which was meant for another state of
    // the run too; that is done upon what stands now.
    await page.reload();
    await refused.getByRole('button', { name: 'Discard it' }).click();
    await page.getByRole('dialog').getByRole('button', { name: 'Discard it' }).click();
    const second = page.getByRole('article', { name: 'Refused: Going on' });
    await second.getByText('Someone changed it meanwhile').waitFor();
    await second.getByRole('button', { name: 'Do it upon what stands now' }).click();
    await allSent(page, 45_000);
    expect((await answered(owner.get('run', run.id))).state).toBe('running');
    house.complaints();
  });

  it('sends once though two tabs are open', async () => {
    const { page, run } = await atTheMachine(house, owner);
    await page.context().setOffline(true);
    const other = await page.context().newPage();
    await other.goto(page.url());
    await other.getByRole('button', { name: 'Count', exact: true }).click();
    await other.getByText('No line').waitFor();
    await good(page);
    await other.getByText('1 entry kept on this screen').waitFor();
    await good(other);
    await other.getByText('2 entries kept on this screen').waitFor();
    const sent: string[] = [];
    for (const tab of [page, other])
      tab.on('request', (request) => {
        if (request.method() === 'POST') sent.push(request.headers()['idempotency-key'] ?? '');
      });
    await page.context().setOffline(false);
    await Promise.all([allSent(page, 45_000), allSent(other, 45_000)]);
    expect(sent).toHaveLength(2);
    expect(new Set(sent).size).toBe(2);
    const tallies = await answered(owner.read('tallies', { runId: run.id, limit: 500 }));
    expect(tallies.items.filter(({ count }) => count === 1)).toHaveLength(run.ones + 2);
    house.complaints();
  });

  it('keeps an entry for the person who made it', async () => {
    const { page, run } = await atTheMachine(house, owner);
    await page.context().setOffline(true);
    await page.getByText('No line').waitFor();
    await good(page);
    // Another person signs in at this tablet.
    const other = await house.visit('/dry-room', { as: 'packer' });
    const cookies = await other.context().cookies();
    await page.context().clearCookies();
    await page.context().addCookies(cookies);
    await page.context().setOffline(false);
    await page.goto(`${house.url}dry-room`);
    await page.getByText('waits here until they sign in').waitFor();
    const tallies = await answered(owner.read('tallies', { runId: run.id, limit: 500 }));
    expect(tallies.items.filter(({ count }) => count === 1)).toHaveLength(run.ones);
    house.complaints();
  });

  it('can be installed', async () => {
    house.complaints();
    const page = await house.visit('/machine', { as: 'winder' });
    const manifest = (await page.evaluate(
      "fetch(document.querySelector('link[rel=manifest]').href).then((answer) => answer.json())",
    )) as { readonly name: string; readonly icons: readonly { readonly src: string }[] };
    expect(manifest.name).toBe('Tautwork');
    for (const { src } of manifest.icons) {
      const status = await page.evaluate(`fetch(${JSON.stringify(src)}).then((answer) => answer.status)`);
      expect(status).toBe(200);
    }
    expectQuiet(house);
  });
});

/** A winder at a run that goes on, the page's own files kept, the count open. */
async function atTheMachine(house: House, owner: Client) {
  const run = (await answered(owner.list('run', { state: 'running' }))).items[0];
  if (!run) throw new Error('nothing runs');
  const machine = await answered(owner.get('machine', run.body.machineId));
  const tallies = await answered(owner.read('tallies', { runId: run.id, limit: 500 }));
  const ones = tallies.items.filter(({ count }) => count === 1).length;
  const page = await house.visit('/machine', { as: 'winder', width: 1024, height: 768 });
  await page.evaluate('navigator.serviceWorker.ready.then(() => undefined)');
  await page.getByRole('button', { name: machine.body.name }).click();
  await page.getByRole('region', { name: 'On the machine' }).getByRole('link').first().click();
  await page.getByRole('button', { name: 'Count', exact: true }).click();
  const trials = await answered(owner.read('trial-strings', { runId: run.id }));
  const before =
    trials.items.filter(({ verdict }) => verdict === 'good').length +
    tallies.items.reduce((sum, { outcome, count }) => sum + (outcome === 'good' ? count : 0), 0);
  await page.getByText(`${before} of ${run.body.quantity} good`).waitFor();
  return {
    page,
    machine: machine.body.name,
    run: { id: run.id, quantity: run.body.quantity, before, ones },
  };
}

const asWinder = async (
  house: House,
  name: 'pause-run' | 'resume-run',
  input: InputNamed<'pause-run'>,
): Promise<unknown> =>
  answered((await house.client('winder')).perform(name, input, { requestId: crypto.randomUUID() }));

/** One more good string, seen in the count. */
async function good(page: Page): Promise<void> {
  const progress = page.getByText(/of \d+ good/).first();
  const before = Number((await progress.textContent())?.split(' ')[0]);
  await page.getByRole('button', { name: 'Good', exact: true }).click();
  await page.getByText(new RegExp(`^${before + 1} of`)).waitFor();
}

const newestReading = async (client: Client) =>
  (await answered(client.list('dry-room-reading', { limit: 1 }))).items[0]?.body;
