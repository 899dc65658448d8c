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

describeInBrowser('ends of strings and cores at the bench', () => {
  let house: House;
  let owner: Client;

  beforeAll(async () => {
    house = await openHouse();
    owner = await house.client('owner');
  });
  afterAll(() => house.close());

  it('are made by a short sheet and checked by digits and Enter, on line and off it', async () => {
    const { run, coreWireId } = await plannedRun(owner, 'plain');
    const page = await atBench(house, `/machine?run=${run.id}`);
    await page.getByRole('heading', { name: 'The end, and what to check' }).waitFor();
    await page.getByText('Pulling ends').waitFor();
    await page.getByText('Our own rule: common practice, no source').waitFor();
    expect(await barriers(page)).toEqual([]);
    await page.getByRole('button', { name: 'On to the spools' }).click();
    await scan(page, await spoolName(owner, coreWireId));
    await page.getByRole('button', { name: 'Start the run' }).click();

    // One end, thing by thing; what cannot be is refused with what can.
    await page.getByText('Length over all').waitFor();
    expect(await barriers(page)).toEqual([]);
    await type(page, '10');
    await page.getByText('it can be from 500.0 to 1,500.0 mm').waitFor();
    await typeEnd(page, ['1001,5', '8', '0,5', '1', '60', '1']);
    await rowOf(page, 'end 1').getByText('let go too early').waitFor();
    await allSent(page);
    const [first] = await checksOf(owner, run.id);
    expect(first).toMatchObject({ lengthM: 1.0015, twists: 8, tailM: 0.0005, seat: 'straight' });
    expect(first).toMatchObject({ pull: { forceN: 60, came: 'held' }, wireId: coreWireId, end: 'ball' });
    expect(first?.spoolId).not.toBeNull();

    // Without a line: half an end outlives the page, Enter alone leaves a thing out, a slip is taken back.
    await page.context().setOffline(true);
    await page.getByText('No line').waitFor();
    await type(page, '999');
    await page.getByText('Turns of the twist: count them').waitFor();
    await page.reload();
    await page.getByRole('button', { name: 'Ends', exact: true }).click();
    await page.getByText('Turns of the twist: count them').waitFor();
    const proof = Math.ceil(0.65 * first!.leastBreakingN!) + 1;
    await typeEnd(page, ['', '', '2', String(proof), '1']);
    await rowOf(page, 'end 2').getByText('not good: seat').waitFor();
    await typeEnd(page, ['', '8', '', '', '']);
    await rowOf(page, 'end 3').waitFor();
    await page.getByRole('button', { name: /^Undo: End 3/ }).click();
    await rowOf(page, 'end 3').waitFor({ state: 'detached' });
    expect(await barriers(page)).toEqual([]);
    expect(await widerBy(page)).toBe(0);

    // An end that the shop has already is taken back by a later word; nothing is erased.
    await page.getByRole('button', { name: 'Take end 1 back' }).click();
    await rowOf(page, 'end 2').waitFor({ state: 'detached' });
    await page.context().setOffline(false);
    await allSent(page, 45_000);
    const rows = await checksOf(owner, run.id);
    expect(rows).toHaveLength(3);
    const second = rows.find(({ seat }) => seat === 'crooked');
    expect(second).toMatchObject({ lengthM: 0.999, pull: { forceN: proof, came: 'held' } });
    expect(second).not.toHaveProperty('twists');
    expect(rows.filter(({ insteadOf }) => insteadOf === first!.id)).toHaveLength(1);

    // The desk sees it on the run and on the wire.
    const desk = await house.visit(`/runs/${run.id}`, { as: 'owner' });
    await desk.getByRole('heading', { name: 'What was found of the ends' }).waitFor();
    await rowOf(desk, 'End 1').getByText('not good: seat').waitFor();
    await desk.goto(`${house.url}wire?wire=${coreWireId}`);
    const pulls = desk.getByRole('region', { name: 'What the pulls say' });
    await pulls.getByText('held the proof force').waitFor();
    expect(await barriers(desk)).toEqual([]);
    house.complaints();
  });

  it('of cores are made for the run that winds them', async () => {
    const { run, coreWireId } = await plannedRun(owner, 'wound');
    const page = await atBench(house, '/machine');
    const cores = page.getByRole('region', { name: 'Cores to end' });
    await cores.getByRole('link').first().click();
    await page.goto(`${house.url}machine?run=${run.id}`);
    await page.getByText(`Cores of ${run.body.name}`).waitFor();
    await page.getByText('Turning hook').waitFor();
    expect(await page.getByText('Turning spindle').count()).toBe(0);
    await page.getByLabel('Cut from spool').selectOption({ index: 1 });
    await typeEnd(page, ['', '7', '', '', '']);
    await rowOf(page, 'end 1').waitFor();
    await allSent(page);
    expect(await barriers(page)).toEqual([]);
    const mine = (await checksOf(owner, run.id)).filter(({ twists }) => twists === 7);
    expect(mine).toMatchObject([{ wireId: coreWireId }]);
    expect(mine[0]!.spoolId).not.toBeNull();
    expect(mine[0]!.machineId).not.toBe(run.body.machineId);
    expectQuiet(house);
  });
});

async function atBench(house: House, path: string): Promise<Page> {
  const page = await house.visit('/machine', { as: 'winder', width: 1024, height: 768 });
  await page.getByRole('button', { name: 'Cutting bench' }).click();
  await page.getByRole('heading', { level: 1, name: 'Cutting bench' }).waitFor();
  await page.goto(new URL(path, house.url).href);
  return page;
}

async function type(page: Page, text: string): Promise<void> {
  await page.getByLabel('Digits and Enter').fill(text);
  await page.keyboard.press('Enter');
}

/** Each answer after the field asks for the next thing. */
async function typeEnd(page: Page, answers: readonly string[]): Promise<void> {
  for (const answer of answers) {
    const asked = await page.getByRole('form').getByRole('status').first().textContent();
    await type(page, answer);
    await page
      .getByRole('form')
      .getByText(asked ?? '', { exact: true })
      .waitFor({ state: 'detached' });
  }
}

const rowOf = (page: Page, name: string) => page.getByRole('row').filter({ hasText: name });

const checksOf = async (client: Client, runId: string) =>
  (await answered(client.read('end-checks', { runId, limit: 50 }))).items;

/** A run that is planned, and its core or plain wire, of which a spool lies on the shelf. */
async function plannedRun(
  client: Client,
  kind: 'plain' | 'wound',
): Promise<{ readonly run: Run; readonly coreWireId: string }> {
  const { items: runs } = await answered(client.list('run', { state: 'planned', limit: 500 }));
  for (const run of runs.filter(({ body }) => body.spec.kind === kind && body.spec.lengthM === 1)) {
    const { body } = await answered(client.get('recipe', run.body.recipeId));
    const { coreWireId } = body;
    const { items } = await answered(
      client.list('spool', { wireId: coreWireId, state: 'on-shelf', limit: 1 }),
    );
    if (items.length > 0) return { run, coreWireId };
  }
  throw new Error(`no ${kind} run can be begun`);
}

async function spoolName(client: Client, wireId: string): Promise<string> {
  const { items } = await answered(client.list('spool', { wireId, state: 'on-shelf', limit: 1 }));
  return items[0]!.body.name;
}
