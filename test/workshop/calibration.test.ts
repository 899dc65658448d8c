import { Compile } from 'typebox/compile';
import { describe, expect, it } from 'vitest';
import { demoWorkshop } from '../../demo/index.js';
import { READINGS, ShopSchema } from '../../src/contract/index.js';
import { PRIOR_SEAT, stringBody } from '../../src/core/string/index.js';
import {
  calibrationSeen,
  newId,
  planRun,
  recalibrate,
  receiveSpool,
  recordMeasurements,
  recordTrialString,
  saveSettings,
  shopRecords,
  shopView,
  startRun,
  stepRecipe,
} from '../../src/workshop/index.js';
import { bronze36 } from '../fixtures/winders.js';
import { engines } from '../store/harness.js';
import { SmallShop, W36 } from './small-shop.js';

const NOW = '2026-03-03T08:00:00.000Z';
const body = stringBody(bronze36('hex').construction);
if (!body.ok) throw new Error('the recipe of this test cannot be made');
const { meanDiameterM, linearDensityKgPerM, wrapMassKgPerM, layers } = body.value;
/** What a string gains in weight with its diameter. */
const PER_M = wrapMassKgPerM / layers[0]!.windingDiameterM;

describe.each(engines())('calibration on $name', (engine) => {
  async function open() {
    const shop = await SmallShop.open(engine);
    const { name, invented, rules, rates } = demoWorkshop();
    const settingsId = newId();
    await shop.done(saveSettings, {
      id: settingsId,
      body: {
        name,
        invented,
        rules: { ...rules, dayStartsAtMinute: 420, workingDays: [...rules.workingDays] },
        rates,
      },
    });
    return { shop, settingsId };
  }

  /** A run of one measured trial string and one checked string, each off by so much. */
  async function measuredRun(shop: SmallShop, { offM = 0, number = 1 } = {}): Promise<string> {
    const runId = newId();
    const { servo: machineId } = shop.machines;
    const { bronze36: recipeId } = shop.recipes;
    await shop.done(planRun, {
      id: runId,
      name: `run ${runId}`,
      recipeId,
      machineId,
      spec: W36,
      quantity: 9,
    });
    const spoolIds = [await freshSpool(shop, shop.wires.core), await freshSpool(shop, shop.wires.wrap)];
    await shop.done(startRun, { runId, expectedVersion: 1, spoolIds });
    const trialStringId = newId();
    await shop.done(recordTrialString, { id: trialStringId, runId, number, position: 1 });
    await shop.done(recordMeasurements, { rows: readings(runId, meanDiameterM + offM, trialStringId) });
    await shop.done(recordMeasurements, {
      rows: [
        ...readings(runId, meanDiameterM + 2 * offM),
        {
          ...reading(runId),
          quantity: 'mass',
          value: (linearDensityKgPerM + 2 * offM * PER_M) * W36.lengthM,
        },
      ],
    });
    await shop.store.write(async ({ records }) => {
      const run = (await records.get('run', runId))!;
      await records.update('run', {
        id: runId,
        expectedVersion: run.version,
        state: 'closed',
        body: run.body,
        at: NOW,
      });
      for (const spool of await records.all('spool', { state: 'on-machine' })) {
        const { machineId: _, ...off } = spool.body;
        await records.update('spool', {
          id: spool.id,
          expectedVersion: spool.version,
          state: 'on-shelf',
          body: off,
          at: NOW,
        });
      }
    });
    return runId;
  }

  /** Of a lot of its own: strings of one lot of wire err together, however many there are. */
  async function freshSpool(shop: SmallShop, wireId: string): Promise<string> {
    const id = newId();
    const called = { name: `spool ${id}`, lot: `lot ${id}` };
    await shop.done(receiveSpool, { id, wireId, ...called, grossKg: 1.5, tareKg: 0.5 });
    return id;
  }

  const reading = (runId: string) => ({ id: newId(), runId, instrument: 'micrometer 1' });

  /** At two places, each at two rotations whose mean is the diameter. */
  const readings = (runId: string, diameterM: number, trialStringId?: string) =>
    [0.3, 0.7].flatMap((placeM) =>
      [
        [0, 4e-6],
        [30, -4e-6],
      ].map(([rotationDeg = 0, ovalM = 0]) => ({
        ...reading(runId),
        ...(trialStringId === undefined ? {} : { trialStringId }),
        quantity: 'diameter' as const,
        value: diameterM + ovalM,
        placeM,
        rotationDeg,
      })),
    );

  const seen = (shop: SmallShop) => shop.store.read((tx) => calibrationSeen(tx, NOW));

  it('of a shop that measured nothing says so, in the form that is promised', async () => {
    const { shop, settingsId } = await open();
    const view = await seen(shop);
    expect([...Compile(READINGS.calibration.answer).Errors(view)]).toEqual([]);
    expect(view).toMatchObject({
      strings: 0,
      families: [],
      settings: { id: settingsId, version: 1, strings: 0 },
    });
    expect(view.ofAll.every(({ before, now }) => before.value === now.value)).toBe(true);
    const fault = await shop.refused(recalibrate, { settingsId, expectedVersion: 1, recipes: [] });
    expect(fault.code).toBe('calibration.nothing-measured');
  });

  it('takes readings of a string together: places and rotations to a mean, a weight to weight by length', async () => {
    const { shop } = await open();
    const runId = await measuredRun(shop, { offM: 3e-6 });
    const view = await seen(shop);
    expect([...Compile(READINGS.calibration.answer).Errors(view)]).toEqual([]);
    expect(view).toMatchObject({ strings: 2, runs: 1 });
    expect(view.families.map(({ key, strings }) => [key, strings])).toEqual([
      ['hex phosphor-bronze middle', 2],
    ]);
    // The first string alone shows the diameter by the sheet; the other was turned to it, and was weighed.
    expect(view.diameters.points).toHaveLength(1);
    expect(view.diameters.points[0]).toMatchObject({ runId, machineId: shop.machines.servo });
    expect(view.diameters.points[0]!.measured).toBeCloseTo(meanDiameterM + 3e-6, 12);
    expect(view.weights.points).toHaveLength(1);
    expect(view.next.map(({ name }) => name)).toEqual(['bronze 36']);
  });

  it('counts a run whose first string was not measured for its weight alone', async () => {
    const { shop } = await open();
    await measuredRun(shop, { number: 2 });
    const { diameters, weights } = await seen(shop);
    expect([diameters.points.length, weights.points.length]).toEqual([0, 1]);
  });

  it('is settled family by family, and from then on strings are reckoned by it', async () => {
    const { shop, settingsId } = await open();
    for (let run = 0; run < 6; run++) await measuredRun(shop, { offM: 20e-6 });
    const { settings } = await shop.done(recalibrate, { settingsId, expectedVersion: 1, recipes: [] });
    expect(settings).toMatchObject({ version: 2, body: { rules: { dayStartsAtMinute: 420 } } });
    const families = settings.body.seat?.families ?? [];
    expect(families.map(({ machineId, strings }) => [machineId, strings])).toEqual([
      [undefined, 12],
      [shop.machines.servo, 12],
    ]);
    const now = await shop.store.read(shopView);
    expect(now.seat?.families?.map(({ machineId }) => machineId)).toEqual([undefined, 'Servo one']);
    const after = stringBody(bronze36('hex').construction, now.seat);
    if (!after.ok) throw new Error(after.fault.code);
    expect(after.value.meanDiameterM - meanDiameterM).toBeGreaterThan(10e-6);
    expect(after.value.meanDiameterM - meanDiameterM).toBeLessThan(22e-6);
    expect((await seen(shop)).settings).toMatchObject({ version: 2, strings: 12 });
  });

  it('is refused over settings that were changed since, and to whoever may not approve', async () => {
    const { shop, settingsId } = await open();
    await measuredRun(shop);
    await shop.done(recalibrate, { settingsId, expectedVersion: 1, recipes: [] });
    const again = { settingsId, expectedVersion: 1, recipes: [] };
    expect((await shop.refused(recalibrate, again)).code).toBe('stale-version');
    const fault = await shop.refused(recalibrate, again, { actor: shop.as('winder') });
    expect(fault.code).toBe('permission.missing');
  });

  it('calls a recipe calibrated where a person says so and the rule is met, and does nothing where it is not', async () => {
    const { shop, settingsId } = await open();
    const { bronze36: id } = shop.recipes;
    await shop.done(stepRecipe, { id, expectedVersion: 1, step: 'try', note: '' });
    for (let run = 0; run < 3; run++) await measuredRun(shop);
    const asked = { settingsId, expectedVersion: 1, recipes: [{ id, expectedVersion: 2 }] };
    const fault = await shop.refused(recalibrate, asked);
    expect(fault).toMatchObject({ code: 'calibration.recipe-not-ready', hasStrings: true, isNarrow: false });
    const before = (await seen(shop)).recipes.find(({ recipeId }) => recipeId === id);
    expect(before).toMatchObject({ state: 'on-trial', mayBeCalibrated: false });
    expect(before).not.toHaveProperty('suggests');
    for (let run = 0; run < 30; run++) await measuredRun(shop);
    expect((await seen(shop)).recipes.find(({ recipeId }) => recipeId === id)).toMatchObject({
      strings: 66,
      runs: 33,
      mayBeCalibrated: true,
      suggests: 'calibrate',
    });
    const { recipes } = await shop.done(recalibrate, asked);
    expect(recipes).toMatchObject([{ id, state: 'calibrated', version: 3 }]);
  }, 60_000);
});

