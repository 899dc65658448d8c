import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { Client } from '../../src/contract/index.js';
import { allSent } from './floor.js';
import {
  answered,
  barriers,
  describeInBrowser,
  expectQuiet,
  type House,
  openHouse,
  widerBy,
} from './harness.js';
import { nextRun, panel, type Run, readings, typeDiameter, wind } from './winding.js';

describeInBrowser('dialling in', () => {
  let house: House;
  let owner: Client;

  beforeAll(async () => {
    house = await openHouse();
    owner = await house.client('owner');
  });
  afterAll(() => house.close());

  it('goes by the advice, position by position, with a setting of one’s own and a reading taken back', async () => {
    const { run, wantedM, page } = await startedRun('Two Herons', house, owner);
    const first = panel(page, 'What to do at position 1');
    const second = panel(page, 'What to do at position 2');
    await first.getByText(/^\W*Set .* and wind the first string\.$/).waitFor();
    expect(await barriers(page)).toEqual([]);

    await first.getByRole('button', { name: 'Even' }).click();
    await wind(page, 'New trial string, position 1', evenly(wantedM + 2e-5));
    await first.getByText(/^\W*Set .* wind one more string\.$/).waitFor();
    await first.getByText(/Moving is worth about/).waitFor();
    await second.getByText(/wind the first string/).waitFor();

    // The winder knows better.
    await first.getByRole('button', { name: 'Set otherwise' }).click();
    const field = first.getByLabel('What it stands at now');
    const hint = (await first.getByText(/^From .* to /).textContent()) ?? '';
    const most = Number(/to ([\d.]+)\./.exec(hint)?.[1]);
    const own = Math.floor(most * 6) / 10;
    await field.fill(String(own).replace('.', ','));
    await page.getByText('The turns lie even.').waitFor();
    await page.getByRole('button', { name: 'New trial string, position 1' }).click();
    await page.getByText('0 of 7 readings').waitFor();
    await typeDiameter(page, wantedM);
    await page.getByText('1 of 7 readings').waitFor();
    await page.getByRole('button', { name: /^Undo: .*0°: / }).click();
    await page.getByText('0 of 7 readings').waitFor();
    await readings(page, evenly(wantedM));

    for (const [at, position] of [first, second].entries())
      await untilItRuns(page, position, `New trial string, position ${at + 1}`, wantedM);
    expect(await barriers(page)).toEqual([]);
    expect(await widerBy(page)).toBe(0);
    await page.getByRole('button', { name: 'On to counting' }).click();
    await page.getByRole('button', { name: 'Good', exact: true }).waitFor();
    await allSent(page, 60_000);

    const { items: trials } = await answered(owner.read('trial-strings', { runId: run.id }));
    expect(trials[0]).toMatchObject({ position: 1, setBy: 'advice', seen: 'even' });
    expect(trials[1]).toMatchObject({ position: 1, setBy: 'override', setting: own });
    expect(trials[1]).not.toHaveProperty('seen');
    expect(trials.filter(({ position }) => position === 2).length).toBeGreaterThan(0);
    expect(trials.every(({ setting }) => typeof setting === 'number')).toBe(true);

    // What was learned is there for the next run, once this one is over.
    const { machineId } = run.body;
    expect((await answered(owner.read('past-dial-ins', { machineId }))).items).toEqual([]);
    await closed(house, run);
    const { items: past } = await answered(owner.read('past-dial-ins', { machineId }));
    expect(past).toHaveLength(1);
    expect(past[0]!.positions.map(({ strings }) => strings.length)).toEqual(
      [1, 2].map((position) => trials.filter((trial) => trial.position === position).length),
    );
    expect(past[0]!.positions[0]!.strings[0]!.errorsM[0]).toBeCloseTo(2e-5, 6);
    expect(past[0]!.positions[0]!.overrideErrorsM).toHaveLength(1);
    expectQuiet(house);
  });

  it('goes on without a line, and all of it is with the shop afterwards', async () => {
    const { run, wantedM, page } = await startedRun('Old Heron', house, owner);
    await page.evaluate('navigator.serviceWorker.ready.then(() => undefined)');
    await page.context().setOffline(true);
    await page.getByText('No line').waitFor();
    const only = panel(page, 'What to do');
    await only.getByText(/wind the first string/).waitFor();
    await only.getByRole('button', { name: 'Gaps' }).click();
    await wind(page, 'New trial string', evenly(wantedM - 1.5e-5));
    await page.getByText(/^Set the traverse to .* On the dial: /).waitFor();
    await only.getByText(/^\W*Set .* wind one more string\.$/).waitFor();
    await untilItRuns(page, only, 'New trial string', wantedM);
    const { items: none } = await answered(owner.read('trial-strings', { runId: run.id }));
    expect(none).toEqual([]);

    await page.context().setOffline(false);
    await allSent(page, 60_000);
    const { items: trials } = await answered(owner.read('trial-strings', { runId: run.id }));
    expect(trials[0]).toMatchObject({ seen: 'gaps', setBy: 'advice' });
    expect(new Set(trials.map(({ setting }) => setting)).size).toBeGreaterThan(1);
    const { items } = await answered(owner.read('measurements', { runId: run.id, limit: 500 }));
    expect(items).toHaveLength(6 * trials.length);

    // Taken back without a line, though the shop has it: the last reading, and from the list the whole string.
    await page.context().setOffline(true);
    await page.getByText('No line').waitFor();
    await page.getByRole('button', { name: /^Undo: .*°: / }).click();
    await page.getByText(/^Taken back: .*The shop keeps both/).waitFor();
    await page.getByText('5 of 7 readings').waitFor();
    const last = trials.at(-1)?.number ?? 0;
    await page.getByRole('button', { name: `Show what was entered of String ${last}` }).click();
    await page.getByRole('button', { name: `Take back: Trial string ${last}` }).click();
    await page.getByRole('rowheader', { name: `String ${last}` }).waitFor({ state: 'detached' });
    // Its number stays taken, and the dial-in goes on from the string before.
    await page.getByRole('button', { name: 'New trial string' }).click();
    await page.getByRole('rowheader', { name: `String ${last + 1}` }).waitFor();
    expect(await barriers(page)).toEqual([]);
    await page.context().setOffline(false);
    await allSent(page, 60_000);
    const { items: left } = await answered(owner.read('trial-strings', { runId: run.id }));
    expect(left.map(({ number }) => number)).toEqual([
      ...trials.slice(0, -1).map(({ number }) => number),
      last + 1,
    ]);
    const measured = await answered(owner.read('measurements', { runId: run.id, limit: 500 }));
    expect(measured.items).toHaveLength(6 * (trials.length - 1));
    const { items: voided } = await answered(owner.read('voided-entries', { runId: run.id }));
    expect(voided.map(({ was }) => was.of)).toEqual(['measurement', 'trial-string']);
    house.complaints();
  });

  it('can be practised on a machine that is only reckoned', async () => {
    const page = await house.visit('/machine', { as: 'winder', width: 1024, height: 768 });
    const before = (await answered(owner.read('journal', { limit: 1 }))).items[0]?.id;
    await page.getByRole('link', { name: 'Practise dialling in' }).click();
    await page.getByRole('heading', { name: 'Which machine?' }).waitFor();
    expect(await barriers(page)).toEqual([]);
    await page.getByRole('button', { name: 'Old gearbox' }).click();
    const only = panel(page, 'What to do');
    const letRun = page.getByRole('button', { name: 'Let it run' });
    await only.getByText(/wind the first string/).waitFor();
    expect(await letRun.isDisabled()).toBe(true);
    let wound = 0;
    while (wound < 14 && (await only.getByText(/[Ll]et it run\.$/).count()) === 0) {
      const again = page.getByRole('button', { name: 'Measure it again' });
      if ((await again.count()) > 0) {
        await again.click();
        continue;
      }
      if ((await only.getByText(/Stop\./).count()) > 0) break;
      await page.getByRole('button', { name: 'New trial string' }).click();
      wound++;
      await page.getByRole('rowheader', { name: String(wound), exact: true }).waitFor();
    }
    expect(await barriers(page)).toEqual([]);
    expect(await widerBy(page)).toBe(0);
    await letRun.click();
    await page.getByRole('heading', { name: 'How it went' }).waitFor();
    await page
      .getByText(new RegExp(`^You wound ${wound === 1 ? 'one string' : `${wound} strings`}`))
      .waitFor();
    await page.getByText(/^Of the run .* would be good\.$/).waitFor();
    expect((await answered(owner.read('journal', { limit: 1 }))).items[0]?.id).toBe(before);
    expectQuiet(house);
  });
});

