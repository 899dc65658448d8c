import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  abandonRun,
  changeSpool,
  closeRun,
  countStrings,
  freeSpool,
  moveStrings,
  newId,
  pauseRun,
  planRun,
  quarantineSpool,
  resumeRun,
  startRun,
  weighSpool,
} from '../../src/workshop/index.js';
import { engines } from '../store/harness.js';
import { SmallShop, W36 } from './small-shop.js';

/** One thing that somebody on the floor tries, by three numbers that choose with what. */
interface Try {
  readonly what: (typeof WHAT)[number];
  readonly which: number;
  readonly other: number;
  readonly share: number;
}

const WHAT = [
  'receive',
  'start',
  'close',
  'change',
  'weigh',
  'quarantine',
  'free',
  'plan',
  'start',
  'pause',
  'resume',
  'change',
  'close',
  'abandon',
  'move',
  'count',
] as const;

/** Not biased to small and round: such histories make nothing. */
const tries = fc.noBias(
  fc.array(
    fc.record({
      what: fc.constantFrom(...WHAT),
      which: fc.nat(30),
      other: fc.nat(30),
      share: fc.integer({ min: 0, max: 1000 }).map((thousandths) => thousandths / 1000),
    }),
    { minLength: 30, maxLength: 60 },
  ),
);

describe.each(engines())('whatever people on the floor try, on $name', (engine) => {
  it('the ledger and the records keep telling the same', async () => {
    await fc.assert(
      fc.asyncProperty(tries, async (history) => {
        const shop = await SmallShop.open(engine);
        for (const wireId of [shop.wires.core, shop.wires.wrap, shop.wires.core, shop.wires.wrap]) {
          await shop.spool(wireId, 2);
        }
        await attempt(shop, { what: 'plan', which: 0, other: 0, share: 0 });
        for (const tried of history) await attempt(shop, tried);
        await agree(shop);
      }),
      { numRuns: 12 },
    );
  });
});

/** Tries one thing; much of it is refused. What can be chosen sensibly mostly is, or nothing would ever be made. */
async function attempt(shop: SmallShop, { what, which, other, share }: Try): Promise<void> {
  const { spools, runs, lots } = await standing(shop);
  const pick = <Thing>(things: readonly Thing[], number: number) => things[number % things.length];
  const wireIds = [shop.wires.core, shop.wires.wrap];
  const bins = Object.values(shop.bins);
  const [bin, otherBin] = [pick(bins, which)!, pick(bins, other)!];
  const [spool, lot] = [pick(spools, which), pick(lots, which)];
  const fitting = runs.filter(({ state }) => FROM[what]?.includes(state));
  const run = pick(which % 5 === 4 || fitting.length === 0 ? runs : fitting, which);

  /** A little less than before, or now and then anything. */
  const scaleSays = (spoolId: string) => {
    const before = spools.find(({ id }) => id === spoolId)?.body.weighed?.grossKg ?? 1;
    return other % 7 === 6 ? 0.4 + 2 * share : Math.max(0.5, before - 0.1 * share);
  };
  if (what === 'receive') await shop.spool(pick(wireIds, which)!, 0.1 + 2 * share);
  if (what === 'plan') {
    const machines = Object.values(shop.machines);
    const [machineId, recipeId] = [pick(machines, other)!, shop.recipes.bronze36];
    await shop.ask(planRun, { id: newId(), name: newId(), recipeId, machineId, spec: W36, quantity: 10 });
  }
  if (spool) {
    const ofSpool = { spoolId: spool.id, expectedVersion: spool.version };
    const why = other % 2 ? { reason: 'r' } : {};
    if (what === 'weigh') await shop.ask(weighSpool, { ...ofSpool, grossKg: scaleSays(spool.id), ...why });
    if (what === 'quarantine') await shop.ask(quarantineSpool, { ...ofSpool, reason: 'r' });
    if (what === 'free') await shop.ask(freeSpool, { ...ofSpool, reason: 'r' });
  }
  if (run) {
    const ofRun = { runId: run.id, expectedVersion: run.version };
    const weighed = run.body.spoolIds.slice(0, other % 3);
    const scale = weighed.map((spoolId) => ({ spoolId, grossKg: scaleSays(spoolId) }));
    if (what === 'start') {
      const spoolIds = wireIds.flatMap((wireId) => {
        const ofWire = spools.filter(({ body }) => body.wireId === wireId);
        return ofWire.length > 0 ? [pick(ofWire, other)!.id] : [];
      });
      await shop.ask(startRun, { ...ofRun, spoolIds });
    }
    if (what === 'pause') await shop.ask(pauseRun, ofRun);
    if (what === 'resume') await shop.ask(resumeRun, ofRun);
    if (what === 'abandon') await shop.ask(abandonRun, { ...ofRun, reason: 'r', spools: scale });
    if (what === 'close') {
      const lotNames = { lotId: newId(), lotName: newId() };
      const scrap = other % 3 === 0 ? [] : [{ reason: 'gap', count: other }];
      const good = Math.round(40 * share);
      await shop.ask(closeRun, { ...ofRun, ...lotNames, binId: bin, good, scrap, spools: scale });
    }
    const oldSpoolId = pick(run.body.spoolIds, which);
    if (what === 'change' && oldSpoolId) {
      const wireId = spools.find(({ id }) => id === oldSpoolId)?.body.wireId;
      const newSpoolId = pick(
        spools.filter(({ body }) => body.wireId === wireId),
        other,
      )!.id;
      await shop.ask(changeSpool, { ...ofRun, oldSpoolId, oldGrossKg: scaleSays(oldSpoolId), newSpoolId });
    }
  }
  if (lot) {
    const count = 1 + Math.round(20 * share);
    if (what === 'move')
      await shop.ask(moveStrings, { lotId: lot.id, fromBinId: bin, toBinId: otherBin, count });
    if (what === 'count')
      await shop.ask(countStrings, { lotId: lot.id, binId: bin, counted: count, reason: 'r' });
  }
}