describe('a shop file with a seat by families', () => {
  const shop = demoWorkshop();
  const machine = shop.machines[0]!;
  const { families: _, ...figures } = PRIOR_SEAT;
  const family = {
    ...figures,
    extraGap: { value: 0.004, u: 0.003 },
    correlations: [0, -0.7, 0, 0.2, 0, -0.6, 0, 0, 0, 0],
    family: { coreShape: 'hex', wrapAlloy: 'pure-nickel', wrapBand: 'thin' },
    strings: 30,
    state: 'calibrated',
  } as const;
  const seat = {
    ...PRIOR_SEAT,
    families: [family, { ...family, machineId: machine.id }, { ...family, machineId: 'none of ours' }],
  };
  const shopFile = Compile(ShopSchema);

  it('is a shop file, and so is one with the seat of all strings or with none', () => {
    for (const each of [{ ...shop, seat }, { ...shop, seat: PRIOR_SEAT }, shop])
      expect([...shopFile.Errors(each)]).toEqual([]);
    expect(shopFile.Check({ ...shop, seat: { ...seat, families: [{ ...family, family: 'thin' }] } })).toBe(
      false,
    );
  });

  it('is taken in with its machines called by the ids of their records', () => {
    const steps = shopRecords({ ...shop, seat }, newId);
    const inputOf = (name: string) =>
      steps.filter(({ useCase }) => useCase.definition.name === name).map(({ input }) => input);
    const machines = inputOf('save-machine') as { id: string; body: { name: string } }[];
    const [settings] = inputOf('save-settings') as { body: { seat: typeof seat } }[];
    const taken = settings!.body.seat.families;
    expect(taken[1]).toMatchObject({
      machineId: machines.find(({ body: { name } }) => name === machine.name)!.id,
      strings: 30,
    });
    expect(taken[0]).toEqual(family);
  });
});
