import { Compile } from 'typebox/compile';
import { describe, expect, it } from 'vitest';
import { READINGS } from '../../src/contract/index.js';
import { addDays, type CalendarDate, seededChance } from '../../src/core/foundation/index.js';
import { stringBody } from '../../src/core/string/index.js';
import { machineWearSeen, newId, planRun } from '../../src/workshop/index.js';
import { bronze36 } from '../fixtures/winders.js';
import { engines } from '../store/harness.js';
import { SmallShop, W36 } from './small-shop.js';

const NOW = '2027-01-04T08:00:00.000Z';
const FIRST = '2026-03-02' as CalendarDate;
const MONTHS = 9;
const DAYS = MONTHS * 30;
const body = stringBody(bronze36('hex').construction);
if (!body.ok) throw new Error('the recipe of this test cannot be made');
const { meanDiameterM } = body.value;

describe.each(engines())('the wear of machines on $name', (engine) => {
  /** Nine months of a worn gearbox and a sound servo, a run each every third day; micrometer 2 is dropped half-way. */
  async function woundShop({ wearPerDayM }: { readonly wearPerDayM: number }): Promise<SmallShop> {
    const shop = await SmallShop.open(engine);
    const chance = seededChance(11);
    const scatter = () => 3e-6 * (chance.next() + chance.next() + chance.next() - 1.5) * 2;
    for (const machine of ['gear', 'servo'] as const) {
      const machineId = shop.machines[machine];
      const planned = newId();
      await shop.done(planRun, {
        id: planned,
        name: `run of ${machine}`,
        recipeId: shop.recipes.bronze36,
        machineId,
        spec: W36,
        quantity: 9,
      });
      for (let day = 0; day < DAYS; day += 3) {
        const usual = machine === 'gear' ? 1 : 2;
        // Of three micrometers, so that it can be told which of them was dropped.
        const instrument = `micrometer ${chance.next() < 0.4 ? chance.pick([1, 2, 3]) : usual}`;
        const large = instrument === 'micrometer 2' && day >= DAYS / 2 ? 5e-6 : 0;
        const offM = (machine === 'gear' ? wearPerDayM * day : 0) + large + scatter();
        await firstString(shop, planned, { day, instrument, diameterM: meanDiameterM + offM });
      }
    }
    return shop;
  }

  async function firstString(
    shop: SmallShop,
    like: string,
    { day, instrument, diameterM }: { day: number; instrument: string; diameterM: number },
  ): Promise<void> {
    const at = `${addDays(FIRST, day)}T09:00:00.000Z`;
    await shop.store.write(async ({ records, readings }) => {
      const planned = (await records.get('run', like))!;
      const run = newId();
      await records.insert('run', { id: run, body: { ...planned.body, name: `run ${run}` }, at });
      const trialStringId = newId();
      const by = `person/${shop.winder}`;
      await readings.addTrialString({
        id: trialStringId,
        runId: run,
        number: 1,
        position: 1,
        at,
        by,
        verdict: 'open',
      });
      await readings.addMeasurements(
        [0, 30].map((rotationDeg) => ({
          id: newId(),
          runId: run,
          trialStringId,
          at,
          by,
          instrument,
          quantity: 'diameter' as const,
          value: diameterM,
          placeM: 0.5,
          rotationDeg,
        })),
      );
    });
  }

  const seen = (shop: SmallShop) => shop.store.read((tx) => machineWearSeen(tx, NOW));

  it('is found at the machine that wears alone, in the form that is promised', async () => {
    const shop = await woundShop({ wearPerDayM: 45e-9 });
    const view = await seen(shop);
    expect([...Compile(READINGS['machine-wear'].answer).Errors(view)]).toEqual([]);
    const codes = new Map(view.machines.map(({ machineId, verdict }) => [machineId, verdict]));
    expect(codes.size).toBe(2);
    expect(codes.get(shop.machines.gear)).toBe('replace');
    expect(codes.get(shop.machines.servo)).not.toMatch(/drifts|replace/);
    expect(view.instruments.map(({ instrument }) => instrument)).toEqual(['micrometer 2']);
    const gear = view.machines.find(({ machineId }) => machineId === shop.machines.gear)!;
    expect(gear.points).toHaveLength(MONTHS);
    expect(gear.points[0]!.date.slice(0, 7)).toBe('2026-03');
    expect(gear.drift!.perDayM.from).toBeGreaterThan(20e-9);
    expect(gear.drift!.perDayM.to).toBeLessThan(70e-9);
  }, 60_000);

  it('is counted anew from the day on which the gears were measured anew', async () => {
    const shop = await woundShop({ wearPerDayM: 45e-9 });
    await shop.store.write(async ({ records }) => {
      const gear = (await records.get('machine', shop.machines.gear))!;
      if (!('dialTable' in gear.body)) throw new Error('the machine has no dial');
      const dialTable = gear.body.dialTable.map((row) => ({
        ...row,
        traversePerTurnM: row.traversePerTurnM * 1.001,
      }));
      const changed = { ...gear.body, dialTable };
      const at = '2026-10-01T07:00:00.000Z';
      await records.update('machine', {
        id: gear.id,
        expectedVersion: 1,
        state: gear.state,
        body: changed,
        at,
      });
    });
    const gear = (await seen(shop)).machines.find(({ machineId }) => machineId === shop.machines.gear);
    expect(gear).toMatchObject({ verdict: 'too-little', since: '2026-10-01' });
    expect(gear!.points.length).toBeLessThan(4);
  }, 60_000);

  it('is nothing to speak of in a shop that measured nothing', async () => {
    const shop = await SmallShop.open(engine);
    const view = await seen(shop);
    expect(view.machines.map(({ verdict }) => verdict)).toEqual(['too-little', 'too-little']);
    expect(view.instruments).toEqual([]);
  });
});
