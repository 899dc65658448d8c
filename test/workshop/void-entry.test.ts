import { createReadStream, createWriteStream, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { demoWorkshop } from '../../demo/index.js';
import { openStore } from '../../src/store/index.js';
import {
  calibrationSeen,
  closeRun,
  exportShop,
  holdLot,
  importShop,
  judgeTrialString,
  machineWearSeen,
  newId,
  pastDialIns,
  planRun,
  recordMeasurements,
  recordTally,
  recordTrialString,
  releaseLot,
  runsUnderWay,
  saveSettings,
  scrapStrings,
  shopBook,
  startRun,
  voidedEntries,
  voidMeasurement,
  voidTally,
  voidTrialString,
} from '../../src/workshop/index.js';
import { ask, engines } from '../store/harness.js';
import { SmallShop, W36 } from './small-shop.js';

const SLIP = 'a slip of the hand';
const NOW = '2026-03-03T08:00:00.000Z';
const folder = mkdtempSync(join(tmpdir(), 'tautwork-void-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe.each(engines())('an entry that is taken back, on $name', (engine) => {
  async function running() {
    const shop = await SmallShop.open(engine);
    const { name, invented, rules, rates } = demoWorkshop();
    const ruled = { ...rules, dayStartsAtMinute: 420, workingDays: [...rules.workingDays] };
    await shop.done(saveSettings, { id: newId(), body: { name, invented, rules: ruled, rates } });
    const core = await shop.spool(shop.wires.core, 2, 'core one');
    const wrap = await shop.spool(shop.wires.wrap, 1, 'wrap one');
    const runId = newId();
    const { bronze36: recipeId } = shop.recipes;
    const { servo: machineId } = shop.machines;
    await shop.done(planRun, { id: runId, name: 'run', recipeId, machineId, spec: W36, quantity: 100 });
    await shop.done(startRun, { runId, expectedVersion: 1, spoolIds: [wrap, core] });
    return { shop, runId, machineId };
  }

  const counted = (runId: string, outcome: 'good' | 'scrap', count = 1) => ({
    id: newId(),
    runId,
    station: 'winder' as const,
    outcome,
    reason: outcome === 'scrap' ? 'gap' : '',
    count,
  });
  const read = (runId: string, value: number, trialStringId?: string) => ({
    id: newId(),
    runId,
    ...(trialStringId === undefined ? {} : { trialStringId }),
    quantity: 'diameter' as const,
    value,
    placeM: 0.3,
    rotationDeg: 0,
    instrument: 'micrometer',
  });
  const closing = (shop: SmallShop, runId: string) => ({
    runId,
    expectedVersion: 2,
    lotId: newId(),
    lotName: 'lot',
    binId: shop.bins.first,
    good: 10,
    scrap: [],
    spools: [],
  });
  const tallies = (shop: SmallShop, of: { readonly runId?: string; readonly lotId?: string }) =>
    shop.store.read(async ({ readings }) => (await readings.tallies({ ...of, limit: 99 })).items);

  it('is a count that no sum has any more, while it, the taking back, its doer and reason stay', async () => {
    const { shop, runId } = await running();
    const [kept, wrong] = [counted(runId, 'good', 5), counted(runId, 'good', 50)];
    for (const row of [kept, wrong]) await shop.done(recordTally, row);
    const made = () =>
      shop.store.read(async (tx) => (await runsUnderWay(tx, await shopBook(tx))).map((run) => run.made));
    expect(await made()).toEqual([55]);
    await shop.done(voidTally, { id: newId(), tallyId: wrong.id, reason: SLIP });
    expect(await made()).toEqual([5]);
    expect((await tallies(shop, { runId })).map(({ id }) => id)).toEqual([kept.id]);
    const [told] = await shop.store.read((tx) => voidedEntries(tx, { runId }));
    expect(told).toMatchObject({ entryId: wrong.id, reason: SLIP, by: `person/${shop.winder}` });
    expect(told?.was).toMatchObject({ of: 'tally', outcome: 'good', count: 50 });
    const { items } = await shop.store.read(({ journal }) => journal.list({ recordId: runId, limit: 9 }));
    expect(items.slice(0, 3).map(({ useCase }) => useCase)).toEqual([
      'void-tally',
      'record-tally',
      'record-tally',
    ]);
  });

  it('is taken back once, though two hands do it', async () => {
    const { shop, runId } = await running();
    const row = counted(runId, 'scrap');
    await shop.done(recordTally, row);
    const first = await shop.done(voidTally, { id: newId(), tallyId: row.id, reason: SLIP });
    expect(await shop.done(voidTally, { id: newId(), tallyId: row.id, reason: SLIP })).toEqual(first);
    expect(await shop.store.read((tx) => voidedEntries(tx, { runId }))).toHaveLength(1);
    expect(await shop.refused(voidTally, { id: newId(), tallyId: newId(), reason: SLIP })).toMatchObject({
      code: 'record.missing',
    });
  });

  it('is a reading or a trial string from which nothing is learned: all is as if it had never been', async () => {
    const { shop, runId, machineId } = await running();
    const trial = {
      id: newId(),
      runId,
      number: 1,
      position: 1 as const,
      setting: 12,
      setBy: 'advice' as const,
    };
    await shop.done(recordTrialString, trial);
    const right = [
      { ...read(runId, 0.00091, trial.id), rotationDeg: 0 },
      { ...read(runId, 0.000912, trial.id), rotationDeg: 30 },
    ];
    await shop.done(recordMeasurements, { rows: right });
    const learned = () =>
      shop.store.read(async (tx) => ({
        calibration: await calibrationSeen(tx, NOW),
        wear: await machineWearSeen(tx, NOW),
        strings: await tx.readings.readingsByString({}),
        measurements: (await tx.readings.measurements({ runId, limit: 99 })).items,
        trials: await tx.readings.trialStrings(runId),
      }));
    const before = await learned();
    const slip = read(runId, 0.0091, trial.id);
    const second = { ...trial, id: newId(), number: 2, setting: 99 };
    await shop.done(recordMeasurements, { rows: [slip] });
    await shop.done(recordTrialString, second);
    await shop.done(recordMeasurements, { rows: [read(runId, 0.0005, second.id)] });
    expect((await learned()).strings).not.toEqual(before.strings);
    await shop.done(voidMeasurement, { id: newId(), measurementId: slip.id, reason: SLIP });
    await shop.done(voidTrialString, { id: newId(), trialStringId: second.id, reason: SLIP });
    expect(await learned()).toEqual(before);
    // Its number stays taken: what was entered under it is in the journal.
    expect(await shop.refused(recordTrialString, { ...second, id: newId() })).toMatchObject({
      code: 'taken',
    });

    await shop.done(closeRun, closing(shop, runId));
    const [past] = await shop.store.read((tx) => pastDialIns(tx, machineId));
    expect(past?.positions.map(({ strings }) => strings.length)).toEqual([1]);
  });

  it('leaves no run dialled in where its only string was taken back', async () => {
    const { shop, runId, machineId } = await running();
    const trial = {
      id: newId(),
      runId,
      number: 1,
      position: 1 as const,
      setting: 12,
      setBy: 'advice' as const,
    };
    await shop.done(recordTrialString, trial);
    const dialled = () =>
      shop.store.read(({ readings }) => readings.runsDialledIn({ machineId, isElsewhere: false, limit: 9 }));
    expect(await dialled()).toEqual([runId]);
    await shop.done(voidTrialString, { id: newId(), trialStringId: trial.id, reason: SLIP });
    expect(await dialled()).toEqual([]);
  });

  it('is a verdict, too, while the run goes on', async () => {
    const { shop, runId } = await running();
    const trial = { id: newId(), runId, number: 1, position: 1 as const };
    await shop.done(recordTrialString, trial);
    const judge = { trialStringId: trial.id, runId };
    await shop.done(judgeTrialString, { ...judge, verdict: 'scrap' });
    expect((await shop.done(judgeTrialString, { ...judge, verdict: 'open' })).verdict).toBe('open');
    await shop.done(judgeTrialString, { ...judge, verdict: 'good' });
    await shop.done(closeRun, closing(shop, runId));
    expect(await shop.refused(judgeTrialString, { ...judge, verdict: 'open' })).toMatchObject({
      code: 'run.not-live',
    });
  });

  it('cannot be one of a run that is closed: its lot is booked, and the refusal says what to do instead', async () => {
    const { shop, runId } = await running();
    const row = counted(runId, 'good');
    const reading = read(runId, 0.0009);
    const trial = { id: newId(), runId, number: 1, position: 1 as const };
    await shop.done(recordTally, row);
    await shop.done(recordMeasurements, { rows: [reading] });
    await shop.done(recordTrialString, trial);
    await shop.done(closeRun, closing(shop, runId));
    const refusal = { code: 'entry.run-over', runId, state: 'closed' };
    const of = { id: newId(), reason: SLIP };
    expect(await shop.refused(voidTally, { ...of, tallyId: row.id })).toMatchObject(refusal);
    expect(await shop.refused(voidMeasurement, { ...of, measurementId: reading.id })).toMatchObject(refusal);
    expect(await shop.refused(voidTrialString, { ...of, trialStringId: trial.id })).toMatchObject(refusal);
  });

  it('is a reject of coiling, whose string then lies in its bin again; not once the lot is judged', async () => {
    const { shop, runId } = await running();
    const close = closing(shop, runId);
    await shop.done(closeRun, close);
    const { lotId, binId } = close;
    const lying = () => shop.balances({ account: `bin/${binId}` });
    const reject = {
      id: newId(),
      lotId,
      station: 'coiler',
      outcome: 'scrap',
      reason: 'rust',
      count: 1,
    } as const;
    const other = { ...reject, id: newId() };
    for (const each of [reject, other]) await shop.done(recordTally, each);
    // Only the second was taken from its bin, and so only that one is laid back.
    await shop.done(scrapStrings, { lotId, binId, count: 1, reason: 'rust', tallyId: other.id });
    expect((await lying())[0]?.quantity).toBe(9);
    await shop.done(voidTally, { id: newId(), tallyId: reject.id, reason: SLIP });
    expect((await lying())[0]?.quantity).toBe(9);
    await shop.done(voidTally, { id: newId(), tallyId: other.id, reason: SLIP });
    await shop.done(voidTally, { id: newId(), tallyId: other.id, reason: SLIP });
    expect((await lying())[0]?.quantity).toBe(10);
    expect(await shop.balances({ account: 'scrap/rust' })).toEqual([]);
    expect(await tallies(shop, { lotId })).toEqual([]);
    expect(await shop.store.read(({ ledger }) => ledger.breaches())).toEqual([]);

    const good = { ...reject, id: newId(), outcome: 'good', reason: '' } as const;
    await shop.done(recordTally, good);
    await shop.done(releaseLot, { lotId, expectedVersion: 1, reason: 'all well' });
    const undo = { id: newId(), tallyId: good.id, reason: SLIP };
    expect(await shop.refused(voidTally, undo)).toMatchObject({ code: 'entry.lot-judged', lotId });
    await shop.done(holdLot, { lotId, expectedVersion: 2, reason: 'looked at again' });
    await shop.done(voidTally, undo);
  });

  it('is taken back in an archive as well, and nobody can change that it was', async () => {
    const { shop, runId } = await running();
    const row = counted(runId, 'good');
    await shop.done(recordTally, row);
    await shop.done(voidTally, { id: newId(), tallyId: row.id, reason: SLIP });
    const archive = join(folder, `${newId()}.gz`);
    await exportShop(shop.store, createWriteStream(archive));
    const place = await engine.place();
    const copy = await openStore(place);
    expect(await importShop(copy, createReadStream(archive))).toMatchObject({ ok: true });
    expect((await copy.read(({ readings }) => readings.tallies({ runId, limit: 9 }))).items).toEqual([]);
    expect(await copy.read((tx) => voidedEntries(tx, { runId }))).toEqual(
      await shop.store.read((tx) => voidedEntries(tx, { runId })),
    );
    for (const deed of ['delete from voided_entries', "update voided_entries set reason = ''"])
      await expect(ask(place, deed)).rejects.toThrow(/append only/);
    await copy.close();
  });
});