/** From where a step is likely to be taken. */
const FROM: Readonly<Record<string, readonly string[]>> = {
  start: ['planned'],
  pause: ['running'],
  resume: ['paused'],
  change: ['running', 'paused'],
  close: ['running', 'paused'],
  abandon: ['running'],
};

const standing = (shop: SmallShop) =>
  shop.store.read(async ({ records }) => ({
    spools: await records.all('spool'),
    runs: await records.all('run'),
    lots: await records.all('string-lot'),
  }));

async function agree(shop: SmallShop): Promise<void> {
  const balances = await shop.balances({});
  const sums = new Map<string, number>();
  for (const { item, lot, unit, quantity } of balances) {
    const thing = `${item} ${lot} ${unit}`;
    sums.set(thing, (sums.get(thing) ?? 0) + quantity);
  }
  expect([...sums.values()].filter((sum) => sum !== 0)).toEqual([]);
  expect(balances.filter(({ account, quantity }) => /^(bin|spool)\//.test(account) && quantity < 0)).toEqual(
    [],
  );

  const { spools, runs, lots } = await standing(shop);
  const live = runs.filter(({ state }) => state === 'running' || state === 'paused');
  const mounted = new Set(live.flatMap(({ body }) => body.spoolIds));
  for (const { id, state, body } of spools) {
    const heldMg =
      balances.find(({ account, unit }) => account === `spool/${id}` && unit === 'mg')?.quantity ?? 0;
    expect(state === 'on-machine', 'on a machine if and only if a live run has it').toBe(mounted.has(id));
    expect(body.machineId !== undefined).toBe(mounted.has(id));
    if (state === 'empty') expect(heldMg, 'an empty spool has nothing on the books').toBe(0);
  }
  const running = runs.filter(({ state }) => state === 'running').map(({ body }) => body.machineId);
  expect(new Set(running).size, 'one run at a time on a machine').toBe(running.length);
  const closed = runs.filter(({ state, body }) => state === 'closed' && body.goodCount > 0);
  expect(closed.map(({ body }) => body.lotId).sort()).toEqual(lots.map(({ id }) => id).sort());
  const made = balances.filter(({ account, item }) => account === 'made' && item.startsWith('string/'));
  const counted = closed.concat(runs.filter(({ state, body }) => state === 'closed' && body.goodCount === 0));
  const ofRuns = counted.reduce((sum, { body }) => sum + body.goodCount + body.scrapCount, 0);
  expect(made.reduce((sum, { quantity }) => sum - quantity, 0)).toBe(ofRuns);
}
