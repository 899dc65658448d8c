import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { BodyOf, Client, StoredRecord } from '../../src/contract/index.js';
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

type Run = StoredRecord<BodyOf<'run'>>;

describeInBrowser('a winder’s day at the machine', () => {
  let house: House;
  let owner: Client;

  beforeAll(async () => {
    house = await openHouse();
    owner = await house.client('owner');
  });
  afterAll(() => house.close());

  it('goes from the choice of the machine to the close, by digits and Enter', async () => {
    const { machine, run, wires } = await nextRunOf('Old Heron', owner);
    const page = await house.visit('/machine', { as: 'winder', width: 1024, height: 768 });
    await page.getByRole('button', { name: machine.body.name }).click();
    await page.getByRole('heading', { level: 1, name: machine.body.name }).waitFor();
    expect(await barriers(page)).toEqual([]);
    await page.getByRole('region', { name: 'Next' }).getByRole('link').first().click();

    // The sheet, cautions first; then the wire.
    await page.getByRole('heading', { name: 'Before your hands go near the machine' }).waitFor();
    expect(await barriers(page)).toEqual([]);
    await page.getByRole('button', { name: 'On to the spools' }).click();

    // This winder was never at this machine: the cautions are read first, once, by one touch.
    await page.getByText(`Your first run at ${machine.body.name}`).waitFor();
    await page.getByText('Read the cautions above first').waitFor();

    // A scanner types wherever the focus is not in a field.
    const wrong = await spoolNot(wires, owner);
    await scan(page, wrong.body.name);
    await page.getByRole('alert').filter({ hasText: 'Wrong wire' }).waitFor();
    expect(await page.getByRole('button', { name: 'Start the run' }).isDisabled()).toBe(true);
    for (const wireId of wires) await scan(page, (await spoolOf(wireId, owner)).body.name);
    await page.getByText('Right wire').waitFor();
    expect(await page.getByRole('button', { name: 'Start the run' }).isDisabled()).toBe(true);
    await page.getByRole('button', { name: 'I have read them' }).click();
    await page.getByText('you have read them at this machine').waitFor();
    await page.getByRole('button', { name: 'Show the cautions in full' }).click();
    await page.getByText('No gloves at a turning spindle.').waitFor();
    await page.getByRole('button', { name: 'Close the cautions' }).click();
    expect(await barriers(page)).toEqual([]);
    await page.getByRole('button', { name: 'Start the run' }).click();
    await page.getByText('Running').first().waitFor();
    await allSent(page);
    const started = await get(owner, run.id);
    expect(started.state).toBe('running');
    const { items: read } = await answered(owner.read('caution-readings', { machineId: machine.id }));
    expect(read[0]).toMatchObject({ personId: started.body.winderId, machineId: machine.id });
    expect(read[0]?.cautions).toContain('rotating-spindle');

    // Two trial strings, measured as the sheet says; the micrometer types, nobody touches the screen between.
    for (const number of [1, 2]) {
      await page.getByRole('button', { name: 'New trial string' }).click();
      await page.getByText(`Measuring String ${number}`).waitFor();
      for (let reading = 1; reading <= 6; reading++) {
        await page.keyboard.type(`0,0${run.body.spec.gaugeThou}${reading}`);
        await page.keyboard.press('Enter');
        if (reading < 6) await page.getByText(`${reading} of 7 readings`).waitFor();
      }
      await page.getByText('Weight of the whole string').waitFor();
      await page.keyboard.press('Enter');
      await page.getByRole('button', { name: number === 1 ? 'Scrap' : 'Good', exact: true }).click();
      await rowOf(page, `String ${number}`)
        .getByText(number === 1 ? 'scrap' : 'good')
        .waitFor();
    }
    expect(await barriers(page)).toEqual([]);
    await allSent(page);
    const trials = await answered(owner.read('trial-strings', { runId: run.id }));
    expect(trials.items.map(({ number, verdict }) => `${number} ${verdict}`)).toEqual(['1 scrap', '2 good']);
    const measured = await answered(owner.read('measurements', { runId: run.id, limit: 500 }));
    expect(measured.items).toHaveLength(12);
    const newestFirst = await answered(
      owner.read('measurements', { runId: run.id, limit: 500, order: 'newest' }),
    );
    expect(newestFirst.items.toReversed()).toEqual(measured.items);
    const asTyped = (reading: number) => (run.body.spec.gaugeThou * 10 + reading) * 0.00000254;
    const values = measured.items.map(({ value }) => value).sort();
    expect(values[0]).toBeCloseTo(asTyped(1), 12);
    expect(values[11]).toBeCloseTo(asTyped(6), 12);
    expect(new Set(measured.items.map(({ placeM, rotationDeg }) => `${placeM} ${rotationDeg}`)).size).toBe(6);

    // The count: touched, typed, taken back.
    await page.getByRole('button', { name: 'On to counting' }).click();
    await page.getByRole('button', { name: 'Good', exact: true }).click();
    for (let count = 0; count < 3; count++) await scan(page, '1');
    await page.getByRole('button', { name: 'gap in the wrap' }).click();
    await page.getByRole('button', { name: 'kinked core' }).click();
    await page.getByRole('button', { name: 'Undo: Scrap: kinked core' }).click();
    await page.getByText('Taken back: Scrap: kinked core').waitFor();
    await page.getByText(`5 of ${run.body.quantity} good`).waitFor();
    // What the shop has already is taken back as well, from the list: a second entry voids it.
    await page.getByRole('button', { name: 'end slipped' }).click();
    await page.getByRole('button', { name: /^Undo: Scrap: end slipped/ }).waitFor();
    await allSent(page);
    await page.getByRole('button', { name: /^Show what was counted so far/ }).click();
    expect(await barriers(page)).toEqual([]);
    await page.getByRole('button', { name: /^Take back: Scrap: end slipped/ }).click();
    await page.getByRole('button', { name: /^Undo: Scrap: gap in the wrap/ }).waitFor();
    await page.getByRole('button', { name: 'Close the list' }).click();
    expect(await widerBy(page)).toBe(0);

    // Paused, gone on with, closed: each builds on the one before, though none was answered when the next was entered.
    await page.getByRole('button', { name: 'Pause' }).click();
    await page.getByRole('button', { name: 'Go on' }).click();
    await step(page, 'Close');
    expect(await page.getByLabel('Good strings').inputValue()).toBe('5');
    expect(await page.getByLabel('Scrap: gap in the wrap').inputValue()).toBe('1');
    expect(await page.getByLabel('Scrap: dialling in').inputValue()).toBe('1');
    expect(await barriers(page)).toEqual([]);
    await page.getByLabel('Bin', { exact: true }).selectOption({ index: 1 });
    await page.getByRole('button', { name: 'Close the run' }).click();
    await page.getByText('This run is over.').waitFor();
    await allSent(page);

    const closed = await get(owner, run.id);
    expect(closed).toMatchObject({ state: 'closed', body: { goodCount: 5, scrapCount: 2, spoolIds: [] } });
    const lot = await answered(owner.get('string-lot', closed.body.lotId ?? ''));
    expect(lot).toMatchObject({ state: 'in-check', body: { made: 5, runId: run.id } });
    const tallies = await answered(owner.read('tallies', { runId: run.id, limit: 500 }));
    expect(tallies.items.map(({ outcome, reason }) => `${outcome} ${reason}`.trim()).sort()).toEqual([
      'good',
      'good',
      'good',
      'good',
      'scrap gap in the wrap',
    ]);
    const voided = await answered(owner.read('voided-entries', { runId: run.id }));
    expect(voided.items.map(({ was }) => was)).toMatchObject([{ of: 'tally', reason: 'end slipped' }]);
    const desk = await house.visit(`/runs/${run.id}`, { as: 'owner' });
    await desk.getByRole('heading', { name: 'Taken back' }).waitFor();
    await desk.getByRole('cell', { name: 'a slip of the hand' }).waitFor();
    expectQuiet(house);
  });

  it('asks about a reading that is off by the inch, and writes down what the person says', async () => {
    const { machine, run, wires } = await nextRunOf('Two Herons', owner);
    const winder = await house.client('winder');
    const spoolIds = await Promise.all(wires.map(async (wireId) => (await spoolOf(wireId, owner)).id));
    await answered(
      winder.perform(
        'start-run',
        { runId: run.id, expectedVersion: run.version, spoolIds },
        { requestId: crypto.randomUUID() },
      ),
    );
    const page = await house.visit('/machine', { as: 'winder', width: 820, height: 1180, scheme: 'dark' });
    await page.getByRole('button', { name: machine.body.name }).click();
    await page.getByRole('region', { name: 'On the machine' }).getByRole('link').first().click();
    await page.getByRole('button', { name: 'New trial string, position 2' }).click();
    const millimetres = (run.body.spec.gaugeThou * 0.0254).toFixed(3);
    await page.getByLabel('Reading').waitFor();
    await page.keyboard.type(millimetres);
    await page.keyboard.press('Enter');
    await page.getByRole('alert').filter({ hasText: 'Look again' }).waitFor();
    expect(await barriers(page)).toEqual([]);
    await page.getByRole('button', { name: `It is ${Number(millimetres)} mm` }).click();
    await page.getByText('1 of 7 readings').waitFor();
    await allSent(page);
    const { items } = await answered(owner.read('measurements', { runId: run.id, limit: 500 }));
    expect(items).toHaveLength(1);
    expect(items[0]?.value).toBeCloseTo(Number(millimetres) / 1000, 12);
    const trials = await answered(owner.read('trial-strings', { runId: run.id }));
    expect(trials.items.at(-1)?.position).toBe(2);
    expect(await widerBy(page)).toBe(0);
    expectQuiet(house);
  });

  it('changes a spool by its label and the weight of the old one', async () => {
    const { run, old, fresh } = await spoolToChange(owner);
    const machine = await answered(owner.get('machine', run.body.machineId));
    const page = await house.visit('/machine', { as: 'winder', width: 1024, height: 768 });
    await page.getByRole('button', { name: machine.body.name }).click();
    await page.getByRole('region', { name: 'On the machine' }).getByRole('link').first().click();
    await step(page, 'Count');
    // From the count a spool's label leads to its change.
    await scan(page, fresh.body.name);
    await page.getByRole('heading', { name: 'Change a spool' }).waitFor();
    await scan(page, fresh.body.name);
    const grams = Math.round((old.body.weighed?.grossKg ?? 1) * 0.9 * 1000);
    await page.getByLabel('Weight of the spool that comes off').waitFor();
    await page.keyboard.type(`${grams} g`);
    await page.keyboard.press('Enter');
    await page.getByRole('list', { name: 'On the machine now' }).getByText(fresh.body.name).waitFor();
    await allSent(page);
    const after = await get(owner, run.id);
    expect(after.body.spoolIds).toContain(fresh.id);
    expect(after.body.takenOff?.map(({ spoolId }) => spoolId)).toContain(old.id);
    expect((await answered(owner.get('spool', old.id))).body.weighed?.grossKg).toBeCloseTo(grams / 1000, 9);
    expectQuiet(house);
  });
});

