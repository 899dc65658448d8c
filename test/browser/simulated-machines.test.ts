import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { Client } from '../../src/contract/index.js';
import {
  familyOffsetM,
  machineKnob,
  SIMULATED_MACHINES,
  type SimulatedKind,
  type SimulatedRun,
  simulatedMachine,
  simulatedRun,
} from '../../src/core/winding/index.js';
import { allSent, readCautions, scan } from './floor.js';
import { answered, describeInBrowser, type House, openHouse } from './harness.js';
import { lookAgain, nextRun, panel, wind } from './winding.js';

/** Each machine of the shop behaves as one of its own sort does; what is hidden in it is drawn from the seed. */
const MACHINES = [
  { name: 'Wren', kind: 'new-servo', seed: 9 },
  { name: 'Twin Finch', kind: 'servo-two-positions', seed: 17 },
  { name: 'Old Heron', kind: 'worn-gearbox', seed: 13 },
  { name: 'Two Herons', kind: 'gearbox-two-positions', seed: 17 },
] as const satisfies readonly { name: string; kind: SimulatedKind; seed: number }[];

const MOST_STRINGS = 12;

describeInBrowser('a winder’s whole path on a machine that behaves as its sort does', () => {
  let house: House;
  let owner: Client;

  beforeAll(async () => {
    house = await openHouse();
    owner = await house.client('owner');
  });
  afterAll(() => house.close());

  it.each(MACHINES)(
    '$name ($kind): begun with a line, dialled in and counted without, closed',
    async (of) => {
      const { machine, winder, recipe, run, spools, wantedM } = await nextRun(of.name, owner);
      const { knob } = machineKnob(winder, recipe.construction);
      const character = { ...SIMULATED_MACHINES[of.kind], knob };
      const simulated = simulatedRun(simulatedMachine(character, of.seed), {
        familyOffsetM: familyOffsetM(character, of.seed),
        seed: of.seed,
      });
      expect(simulated.positions).toBe(winder.positions);

      await freed(machine.id, house);

      const page = await house.visit('/machine', { as: 'winder', width: 1024, height: 768 });
      await page.getByRole('button', { name: machine.body.name }).click();
      await page.getByRole('region', { name: 'Next' }).waitFor();
      await page.goto(`${house.url}machine?run=${run.id}`);
      await page.getByRole('button', { name: 'On to the spools' }).click();
      await readCautions(page);
      for (const spool of spools) await scan(page, spool.body.name);
      await page.getByRole('button', { name: 'Start the run' }).click();
      await page.getByRole('heading', { name: 'First strings' }).waitFor();
      await page.evaluate('navigator.serviceWorker.ready.then(() => undefined)');

      const wound: Wound[] = [];
      for (let position = 0; position < simulated.positions; position++) {
        const at = { page, simulated, position, wantedM };
        wound.push(await followAdvice(at));
        if (position === 0) await page.context().setOffline(true);
        while (!(await isLetRun(at)) && wound.length < MOST_STRINGS) wound.push(await followAdvice(at));
        expect(await isLetRun(at)).toBe(true);
        await setAsAdvised(at);
      }
      await page.getByRole('button', { name: 'On to counting' }).click();
      await page.getByRole('button', { name: 'Good', exact: true }).waitFor();
      for (let count = 0; count < 3; count++) await scan(page, '1');
      await page.getByText(`3 of ${run.body.quantity} good`).waitFor();
      await page.context().setOffline(false);
      await allSent(page, 60_000);

      await page
        .getByRole('navigation', { name: 'Steps of the run' })
        .getByRole('button', { name: 'Close' })
        .click();
      await page.getByLabel('Bin', { exact: true }).selectOption({ index: 1 });
      await page.getByRole('button', { name: 'Close the run' }).click();
      await page.getByText('This run is over.').waitFor();
      await allSent(page);

      const closed = await answered(owner.get('run', run.id));
      expect(closed).toMatchObject({ state: 'closed', body: { goodCount: 3 } });
      const { items: trials } = await answered(owner.read('trial-strings', { runId: run.id }));
      expect(trials.map(({ position, setting }) => ({ position: position - 1, setting }))).toEqual(
        wound.map(({ position, setting }) => ({ position, setting })),
      );
      const { items: past } = await answered(owner.read('past-dial-ins', { machineId: machine.id }));
      const kept = past.map(({ positions }) =>
        positions.flatMap(({ strings }) => strings.map(({ setting }) => setting)),
      );
      expect(kept).toContainEqual(wound.map(({ setting }) => setting));
      // What no one at the machine can see: the runs that were let go are good.
      for (let position = 0; position < simulated.positions; position++)
        expect(simulated.truth(position).goodShare(run.body.quantity)).toBeGreaterThan(0.9);
      house.complaints();
    },
  );
});

/** Nothing runs on the machine: what does is paused. */
async function freed(machineId: string, house: House): Promise<void> {
  const winder = await house.client('winder');
  const { items } = await answered(winder.list('run', { machineId, state: 'running' }));
  for (const { id: runId, version: expectedVersion } of items)
    await answered(
      winder.perform('pause-run', { runId, expectedVersion }, { requestId: crypto.randomUUID() }),
    );
}

interface AtPosition {
  readonly page: Page;
  readonly simulated: SimulatedRun;
  readonly position: number;
  readonly wantedM: number;
}

interface Wound {
  readonly position: number;
  readonly setting: number;
}

const suffix = ({ simulated, position }: AtPosition, word: string) =>
  simulated.positions === 1 ? '' : `${word}position ${position + 1}`;

const advice = (at: AtPosition) => panel(at.page, `What to do${suffix(at, ' at ')}`);

const isLetRun = async (at: AtPosition): Promise<boolean> =>
  (await advice(at)
    .getByText(/[Ll]et it run\.$/)
    .count()) > 0;

/** Turns the simulated machine's knob to what the screen says; where it says nothing of it, it is left alone. */
async function setAsAdvised(at: AtPosition): Promise<number | undefined> {
  const said = (await advice(at).textContent()) ?? '';
  const [, to, past] = /Set ([\d.]+)[^,]*?(?:, coming up from ([\d.]+))?/.exec(said) ?? [];
  if (to === undefined) return undefined;
  at.simulated.set(at.position, Number(to), past === undefined ? undefined : Number(past));
  return Number(to);
}

const standing = new WeakMap<SimulatedRun, Map<number, number>>();

/** Sets, winds and measures one string as the screen says. */
async function followAdvice(at: AtPosition): Promise<Wound> {
  const { page, simulated, position, wantedM } = at;
  const stood = standing.get(simulated) ?? new Map<number, number>();
  standing.set(simulated, stood);
  stood.set(position, (await setAsAdvised(at)) ?? stood.get(position)!);
  simulated.wind();
  const looked = () => simulated.measure(position, 3).map((errorM) => wantedM + errorM);
  await wind(page, `New trial string${suffix(at, ', ')}`, looked());
  const said = advice(at).getByText(/(one more string|measure it|again|let it run|what is wrong)\.$/i);
  await said.first().waitFor();
  if ((await advice(at).getByText('Measure this string again.').count()) > 0) {
    await lookAgain(page, looked());
    await said.first().waitFor();
  }
  return { position, setting: stood.get(position)! };
}