type Panel = ReturnType<typeof panel>;

const evenly = (diameterM: number) => [diameterM, diameterM, diameterM];

/** As a machine that makes what is wanted from now on. */
async function untilItRuns(page: Page, at: Panel, button: string, wantedM: number): Promise<void> {
  for (let string = 0; string < 8; string++) {
    if ((await at.getByText(/[Ll]et it run\.$/).count()) > 0) return;
    await wind(page, button, evenly(wantedM));
  }
  throw new Error(`not let run: ${await at.textContent()}`);
}

/** The next run of a machine, begun, and its first strings open on a tablet. */
async function startedRun(machineName: string, house: House, owner: Client) {
  const { machine, run, spools, wantedM } = await nextRun(machineName, owner);
  const hand = await house.client('winder');
  const asked = { runId: run.id, expectedVersion: run.version, spoolIds: spools.map(({ id }) => id) };
  await answered(hand.perform('start-run', asked, { requestId: crypto.randomUUID() }));
  const page = await house.visit('/machine', { as: 'winder', width: 1024, height: 768 });
  await page.getByRole('button', { name: machine.body.name }).click();
  await page.getByRole('region', { name: 'On the machine' }).getByRole('link').first().click();
  await page.getByRole('heading', { name: 'First strings' }).waitFor();
  return { run, wantedM, page };
}

async function closed(house: House, { id: runId, body }: Run): Promise<void> {
  const winder = await house.client('winder');
  const now = await answered(winder.get('run', runId));
  const { items: bins } = await answered(winder.list('bin', { limit: 500 }));
  const bin = bins.find(
    (each) => each.body.stringKey === undefined || each.body.stringKey === body.stringKey,
  );
  await answered(
    winder.perform(
      'close-run',
      {
        runId,
        expectedVersion: now.version,
        lotId: crypto.randomUUID(),
        lotName: 'lot that was dialled in',
        binId: bin!.id,
        good: 5,
        scrap: [],
        spools: [],
      },
      { requestId: crypto.randomUUID() },
    ),
  );
}