const rowOf = (page: Page, name: string) => page.getByRole('row').filter({ hasText: name });

const step = (page: Page, name: string): Promise<void> =>
  page.getByRole('navigation', { name: 'Steps of the run' }).getByRole('button', { name }).click();

const get = (client: Client, runId: string): Promise<Run> => answered(client.get('run', runId));

async function nextRunOf(machineName: string, client: Client) {
  const { items: machines } = await answered(client.list('machine', {}));
  const machine = machines.find(({ body }) => body.name.startsWith(machineName));
  if (!machine) throw new Error(`no machine ${machineName}`);
  const { items: plans } = await answered(client.list('plan', { state: 'in-force' }));
  const { items: runs } = await answered(
    client.list('run', { machineId: machine.id, state: 'planned', limit: 500 }),
  );
  const places = plans
    .toSorted((one, other) => (one.body.date < other.body.date ? -1 : 1))
    .flatMap(({ body }) => body.runs.flatMap(({ runId }) => runId ?? []));
  const run = runs.toSorted((one, other) => places.indexOf(one.id) - places.indexOf(other.id))[0];
  if (!run) throw new Error('nothing is planned');
  const recipe = await answered(client.get('recipe', run.body.recipeId));
  return { machine, run, wires: [...new Set([recipe.body.coreWireId, ...recipe.body.wrapWireIds])] };
}

/** A spool on a running machine of whose wire another lies on the shelf. */
async function spoolToChange(client: Client) {
  const { items: runs } = await answered(client.list('run', { state: 'running' }));
  for (const run of runs) {
    for (const spoolId of run.body.spoolIds) {
      const old = await answered(client.get('spool', spoolId));
      const { items } = await answered(
        client.list('spool', { wireId: old.body.wireId, state: 'on-shelf', limit: 1 }),
      );
      if (items[0]) return { run, old, fresh: items[0] };
    }
  }
  throw new Error('no spool can be changed');
}

async function spoolOf(wireId: string, client: Client) {
  const { items } = await answered(client.list('spool', { wireId, state: 'on-shelf', limit: 1 }));
  const spool = items[0];
  if (!spool) throw new Error(`no spool of wire ${wireId}`);
  return spool;
}

async function spoolNot(wireIds: readonly string[], client: Client) {
  const { items } = await answered(client.list('spool', { state: 'on-shelf', limit: 500 }));
  const spool = items.find(({ body }) => !wireIds.includes(body.wireId));
  if (!spool) throw new Error('only right spools');
  return spool;
}
