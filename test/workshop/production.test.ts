import { describe, expect, it } from 'vitest';
import { demoWorkshop } from '../../demo/index.js';
import { permissionsOf } from '../../src/contract/index.js';
import { whatIsKnown } from '../../src/core/day/index.js';
import { mgFromKg } from '../../src/core/stock/index.js';
import { setUp, wirePerString } from '../../src/core/winding/index.js';
import {
  abandonRun,
  changeSpool,
  closeRun,
  holdLot,
  judgeTrialString,
  moveStrings,
  newId,
  pastDialIns,
  pauseRun,
  planRun,
  quarantineSpool,
  recordMeasurements,
  recordRunSettings,
  recordTally,
  recordTrialString,
  releaseLot,
  resumeRun,
  saveRecipe,
  saveSettings,
  scrapLot,
  shopBook,
  startRun,
  stepRecipe,
  weighSpool,
} from '../../src/workshop/index.js';
import { bronze36 } from '../fixtures/winders.js';
import { engines } from '../store/harness.js';
import { P12, recipe, SmallShop, W36 } from './small-shop.js';

const KEY = '36 wound phosphor-bronze ball 1000 mm';

/** Wire of one string by the recipe, mg: what the core says of it. */
const perString = wirePerString(bronze36('hex'), 1);
if (!perString.ok) throw new Error('the recipe of this test cannot be made');
const [CORE_MG = 0, WRAP_MG = 0] = perString.value.map(({ kg }) => mgFromKg(kg));

