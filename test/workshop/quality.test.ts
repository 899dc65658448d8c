import { Compile } from 'typebox/compile';
import { describe, expect, it } from 'vitest';
import { READINGS } from '../../src/contract/index.js';
import { stringBody } from '../../src/core/string/index.js';
import {
  closeRun,
  newId,
  planRun,
  qualityRunSeen,
  qualitySeen,
  recordMeasurements,
  recordTally,
  recordTrialString,
  startRun,
} from '../../src/workshop/index.js';
import { bronze36 } from '../fixtures/winders.js';
import { engines } from '../store/harness.js';
import { SmallShop, W36 } from './small-shop.js';

const NOW = '2026-03-05T08:00:00.000Z';
const made = stringBody(bronze36('hex').construction);
if (!made.ok) throw new Error('the recipe of this test cannot be made');
const { meanDiameterM, linearDensityKgPerM, caliperDiameterM } = made.value;

/** A run of nine good strings and one scrapped; its trial string 6 µm too thick, of the running one only the largest read. */
async function wind(shop: SmallShop, machineId = shop.machines.servo) {
  const runId = newId();
  const spools = [await shop.spool(shop.wires.core, 2), await shop.spool(shop.wires.wrap, 2)];
  const plan = {
    id: runId,
    name: `run ${runId}`,
    recipeId: shop.recipes.bronze36,
    machineId,
    spec: W36,
    quantity: 9,
  };
  const planned = await shop.done(planRun, plan);
  const started = await shop.done(startRun, { runId, expectedVersion: planned.version, spoolIds: spools });
  const trialStringId = newId();
  await shop.done(recordTrialString, { id: trialStringId, runId, number: 1, position: 1 });
  const diameter = { runId, quantity: 'diameter', instrument: 'micrometer 2' } as const;
  await shop.done(recordMeasurements, {
    rows: [0.2, 0.8].flatMap((placeM, at) =>
      [0, 90].map((rotationDeg) => ({
        id: newId(),
        trialStringId,
        ...diameter,
        value: meanDiameterM + (at === 0 ? 5e-6 : 7e-6),
        placeM,
        rotationDeg,
      })),
    ),
  });
  await shop.done(recordMeasurements, {
    rows: [
      { id: newId(), ...diameter, instrument: 'micrometer 1', value: caliperDiameterM + 2e-6, placeM: 0.5 },
      { id: newId(), runId, quantity: 'mass', value: linearDensityKgPerM * 1.01, instrument: 'scale' },
    ],
  });
  const tallied = { runId, station: 'winder', outcome: 'scrap', reason: 'gap' } as const;
  await shop.done(recordTally, { id: newId(), ...tallied, count: 1 });
  const lotId = newId();
  await shop.done(closeRun, {
    runId,
    expectedVersion: started.version,
    lotId,
    lotName: `lot ${lotId}`,
    binId: shop.bins.first,
    good: 9,
    scrap: [
      { reason: 'gap', count: 1 },
      { reason: 'dialling in', count: 2 },
    ],
    spools: [],
  });
  const coiled = { lotId, station: 'coiler', outcome: 'scrap', reason: 'kink' } as const;
  await shop.done(recordTally, { id: newId(), ...coiled, count: 1 });
  return { runId, spools };
}

describe.each(engines())('the quality of the shop on $name', (engine) => {
  const seen = (shop: SmallShop, query: Parameters<typeof qualitySeen>[1] = {}, personId = shop.winder) =>
    shop.store.read((tx) => qualitySeen(tx, query, { actor: { personId }, now: NOW }));

  it('has of each run how far its first string was off, its running ones, their spread and weight', async () => {
    const shop = await SmallShop.open(engine);
    const { runId } = await wind(shop);
    const view = await seen(shop);
    expect([...Compile(READINGS.quality.answer).Errors(view)]).toEqual([]);
    expect(view).toMatchObject({ runs: 1, readings: 6, from: '2025-03-05', until: '2026-03-05' });
    const figure = async (measure: 'first' | 'running' | 'along' | 'weight') => {
      const { points } = (await seen(shop, { measure })).series;
      expect(points).toMatchObject([{ runId, strings: 1, runs: 1 }]);
      return points[0]!.value;
    };
    expect((await figure('first')) * 1e6).toBeCloseTo(6, 6);
    // Of a hexagonal core a reading without a rotation is the largest: it is held against the largest.
    expect((await figure('running')) * 1e6).toBeCloseTo(2, 6);
    expect((await figure('along')) * 1e6).toBeCloseTo(Math.SQRT2, 4);
    expect(await figure('weight')).toBeCloseTo(0.01, 9);
  });

  it('counts what was right the first time, and why the rest was thrown away', async () => {
    const shop = await SmallShop.open(engine);
    await wind(shop);
    const view = await seen(shop);
    expect(view.firstPass).toMatchObject({ wound: 12, right: 8 });
    expect(view.scrap).toEqual([
      { winder: 2, coiler: 0, cumulative: 0.5 },
      { reason: 'gap', winder: 1, coiler: 0, cumulative: 0.75 },
      { reason: 'kink', winder: 0, coiler: 1, cumulative: 1 },
    ]);
    expect(view.findings).toMatchObject({ machines: [], instruments: [], lots: [] });
  });

  it('is narrowed by machine, lot, instrument and period, but for what is compared', async () => {
    const shop = await SmallShop.open(engine);
    await wind(shop);
    await wind(shop, shop.machines.gear);
    const lot = `${shop.wires.wrap}/H1`;
    const runs = async (query: Parameters<typeof qualitySeen>[1]) => (await seen(shop, query)).runs;
    expect(await runs({})).toBe(2);
    expect(await runs({ machineId: shop.machines.gear })).toBe(1);
    expect(await runs({ lot })).toBe(2);
    expect(await runs({ lot: `${shop.wires.wrap}/another` })).toBe(0);
    expect(await runs({ instrument: 'micrometer 1' })).toBe(2);
    expect(await runs({ instrument: 'micrometer 3' })).toBe(0);
    expect(await runs({ from: '2026-03-03' })).toBe(0);
    expect(await runs({ until: '2026-03-01' })).toBe(0);
    const one = await seen(shop, { machineId: shop.machines.gear });
    expect(one.groups.map(({ name }) => name).sort()).toEqual(
      [shop.machines.gear, shop.machines.servo].sort(),
    );
    expect(one.choices.machines).toHaveLength(2);
    expect(one.choices.lots.map(({ id }) => id)).toContain(lot);
    expect(one.choices.instruments).toEqual(['micrometer 1', 'micrometer 2']);
  });

  it('shows a winder their own runs, and names nobody anywhere', async () => {
    const shop = await SmallShop.open(engine);
    await wind(shop);
    expect((await seen(shop, { mine: 'yes' })).runs).toBe(1);
    expect((await seen(shop, { mine: 'yes' }, newId())).runs).toBe(0);
    expect(JSON.stringify(await seen(shop))).not.toContain(shop.winder);
  });

  it('leads from a run to each of its strings and its spools', async () => {
    const shop = await SmallShop.open(engine);
    const { runId, spools } = await wind(shop);
    const run = await shop.store.read((tx) => qualityRunSeen(tx, { runId }));
    expect([...Compile(READINGS['quality-run'].answer).Errors(run)]).toEqual([]);
    expect(run.spools.map(({ id }) => id).sort()).toEqual(spools.toSorted());
    expect(run.spools.map(({ lot }) => lot)).toEqual(['H1', 'H1']);
    const [trial, running] = run.strings;
    expect(trial).toMatchObject({ number: 1, position: 1, verdict: 'open', instrument: 'micrometer 2' });
    expect(trial!.offM! * 1e6).toBeCloseTo(6, 6);
    expect(running).not.toHaveProperty('number');
    expect(running!.weightOff).toBeCloseTo(0.01, 9);
    expect(await shop.store.integrity()).toEqual([]);
  });
});