describe.each(engines())('production on $name', (engine) => {
  const open = () => SmallShop.open(engine);

  async function planned(shop: SmallShop, machineId = shop.machines.servo): Promise<string> {
    const id = newId();
    const name = `run ${id}`;
    const { bronze36: recipeId } = shop.recipes;
    await shop.done(planRun, { id, name, recipeId, machineId, spec: W36, quantity: 100 });
    return id;
  }

  async function running(shop: SmallShop) {
    const core = await shop.spool(shop.wires.core, 2, 'core one');
    const wrap = await shop.spool(shop.wires.wrap, 1, 'wrap one');
    const runId = await planned(shop);
    await shop.done(startRun, { runId, expectedVersion: 1, spoolIds: [wrap, core] });
    return { runId, core, wrap };
  }

  const closing = (shop: SmallShop, runId: string, expectedVersion = 2) => ({
    runId,
    expectedVersion,
    lotId: newId(),
    lotName: `lot ${newId()}`,
    binId: shop.bins.first,
    good: 100,
    scrap: [{ reason: 'gap', count: 10 }],
    spools: [],
  });

  const spoolOf = (shop: SmallShop, id: string) =>
    shop.store.read(async ({ records }) => (await records.get('spool', id))!);

  describe('what a machine was set to', () => {
    const book = async (shop: SmallShop) => {
      const { rules, rates } = demoWorkshop();
      const id = newId();
      await shop.ask(saveSettings, {
        id,
        body: {
          name: 'A shop',
          invented: true,
          rules: { ...rules, workingDays: [...rules.workingDays] },
          rates,
        },
      });
      return shop.store.read((tx) => shopBook(tx));
    };

    it('is what later runs lean on, with the lots that were wound, once the run is closed', async () => {
      const shop = await open();
      const { runId } = await running(shop);
      const settings = { coreTensionN: 42, layers: [{ tensionN: 5.5, spindleRpm: 1800 }] };
      const written = await shop.done(recordRunSettings, { runId, expectedVersion: 2, ...settings });
      expect(written.body.settings).toMatchObject({ ...settings, how: 'written-down' });
      expect((await book(shop)).shop).not.toHaveProperty('record');
      await shop.done(closeRun, closing(shop, runId, 3));
      const { shop: known } = await book(shop);
      expect(known.record).toMatchObject([
        {
          runId,
          machineId: known.machines.find(({ kind }) => kind === 'winder')!.id,
          core: { tensionN: 42, lot: expect.any(String) },
          layers: [{ tensionN: 5.5, spindleRpm: 1800, lot: expect.any(String) }],
        },
      ]);
      const machine = known.machines.find(({ id }) => id === known.record![0]!.machineId)!;
      const recipe = known.recipes.find(({ id }) => id === known.record![0]!.recipeId)!;
      const sheet = setUp({ machine, recipe, spec: W36, lotId: 'next', quantity: 10, ...whatIsKnown(known) });
      if (!sheet.ok) throw new Error(sheet.fault.code);
      expect(sheet.value.coreTension).toMatchObject({ kind: 'from-record', leanedOn: [{ runId }] });
      // The same machine, recipe and lot: worth a whole run, s0^-2 / (s0^-2 + s^-2).
      expect(sheet.value.coreTension).toHaveProperty('startShare', expect.closeTo(0.0755, 4));
    });

    it('is taken from the last trial string where nobody wrote it down', async () => {
      const shop = await open();
      const { runId } = await running(shop);
      const string = { runId, position: 1, setBy: 'advice' } as const;
      await shop.done(recordTrialString, { ...string, id: newId(), number: 1, setting: 5 });
      await shop.done(recordTrialString, { ...string, id: newId(), number: 2, setting: 6.2 });
      await shop.done(closeRun, closing(shop, runId));
      const { shop: known } = await book(shop);
      expect(known.record).toMatchObject([{ layers: [{ tensionN: 6.2 }] }]);
    });

    it('has no more layers than the string, and is written only while the run goes on', async () => {
      const shop = await open();
      const { runId } = await running(shop);
      const layers = [{ tensionN: 5 }, { tensionN: 6 }];
      expect(await shop.refused(recordRunSettings, { runId, expectedVersion: 2, layers })).toMatchObject({
        code: 'run.no-such-layer',
        layers: 1,
      });
      await shop.done(closeRun, closing(shop, runId));
      expect((await shop.refused(recordRunSettings, { runId, expectedVersion: 3, layers: [] })).code).toBe(
        'run.not-live',
      );
      expect((await book(shop)).shop).not.toHaveProperty('record');
    });
  });

  describe('a recipe', () => {
    it('is a prediction when written, steps through its life, and is a prediction again once edited', async () => {
      const shop = await open();
      const id = shop.recipes.bronze36;
      expect((await shop.done(stepRecipe, { id, expectedVersion: 1, step: 'try', note: '' })).state).toBe(
        'on-trial',
      );
      const settled = await shop.done(stepRecipe, {
        id,
        expectedVersion: 2,
        step: 'calibrate',
        note: 'on the servo',
      });
      expect(settled).toMatchObject({ state: 'calibrated', version: 3, body: { note: 'on the servo' } });
      const edited = await shop.done(saveRecipe, {
        id,
        expectedVersion: 3,
        body: { ...settled.body, note: 'closer' },
      });
      expect(edited).toMatchObject({ state: 'predicted', version: 4 });
    });

    it('that two people edit is refused to the second, with the record as it stands', async () => {
      const shop = await open();
      const id = shop.recipes.bronze36;
      const { core, wrap } = shop.wires;
      const body = recipe('bronze 36', bronze36('hex'), core, [wrap]);
      await shop.done(saveRecipe, { id, expectedVersion: 1, body: { ...body, note: 'hers' } });
      const fault = await shop.refused(saveRecipe, {
        id,
        expectedVersion: 1,
        body: { ...body, note: 'his' },
      });
      expect(fault).toMatchObject({
        code: 'stale-version',
        kind: 'recipe',
        expectedVersion: 1,
        current: { version: 2, body: { note: 'hers' } },
      });
    });

    it('names the wires that it is made of, and a name of its own', async () => {
      const shop = await open();
      const { core, wrap, plain } = shop.wires;
      const made = bronze36('hex');
      const save = (name: string, coreId: string, wraps: string[]) =>
        shop.refused(saveRecipe, { id: newId(), body: recipe(name, made, coreId, wraps) });
      expect(await save('other core', plain, [wrap])).toMatchObject({
        code: 'recipe.other-wire',
        piece: 'core',
      });
      expect(await save('other wrap', core, [plain])).toMatchObject({
        code: 'recipe.other-wire',
        piece: 'wrap-1',
      });
      expect(await save('no wrap', core, [])).toMatchObject({
        code: 'recipe.wraps-missing',
        layers: 1,
        wires: 0,
      });
      expect(await save('Bronze  36', core, [wrap])).toMatchObject({ code: 'taken', key: 'name' });
      expect(await save('lost', newId(), [wrap])).toMatchObject({ code: 'record.missing', kind: 'wire' });
    });

    it('that is retired is neither edited nor planned, and says which steps it can take', async () => {
      const shop = await open();
      const id = shop.recipes.bronze36;
      const { body } = await shop.done(stepRecipe, { id, expectedVersion: 1, step: 'retire', note: '' });
      expect(await shop.refused(saveRecipe, { id, expectedVersion: 2, body })).toMatchObject({
        code: 'lifecycle.step-refused',
        state: 'retired',
        step: 'edit',
        allowed: ['revive'],
      });
      const run = {
        id: newId(),
        name: 'r',
        recipeId: id,
        machineId: shop.machines.servo,
        spec: W36,
        quantity: 1,
      };
      expect(await shop.refused(planRun, run)).toMatchObject({
        code: 'run.recipe-retired',
        recipeName: 'bronze 36',
      });
    });

    it('that is retired after its run was planned keeps the run from starting', async () => {
      const shop = await open();
      const runId = await planned(shop);
      const spoolIds = [await shop.spool(shop.wires.core, 1), await shop.spool(shop.wires.wrap, 1)];
      await shop.done(stepRecipe, {
        id: shop.recipes.bronze36,
        expectedVersion: 1,
        step: 'retire',
        note: '',
      });
      expect((await shop.refused(startRun, { runId, expectedVersion: 1, spoolIds })).code).toBe(
        'run.recipe-retired',
      );
    });
  });

  describe('a run', () => {
    it('is not planned on a machine that cannot make it, with the reasons', async () => {
      const shop = await open();
      const run = { id: newId(), name: 'r', recipeId: shop.recipes.bronze36, spec: W36, quantity: 1 };
      const onBench = { ...run, machineId: shop.machines.bench };
      expect(await shop.refused(planRun, onBench)).toMatchObject({
        code: 'run.machine-unable',
        machineName: 'Cutting bench',
        reasons: [{ code: 'winding.wrong-station', needs: 'winder' }],
      });
      const tooLong = { ...run, machineId: shop.machines.servo, spec: { ...W36, lengthM: 1.5 } };
      expect(await shop.refused(planRun, tooLong)).toMatchObject({
        reasons: [{ code: 'winding.string-too-long', lengthM: 1.5, mostM: 1.2 }],
      });
      const others = { ...run, machineId: shop.machines.servo, spec: { ...W36, gaugeThou: 38 } };
      expect((await shop.refused(planRun, others)).code).toBe('run.recipe-makes-others');
    });

    it('starts with its spools mounted, core first, in the name of who started it', async () => {
      const shop = await open();
      const { runId, core, wrap } = await running(shop);
      const run = await shop.store.read(({ records }) => records.get('run', runId));
      expect(run).toMatchObject({
        state: 'running',
        body: { spoolIds: [core, wrap], winderId: shop.winder, recipeVersion: 1 },
      });
      expect(await spoolOf(shop, core)).toMatchObject({
        state: 'on-machine',
        body: { machineId: shop.machines.servo },
      });
    });

    it('does not start on a machine that is making another, and names that one', async () => {
      const shop = await open();
      const { runId: first } = await running(shop);
      const spoolIds = [await shop.spool(shop.wires.core, 1), await shop.spool(shop.wires.wrap, 1)];
      const second = await planned(shop);
      const start = { runId: second, expectedVersion: 1, spoolIds };
      expect(await shop.refused(startRun, start)).toMatchObject({
        code: 'run.machine-busy',
        machineName: 'Servo one',
        runId: first,
        runName: `run ${first}`,
      });
    });

    it('that is paused lets another go first, and resumes once the machine is free', async () => {
      const shop = await open();
      const { runId: first, core, wrap } = await running(shop);
      await shop.done(pauseRun, { runId: first, expectedVersion: 2 });
      const second = await planned(shop);
      await shop.done(startRun, { runId: second, expectedVersion: 1, spoolIds: [core, wrap] });
      const resume = { runId: first, expectedVersion: 3 };
      expect(await shop.refused(resumeRun, resume)).toMatchObject({
        code: 'run.machine-busy',
        runId: second,
      });
      await shop.done(closeRun, closing(shop, second));
      expect((await spoolOf(shop, core)).state).toBe('on-machine');
      expect((await shop.done(resumeRun, resume)).state).toBe('running');
    });

    it('takes spools of its own wires only, all of them, and none that is elsewhere or kept from use', async () => {
      const shop = await open();
      const { core: mounted } = await running(shop);
      const core = await shop.spool(shop.wires.core, 1);
      const wrap = await shop.spool(shop.wires.wrap, 1);
      const plain = await shop.spool(shop.wires.plain, 1);
      const bad = await shop.spool(shop.wires.core, 1);
      await shop.done(quarantineSpool, { spoolId: bad, expectedVersion: 1, reason: 'rust' });
      const runId = await planned(shop, shop.machines.gear);
      const start = (...spoolIds: string[]) =>
        shop.refused(startRun, { runId, expectedVersion: 1, spoolIds });
      expect(await start(mounted, wrap)).toMatchObject({
        code: 'run.spool-elsewhere',
        spoolName: 'core one',
        machineName: 'Servo one',
      });
      expect(await start(bad, wrap)).toMatchObject({ code: 'run.spool-not-usable', state: 'quarantined' });
      expect(await start(core)).toMatchObject({ code: 'run.spool-missing', wireName: 'bronze 10' });
      expect(await start(core, wrap, plain)).toMatchObject({
        code: 'run.spool-of-other-wire',
        wireName: 'round steel 12',
        wantedNames: ['hex core 16', 'bronze 10'],
      });
      expect((await start(core, newId())).code).toBe('record.missing');
    });

    it('takes no step that its life does not have, and says which it may take', async () => {
      const shop = await open();
      const runId = await planned(shop);
      expect(await shop.refused(pauseRun, { runId, expectedVersion: 1 })).toMatchObject({
        code: 'lifecycle.step-refused',
        of: 'run',
        state: 'planned',
        allowed: ['start', 'abandon'],
      });
      expect(await shop.refused(closeRun, closing(shop, runId, 1))).toMatchObject({
        code: 'run.not-live',
        state: 'planned',
      });
    });

    it('takes no spools of a paused run that is on another machine with them', async () => {
      const shop = await open();
      const { runId, core, wrap } = await running(shop);
      await shop.done(pauseRun, { runId, expectedVersion: 2 });
      const other = await planned(shop, shop.machines.gear);
      const start = { runId: other, expectedVersion: 1, spoolIds: [core, wrap] };
      expect((await shop.refused(startRun, start)).code).toBe('run.spool-elsewhere');
    });
  });

  describe('a spool that is changed', () => {
    it('gives the run what it lost by weight, and its successor is mounted', async () => {
      const shop = await open();
      const { runId, core, wrap } = await running(shop);
      const fresh = await shop.spool(shop.wires.core, 1);
      const change = { runId, expectedVersion: 2, oldSpoolId: core, oldGrossKg: 2.4, newSpoolId: fresh };
      const { record, usedMg } = await shop.done(changeSpool, change);
      expect(usedMg).toBe(100_000);
      expect(record.body).toMatchObject({
        spoolIds: [fresh, wrap],
        takenOff: [{ spoolId: core, mg: 100_000 }],
      });
      expect(await spoolOf(shop, core)).toMatchObject({
        state: 'on-shelf',
        body: { weighed: { grossKg: 2.4 } },
      });
      expect((await spoolOf(shop, core)).body).not.toHaveProperty('machineId');
      expect((await spoolOf(shop, fresh)).state).toBe('on-machine');
      const wound = await shop.balances({ account: 'wound-in', lot: core });
      expect(wound.find(({ unit }) => unit === 'mg')?.quantity).toBe(100_000);
    });

    it('is empty where it weighs what the bare spool weighs', async () => {
      const shop = await open();
      const { runId, core } = await running(shop);
      const fresh = await shop.spool(shop.wires.core, 1);
      await shop.done(changeSpool, {
        runId,
        expectedVersion: 2,
        oldSpoolId: core,
        oldGrossKg: 0.5,
        newSpoolId: fresh,
      });
      expect((await spoolOf(shop, core)).state).toBe('empty');
      expect(await shop.balances({ account: `spool/${core}` })).toEqual([]);
    });

    it('is refused where it is heavier than before, lighter than empty, of other wire or not on the run', async () => {
      const shop = await open();
      const { runId, core, wrap } = await running(shop);
      const fresh = await shop.spool(shop.wires.core, 1);
      const change = { runId, expectedVersion: 2, oldSpoolId: core, oldGrossKg: 2.4, newSpoolId: fresh };
      const refused = (part: Partial<typeof change>) => shop.refused(changeSpool, { ...change, ...part });
      expect(await refused({ oldGrossKg: 2.6 })).toMatchObject({
        code: 'spool.heavier-than-before',
        beforeKg: 2.5,
      });
      expect((await refused({ oldGrossKg: 0.4 })).code).toBe('spool.lighter-than-empty');
      expect((await refused({ newSpoolId: wrap })).code).toBe('run.spool-on-it');
      expect((await refused({ newSpoolId: await shop.spool(shop.wires.wrap, 1) })).code).toBe(
        'run.spool-of-other-wire',
      );
      expect((await refused({ oldSpoolId: fresh })).code).toBe('run.spool-not-on-it');
    });
  });

  describe('a run that is closed', () => {
    it('puts its strings into the bin, its scrap by reason, and wire off spools by the recipe where not weighed', async () => {
      const shop = await open();
      const { runId, core, wrap } = await running(shop);
      const close = closing(shop, runId);
      const { run, lot, wire } = await shop.done(closeRun, close);
      expect(run).toMatchObject({
        state: 'closed',
        body: { goodCount: 100, scrapCount: 10, lotId: close.lotId },
      });
      expect(lot).toMatchObject({
        state: 'in-check',
        body: { made: 100, spoolIds: [core, wrap], stringKey: KEY },
      });
      expect(await shop.balances({ item: `string/${KEY}` })).toMatchObject([
        { account: `bin/${shop.bins.first}`, lot: close.lotId, quantity: 100 },
        { account: 'made', quantity: -110 },
        { account: 'scrap/gap', quantity: 10 },
      ]);
      // The machine winds at the pitch that it has, so its wire is the recipe's to a part in a thousand.
      const [byCore, byWrap] = wire;
      expect(byCore).toMatchObject({ spoolId: core, how: 'computed', mg: CORE_MG * 110 });
      expect(byWrap).toMatchObject({ spoolId: wrap, how: 'computed' });
      expect(byWrap!.mg / (WRAP_MG * 110)).toBeCloseTo(1, 2);
      const left = await shop.balances({ account: `spool/${core}` });
      expect(left.find(({ unit }) => unit === 'mg')?.quantity).toBe(2_000_000 - byCore!.mg);
      const scrapped = await shop.balances({ account: 'scrap/gap', lot: core });
      expect(scrapped.find(({ unit }) => unit === 'mg')?.quantity).toBe(Math.floor((byCore!.mg * 10) / 110));
      expect((await spoolOf(shop, core)).state).toBe('on-shelf');
    });

    it('takes what the scale says where a spool was weighed, and says so', async () => {
      const shop = await open();
      const { runId, core } = await running(shop);
      const usedKg = 0.14;
      const { wire } = await shop.done(closeRun, {
        ...closing(shop, runId),
        spools: [{ spoolId: core, grossKg: 2.5 - usedKg }],
      });
      expect(wire).toMatchObject([{ spoolId: core, how: 'weighed', mg: 140_000 }, { how: 'computed' }]);
      const left = await shop.balances({ account: `spool/${core}` });
      expect(left.find(({ unit }) => unit === 'mg')?.quantity).toBe(1_860_000);
    });

    it('counts the spools that were changed before, in the wire and in the lot', async () => {
      const shop = await open();
      const { runId, core, wrap } = await running(shop);
      const fresh = await shop.spool(shop.wires.core, 1);
      await shop.done(changeSpool, {
        runId,
        expectedVersion: 2,
        oldSpoolId: core,
        oldGrossKg: 2.45,
        newSpoolId: fresh,
      });
      const { lot, wire } = await shop.done(closeRun, closing(shop, runId, 3));
      expect(wire[0]).toMatchObject({ spoolId: fresh, mg: CORE_MG * 110 - 50_000 });
      expect(lot?.body.spoolIds).toEqual([core, fresh, wrap]);
    });

    it('writes wire that the books did not have as a weighing difference', async () => {
      const shop = await open();
      const { runId, core } = await running(shop);
      // Someone weighed wrong before: the books lost a kilogram that is on the spool.
      await shop.done(pauseRun, { runId, expectedVersion: 2 });
      const second = await planned(shop);
      const wrap2 = await shop.spool(shop.wires.wrap, 5);
      await shop.done(startRun, { runId: second, expectedVersion: 1, spoolIds: [core, wrap2] });
      await shop.done(closeRun, { ...closing(shop, second), good: 1000, scrap: [] });
      const before = await shop.balances({ account: `spool/${core}` });
      const bookMg = before.find(({ unit }) => unit === 'mg')!.quantity;
      const { wire } = await shop.done(closeRun, {
        ...closing(shop, runId, 3),
        scrap: [],
        spools: [{ spoolId: core, grossKg: 2.45 }],
      });
      expect(wire[0]).toMatchObject({ spoolId: core, how: 'computed', mg: CORE_MG * 100 });
      const found = await shop.balances({ account: 'count-difference/weighing', lot: core });
      expect(found.find(({ unit }) => unit === 'mg')?.quantity).toBe(-(1_950_000 + CORE_MG * 100 - bookMg));
      const left = await shop.balances({ account: `spool/${core}` });
      expect(left.find(({ unit }) => unit === 'mg')?.quantity).toBe(1_950_000);
    });

    it('is refused where there are more strings than wire, whether counted or weighed', async () => {
      const shop = await open();
      const { runId, core } = await running(shop);
      const close = closing(shop, runId);
      const scrap = [{ reason: 'gap', count: 5000 }];
      expect(await shop.refused(closeRun, { ...close, scrap })).toMatchObject({
        code: 'run.more-than-wire',
        strings: 5100,
        takenMg: 2_000_000,
        wireName: 'hex core 16',
      });
      const spools = [{ spoolId: core, grossKg: 2.49 }];
      expect(await shop.refused(closeRun, { ...close, spools })).toMatchObject({
        code: 'run.more-than-wire',
        takenMg: 10_000,
      });
    });

    it('is refused to the second of two people, with both versions', async () => {
      const shop = await open();
      const { runId } = await running(shop);
      await shop.done(closeRun, closing(shop, runId));
      expect(await shop.refused(closeRun, closing(shop, runId))).toMatchObject({
        code: 'stale-version',
        kind: 'run',
        expectedVersion: 2,
        current: { version: 3, state: 'closed' },
      });
    });

    it('is closed once where two close it at the same moment', async () => {
      const shop = await open();
      const { runId } = await running(shop);
      const both = await Promise.all([
        shop.ask(closeRun, closing(shop, runId)),
        shop.ask(closeRun, closing(shop, runId)),
      ]);
      expect(both.filter(({ ok }) => ok)).toHaveLength(1);
      expect(await shop.balances({ account: 'made', item: `string/${KEY}` })).toMatchObject([
        { quantity: -110 },
      ]);
    });

    it('is never seen half closed by those who look meanwhile', async () => {
      const shop = await open();
      const { runId } = await running(shop);
      const look = () =>
        shop.store.read(async ({ records, ledger }) => {
          const state = (await records.get('run', runId))?.state;
          const strings = await ledger.balance(`bin/${shop.bins.first}`, `string/${KEY}`);
          const lots = await records.all('string-lot');
          return `${state}, ${strings} strings, ${lots.length} lots`;
        });
      const looks = [look(), look()];
      const done = shop.ask(closeRun, closing(shop, runId)).then((result) => expect(result.ok).toBe(true));
      for (let turn = 0; turn < 20; turn += 1) looks.push(look(), new Promise(setImmediate).then(look));
      await done;
      looks.push(look());
      const seen = new Set(await Promise.all(looks));
      expect([...seen].sort()).toEqual(['closed, 100 strings, 1 lots', 'running, 0 strings, 0 lots']);
    });

    it('puts nothing into a bin for other strings, nor from spools that it did not have', async () => {
      const shop = await open();
      const { runId } = await running(shop);
      const close = closing(shop, runId);
      const binId = shop.bins.plain12;
      expect(await shop.refused(closeRun, { ...close, binId })).toMatchObject({
        code: 'bin.for-other-strings',
        binName: 'B1',
      });
      const spools = [{ spoolId: await shop.spool(shop.wires.core, 1), grossKg: 1 }];
      expect((await shop.refused(closeRun, { ...close, spools })).code).toBe('run.spool-not-on-it');
    });

    it('without a good string makes no lot, and what was used is scrap', async () => {
      const shop = await open();
      const { runId, core, wrap } = await running(shop);
      const spools = [
        { spoolId: core, grossKg: 2.49 },
        { spoolId: wrap, grossKg: 1.5 },
      ];
      const answer = await shop.done(closeRun, { ...closing(shop, runId), good: 0, scrap: [], spools });
      expect(answer.lot).toBeUndefined();
      expect(answer.run.body).not.toHaveProperty('lotId');
      const scrap = await shop.balances({ account: 'scrap/no-string-made', lot: core });
      expect(scrap.find(({ unit }) => unit === 'mg')?.quantity).toBe(10_000);
    });

    it('goes by the recipe that it was begun with, though that was edited and retired since', async () => {
      const shop = await open();
      const { runId } = await running(shop);
      const id = shop.recipes.bronze36;
      await shop.done(stepRecipe, { id, expectedVersion: 1, step: 'retire', note: '' });
      const { wire } = await shop.done(closeRun, closing(shop, runId));
      expect(wire[0]?.mg).toBe(CORE_MG * 110);
    });

    it('of plain strings is cut at the bench', async () => {
      const shop = await open();
      const id = newId();
      const machineId = shop.machines.bench;
      const recipeId = shop.recipes.plain12;
      await shop.done(planRun, { id, name: 'plain', recipeId, machineId, spec: P12, quantity: 50 });
      const spoolIds = [await shop.spool(shop.wires.plain, 1)];
      await shop.done(startRun, { runId: id, expectedVersion: 1, spoolIds });
      const { wire } = await shop.done(closeRun, { ...closing(shop, id), binId: shop.bins.plain12 });
      // 110 strings of 1.1 m (tail and twist with it) of 12 thou steel at 7.85 g/cm3, by hand: 0.0693 kg.
      expect(wire[0]!.mg / 1e6).toBeCloseTo(110 * 1.1 * (Math.PI / 4) * 0.3048e-3 ** 2 * 7850, 3);
    });
  });

  describe('a run that is abandoned', () => {
    it('scraps what weighed spools lost, and gives its spools back', async () => {
      const shop = await open();
      const { runId, core, wrap } = await running(shop);
      const spools = [{ spoolId: core, grossKg: 2.47 }];
      const { run, wire } = await shop.done(abandonRun, {
        runId,
        expectedVersion: 2,
        reason: 'broken guide',
        spools,
      });
      expect(run).toMatchObject({ state: 'abandoned', body: { note: 'broken guide', spoolIds: [] } });
      expect(wire).toMatchObject([{ spoolId: core, mg: 30_000, how: 'weighed' }]);
      const scrap = await shop.balances({ account: 'scrap/broken guide', lot: core });
      expect(scrap.find(({ unit }) => unit === 'mg')?.quantity).toBe(30_000);
      expect((await spoolOf(shop, wrap)).state).toBe('on-shelf');
    });

    it('may be one that never began', async () => {
      const shop = await open();
      const runId = await planned(shop);
      const { run } = await shop.done(abandonRun, { runId, expectedVersion: 1, reason: 'not wanted' });
      expect(run.state).toBe('abandoned');
    });
  });

  describe('readings of the floor', () => {
    it('are of a live run and of a position that its machine has', async () => {
      const shop = await open();
      const { runId } = await running(shop);
      const id = newId();
      await shop.done(recordTrialString, { id, runId, number: 1, position: 1 });
      const second = { id: newId(), runId, number: 2, position: 2 } as const;
      expect(await shop.refused(recordTrialString, second)).toMatchObject({
        code: 'run.no-such-position',
        positions: 1,
      });
      const again = { id: newId(), runId, number: 1, position: 1 } as const;
      expect(await shop.refused(recordTrialString, again)).toMatchObject({ code: 'taken', key: 'number' });
      const judged = await shop.done(judgeTrialString, { trialStringId: id, runId, verdict: 'good' });
      expect(judged).toMatchObject({ id, verdict: 'good', by: `person/${shop.winder}` });
      const stray = { trialStringId: newId(), runId, verdict: 'good' } as const;
      expect(await shop.refused(judgeTrialString, stray)).toMatchObject({
        code: 'record.missing',
        kind: 'trial-string',
      });
      const idle = { id: newId(), runId: await planned(shop), number: 1, position: 1 } as const;
      expect((await shop.refused(recordTrialString, idle)).code).toBe('run.not-live');
    });

    it('keep what a trial string was wound at, and teach later runs once the run is closed', async () => {
      const shop = await open();
      const { runId } = await running(shop);
      const dialled = { setting: 12.5, setBy: 'override', seen: 'overlaps' } as const;
      const first = { id: newId(), runId, number: 1, position: 1, ...dialled } as const;
      expect(await shop.done(recordTrialString, first)).toMatchObject(dialled);
      const diameters = [0.000914, 0.000916].map((value, at) => ({
        id: newId(),
        runId,
        trialStringId: first.id,
        quantity: 'diameter' as const,
        value,
        placeM: 0.3 * (at + 1),
        rotationDeg: 0,
        instrument: 'micrometer 2',
      }));
      await shop.done(recordMeasurements, { rows: diameters });
      const past = () => shop.store.read((tx) => pastDialIns(tx, shop.machines.servo));
      expect(await past()).toEqual([]);
      await shop.done(closeRun, closing(shop, runId));
      const [taught, ...more] = await past();
      expect(more).toEqual([]);
      expect(taught).toMatchObject({ positions: [{ strings: [{ setting: 12.5 }] }] });
      const { strings, overrideErrorsM } = taught!.positions[0]!;
      expect(strings[0]!.errorsM[1]! - strings[0]!.errorsM[0]!).toBeCloseTo(2e-6, 12);
      expect(overrideErrorsM).toHaveLength(1);
    });

    it('are written all or none', async () => {
      const shop = await open();
      const { runId } = await running(shop);
      const row = (value: number) =>
        ({ id: newId(), runId, quantity: 'diameter', value, instrument: 'micrometer 2' }) as const;
      expect(await shop.done(recordMeasurements, { rows: [row(0.000914), row(0.000912)] })).toEqual({
        written: 2,
      });
      const stray = { ...row(0.0009), trialStringId: newId() };
      expect((await shop.refused(recordMeasurements, { rows: [row(0.0009), stray] })).code).toBe(
        'record.missing',
      );
      const written = () => shop.store.read(({ readings }) => readings.measurements({ runId, limit: 10 }));
      expect((await written()).items.map(({ value }) => value)).toEqual([0.000914, 0.000912]);
    });

    it('that are missing or no numbers are refused, and never become 0', async () => {
      const shop = await open();
      const { runId } = await running(shop);
      const row = { id: newId(), runId, quantity: 'diameter', instrument: 'micrometer 2' };
      for (const value of [undefined, null, 0, '0.0009', true, [0.0009]]) {
        const fault = await shop.refused(recordMeasurements, { rows: [{ ...row, value }] } as never);
        expect(fault, String(value)).toMatchObject({ code: 'input.invalid' });
      }
    });

    it('count good and scrap, of something, and scrap with its reason', async () => {
      const shop = await open();
      const { runId } = await running(shop);
      const tally = {
        id: newId(),
        runId,
        station: 'winder',
        outcome: 'scrap',
        reason: 'gap',
        count: 3,
      } as const;
      await shop.done(recordTally, tally);
      const { runId: _, ...ofNothing } = { ...tally, id: newId() };
      expect((await shop.refused(recordTally, ofNothing)).code).toBe('tally.of-nothing');
      const silent = { ...tally, id: newId(), reason: ' ' };
      expect((await shop.refused(recordTally, silent)).code).toBe('tally.without-reason');
      const { items } = await shop.store.read(({ readings }) => readings.tallies({ runId, limit: 10 }));
      expect(items).toMatchObject([{ reason: 'gap', count: 3, lotId: null }]);
    });
  });

  describe('a lot', () => {
    async function made(shop: SmallShop) {
      const { runId } = await running(shop);
      const close = closing(shop, runId);
      await shop.done(closeRun, close);
      return close.lotId;
    }

    it('is released in a name, held with a reason, and released again', async () => {
      const shop = await open();
      const lotId = await made(shop);
      const released = await shop.done(releaseLot, { lotId, expectedVersion: 1, reason: 'sound' });
      expect(released).toMatchObject({ state: 'released', body: { releasedBy: shop.winder } });
      const held = await shop.done(holdLot, { lotId, expectedVersion: 2, reason: 'dull' });
      expect(held).toMatchObject({ state: 'on-hold', body: { holdReason: 'dull' } });
      expect(held.body).not.toHaveProperty('releasedBy');
      const again = await shop.done(releaseLot, { lotId, expectedVersion: 3, reason: 'retested' });
      expect(again.body).not.toHaveProperty('holdReason');
    });

    it('on hold is not laid among other strings, and may lie by itself', async () => {
      const shop = await open();
      const held = await made(shop);
      const spoolIds = [await shop.spool(shop.wires.core, 1), await shop.spool(shop.wires.wrap, 1)];
      const other = await planned(shop);
      await shop.done(startRun, { runId: other, expectedVersion: 1, spoolIds });
      await shop.done(closeRun, { ...closing(shop, other), binId: shop.bins.second });
      await shop.done(holdLot, { lotId: held, expectedVersion: 1, reason: 'dull' });
      const move = { lotId: held, fromBinId: shop.bins.first, count: 100 };
      expect(await shop.refused(moveStrings, { ...move, toBinId: shop.bins.second })).toMatchObject({
        code: 'lot.on-hold',
        holdReason: 'dull',
        binName: 'A2',
      });
      expect(await shop.done(moveStrings, { ...move, toBinId: shop.bins.third })).toEqual({
        fromBin: 0,
        toBin: 100,
      });
    });

    it('that is scrapped leaves no string in any bin', async () => {
      const shop = await open();
      const lotId = await made(shop);
      const move = { lotId, fromBinId: shop.bins.first, toBinId: shop.bins.second, count: 40 };
      await shop.done(moveStrings, move);
      const { record, scrapped } = await shop.done(scrapLot, { lotId, expectedVersion: 1, reason: 'rust' });
      expect([record.state, scrapped]).toEqual(['scrapped', 100]);
      expect(await shop.balances({ accountPrefix: 'bin/' })).toEqual([]);
      expect(await shop.balances({ account: 'scrap/rust', lot: lotId })).toMatchObject([{ quantity: 100 }]);
      expect(await shop.refused(releaseLot, { lotId, expectedVersion: 2, reason: 'no' })).toMatchObject({
        code: 'lifecycle.step-refused',
        allowed: [],
      });
    });

    it('that is released is not scrapped before someone holds it', async () => {
      const shop = await open();
      const lotId = await made(shop);
      await shop.done(releaseLot, { lotId, expectedVersion: 1, reason: 'sound' });
      expect(await shop.refused(scrapLot, { lotId, expectedVersion: 2, reason: 'rust' })).toMatchObject({
        allowed: ['hold'],
      });
    });
  });

  it('a spool in a run is not weighed by itself while wire is missing from it', async () => {
    const shop = await open();
    const { runId, core } = await running(shop);
    const weigh = { spoolId: core, expectedVersion: 2, grossKg: 2.4 };
    expect(await shop.refused(weighSpool, weigh)).toMatchObject({ code: 'spool.in-run', runId });
    const quarantine = { spoolId: core, expectedVersion: 2, reason: 'rust' };
    expect(await shop.refused(quarantineSpool, quarantine)).toMatchObject({ code: 'spool.in-run', runId });
  });

  it('who may not wind may not start, close or measure', async () => {
    const shop = await open();
    const runId = await planned(shop);
    const actor = { by: 'person/x', permissions: permissionsOf(['packer', 'coiler', 'adviser']) };
    const start = { runId, expectedVersion: 1, spoolIds: [newId()] };
    expect(await shop.refused(startRun, start, { actor })).toEqual({
      code: 'permission.missing',
      permission: 'run.work',
    });
    expect((await shop.refused(closeRun, closing(shop, runId), { actor })).code).toBe('permission.missing');
  });
});
