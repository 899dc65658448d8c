import { createWriteStream, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { gunzipSync } from 'node:zlib';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { PLANTED_CAUSES, type PlantedCauses } from '../../demo/index.js';
import type { CalendarDate } from '../../src/core/foundation/index.js';
import { jointStrength, pullsOf } from '../../src/core/winding/index.js';
import type { ReadTransaction, Store } from '../../src/store/index.js';
import {
  causesSeen,
  checkShop,
  computerClock,
  DEMO_DATE,
  DEMO_PASSWORD,
  DEMO_PEOPLE,
  DEMO_PIN,
  dayOfShop,
  exportShop,
  firstOwner,
  letDemoPeopleIn,
  loadDemoHistory,
  newId,
  perform,
  type Seen,
  saveSettings,
  shopView,
  signIn,
  slowHash,
} from '../../src/workshop/index.js';
import { engines, type TestEngine } from '../store/harness.js';

const sqlite = engines()[0] as TestEngine;
const folder = mkdtempSync(join(tmpdir(), 'tautwork-history-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Three weeks are enough to see every kind of thing done. */
const WISH = { from: '2026-03-02' as CalendarDate, until: '2026-03-20' as CalendarDate };

async function archive(store: Store, name: string): Promise<string> {
  const path = join(folder, name);
  await exportShop(store, createWriteStream(path));
  return gunzipSync(readFileSync(path)).toString();
}

describe('the invented workshop and its past', () => {
  let store: Store;
  beforeAll(async () => {
    store = await sqlite.open();
    expect(await loadDemoHistory(store, WISH)).toMatchObject({ days: 15 });
  });

  it('leave a sound database and a ledger that keeps its laws', async () => {
    expect(await checkShop(store)).toEqual({ integrity: [], ledger: [], isSound: true });
  });

  it('lead from every string that was packed to its lot, its run and its spools', async () => {
    await store.read(async (tx) => {
      const shipped = await tx.records.all('pack', { state: 'shipped' });
      expect(shipped.length).toBeGreaterThan(10);
      let traced = 0;
      for (const { body } of shipped)
        for (const { lotId } of body.picked) {
          const lot = await tx.records.get('string-lot', lotId);
          expect(lot, lotId).toBeDefined();
          // Strings that lay on the shelf when records began have no run; all made since do.
          if (lot?.body.runId === undefined) continue;
          expect(await tx.records.get('run', lot.body.runId)).toBeDefined();
          expect(lot.body.spoolIds.length).toBeGreaterThan(0);
          for (const spoolId of lot.body.spoolIds)
            expect(await tx.records.get('spool', spoolId)).toBeDefined();
          traced++;
        }
      expect(traced).toBeGreaterThan(0);
    });
  });

  it('have ends looked at and pulled: of plain strings by the run, of cores now and then', async () => {
    await store.read(async (tx) => {
      const { items } = await tx.readings.endChecks({ limit: 500 });
      expect(items.length).toBeGreaterThan(30);
      const pulls = pullsOf(items);
      expect(pulls.length).toBe(items.length);
      expect(jointStrength(pulls, 0.65).holds!.low).toBeGreaterThan(0.85);
      expect(pulls.filter(({ came }) => came === 'at-twist').length).toBeGreaterThan(2);
      const runs = await tx.records.all('run');
      const kinds = items.map(({ runId }) => runs.find(({ id }) => id === runId)!.body.spec.kind);
      expect(new Set(kinds)).toEqual(new Set(['plain', 'wound']));
      expect(items.every(({ spoolId }) => spoolId !== null)).toBe(true);
    });
  });

  it('are the same for the same seed, to the last id, and others for another', async () => {
    const again = await sqlite.open();
    await loadDemoHistory(again, WISH);
    expect(await archive(again, 'again.gz')).toBe(await archive(store, 'first.gz'));
    const other = await sqlite.open();
    await loadDemoHistory(other, { ...WISH, seed: 7 });
    expect(await archive(other, 'other.gz')).not.toBe(await archive(store, 'first.gz'));
  });

  it('are loaded into no shop that holds anything', async () => {
    expect(await loadDemoHistory(store, WISH)).toMatchObject({ code: 'demo.shop-not-empty' });
  });
});

describe('the invented workshop on its last day, after a fortnight', () => {
  let store: Store;
  beforeAll(async () => {
    store = await sqlite.open();
    expect(await loadDemoHistory(store, { days: 14 })).toMatchObject({ days: 11 });
  });
  const seen = <T>(look: (tx: ReadTransaction) => Promise<T>): Promise<T> => store.read(look);

  it('is sound, and its last hand moved on the day of the demo', async () => {
    expect(await checkShop(store)).toEqual({ integrity: [], ledger: [], isSound: true });
    expect(await seen(async (tx) => (await tx.events.newest())?.at.slice(0, 10))).toBe(DEMO_DATE);
  });

  it('has a plan in force with runs on every machine: planned ones, one that goes on and one that was stopped', async () => {
    await seen(async (tx) => {
      const plans = await tx.records.all('plan', { state: 'in-force' });
      expect(plans.map(({ body }) => body.date)).toEqual([DEMO_DATE]);
      const planned = await tx.records.all('run', { state: 'planned' });
      const machines = await tx.records.all('machine');
      for (const { id, body } of machines)
        expect(planned.filter((run) => run.body.machineId === id).length, body.name).toBeGreaterThan(0);
      for (const state of ['running', 'paused']) {
        const [run, ...others] = await tx.records.all('run', { state });
        expect(others, state).toEqual([]);
        expect(plans[0]!.body.runs.map(({ runId }) => runId)).toContain(run!.id);
        const { items } = await tx.readings.tallies({ runId: run!.id, limit: 10 });
        expect(items.map(({ outcome }) => outcome).sort()).toEqual(['good', 'scrap']);
        expect(await tx.readings.trialStrings(run!.id)).toHaveLength(2);
        for (const spoolId of run!.body.spoolIds)
          expect((await tx.records.get('spool', spoolId))!.state).toBe('on-machine');
      }
      const today = (await tx.records.all('run', { state: 'closed' })).filter(
        ({ body }) => body.closedAt?.slice(0, 10) === DEMO_DATE,
      );
      expect(today.length).toBeGreaterThan(0);
    });
  });

  it('has a day that stands behind what is under way', async () => {
    const { day } = await seen((tx) => dayOfShop(tx, { date: DEMO_DATE }));
    const under = day.underWay!;
    expect(under.length).toBeGreaterThan(5);
    for (const run of day.plan.runs)
      for (const busy of under.filter(({ machineId }) => machineId === run.machineId))
        expect([run.setUpFrom.date, run.setUpFrom.minute] >= [busy.to.date, busy.to.minute]).toBe(true);
  });

  it('has letters that wait, an answer that is thought about, and one that was ordered', async () => {
    const requests = await seen((tx) => tx.records.all('request'));
    const states = requests.map(({ state }) => state);
    expect(states.filter((state) => state === 'waiting')).toHaveLength(2);
    expect(states).toContain('answered');
    expect(states).toContain('ordered');
  });

  it('has orders that are late, and packs open for what is due today, one of them begun', async () => {
    await seen(async (tx) => {
      const received = await tx.records.all('order', { state: 'received' });
      expect(received.some(({ body }) => body.due < DEMO_DATE)).toBe(true);
      const packing = await tx.records.all('order', { state: 'packing' });
      expect(packing.some(({ body }) => body.due === DEMO_DATE)).toBe(true);
      const open = await tx.records.all('pack', { state: 'open' });
      expect(
        open.some(({ body: { picked, wanted } }) => picked.length > 0 && picked.length < wanted.length),
      ).toBe(true);
    });
  });

  it('has lots to look through, one on hold with its reason, and complaints that nobody answered', async () => {
    await seen(async (tx) => {
      expect((await tx.records.all('string-lot', { state: 'in-check' })).length).toBeGreaterThan(1);
      const held = await tx.records.all('string-lot', { state: 'on-hold' });
      expect(held.length).toBeGreaterThan(0);
      for (const { body } of held) expect(body.holdReason).toMatch(/\w+ \w+/);
      const complaints = await tx.records.all('complaint', { state: 'open' });
      expect(complaints.length).toBeGreaterThanOrEqual(2);
      for (const { body } of complaints.slice(-2))
        expect((await tx.records.get('pack', body.packId!))!.state).toBe('shipped');
    });
  });

  it('has damp air in the dry room, and a wire of which little is left beside what is in quarantine', async () => {
    await seen(async (tx) => {
      const { items } = await tx.records.list('dry-room-reading', { limit: 3 });
      expect(items.map(({ body }) => body.relativeHumidity > 0.55)).toEqual([true, true, false]);
      const held = await tx.records.all('spool', { state: 'quarantined' });
      const short = held[0]!.body.wireId;
      const { spools, wires } = await shopView(tx);
      const name = (await tx.records.get('wire', short))!.body.name;
      const left = spools.filter(({ wireId }) => wireId === name).reduce((sum, { netKg }) => sum + netKg, 0);
      expect(left).toBeLessThan(1);
      expect(wires.map(({ id }) => id)).toContain(name);
    });
  });

  it('had strings carried to another bin, and a pack given up, in the weeks before', async () => {
    const long = await sqlite.open();
    await loadDemoHistory(long, { days: 70 });
    await long.read(async (tx) => {
      const done = new Set<string>();
      let after: string | undefined;
      do {
        const page = await tx.journal.list({ limit: 500, ...(after === undefined ? {} : { after }) });
        for (const { useCase } of page.items) done.add(useCase);
        after = page.next;
      } while (after !== undefined);
      for (const useCase of ['move-strings', 'void-pack', 'receive-request', 'order-request'])
        expect([...done]).toContain(useCase);
    });
  });
});

describe('people of the invented workshop', () => {
  const CHEAP = slowHash({ N: 16, r: 1, p: 1 });
  const parts = (store: Store) => ({ store, clock: computerClock, newId, slowHash: CHEAP });

  it('cannot sign in until they are let in, and then each by the password that is told', async () => {
    const store = await sqlite.open();
    await loadDemoHistory(store, { days: 1 });
    const { name } = DEMO_PEOPLE.packer;
    const asked = { name, password: DEMO_PASSWORD };
    expect(await signIn(parts(store), asked)).toMatchObject({ ok: false });
    const letIn = await letDemoPeopleIn(store, CHEAP);
    expect(letIn.map((person) => person.name)).toEqual(
      Object.values(DEMO_PEOPLE).map((person) => person.name),
    );
    expect(new Set(letIn.flatMap(({ roles }) => roles))).toEqual(
      new Set(['owner', 'adviser', 'winder', 'coiler', 'packer']),
    );
    expect(await signIn(parts(store), asked)).toMatchObject({ ok: true });
    expect(await firstOwner(parts(store))).toBeUndefined();
    // Whoever has a password keeps it.
    expect(await letDemoPeopleIn(store, CHEAP)).toEqual([]);
  });

  it('are told in the handbook, with the password and the PIN of all of them', () => {
    const page = readFileSync(new URL('../../docs/handbook/demo.md', import.meta.url), 'utf8');
    for (const { name } of Object.values(DEMO_PEOPLE)) expect(page).toContain(name);
    for (const secret of [DEMO_PASSWORD, DEMO_PIN]) expect(page).toContain(`\`${secret}\``);
  });

  it('are let into no shop that is not invented, whatever their names', async () => {
    const store = await sqlite.open();
    await loadDemoHistory(store, { days: 1 });
    const [settled] = await store.read((tx) => tx.records.all('settings'));
    const input = {
      id: settled!.id,
      expectedVersion: settled!.version,
      body: { ...settled!.body, invented: false },
    };
    const actor = { by: 'console', permissions: new Set(['shop.edit'] as const) };
    const saved = await perform(store, saveSettings, { actor, clock: computerClock, newId, input });
    expect(saved.ok).toBe(true);
    expect(await letDemoPeopleIn(store, CHEAP)).toEqual([]);
    const { name } = DEMO_PEOPLE.owner;
    expect(await signIn(parts(store), { name, password: DEMO_PASSWORD })).toMatchObject({ ok: false });
  });
});

describe('causes planted in the past of the invented workshop', () => {
  const { wear, badLot, micrometer } = PLANTED_CAUSES;
  /** A year's wear and all that goes wrong, in six weeks. */
  const QUICK: PlantedCauses = {
    wear: { ...wear, growthMPerDay: 0.6e-6 },
    badLot: { ...badLot, arrives: '2026-03-03' as CalendarDate },
    micrometer: { ...micrometer, from: '2026-03-23' as CalendarDate, readsLargeM: 16e-6 },
  };
  const NONE: PlantedCauses = {
    wear: { ...wear, growthMPerDay: 0 },
    badLot: { ...QUICK.badLot, offShare: 0, spreadShare: 0.001 },
    micrometer: { ...QUICK.micrometer, readsLargeM: 0 },
  };
  const seenIn = async (causes: PlantedCauses) => {
    const store = await sqlite.open();
    await loadDemoHistory(store, { ...WISH, until: '2026-04-10' as CalendarDate, causes });
    return store.read((tx) => causesSeen(tx, causes));
  };
  /** Three standard errors: of a hundred seeds some three figures would stand outside, of this seed none does. */
  const expectAbout = ({ value, u }: Seen, truth: number) =>
    expect(Math.abs(value - truth), `${value} ± ${u}, planted ${truth}`).toBeLessThan(3 * u);
  const expectFarFromNone = ({ value, u }: Seen) =>
    expect(Math.abs(value), `${value} ± ${u}`).toBeGreaterThan(4 * u);

  it('show in the measurements, by means, spreads and a straight line', async () => {
    const seen = await seenIn(QUICK);
    expectAbout(seen.wearMPerDay, QUICK.wear.growthMPerDay);
    expectFarFromNone(seen.wearMPerDay);
    expectAbout(seen.othersMPerDay, 0);
    expectAbout(seen.micrometerM, QUICK.micrometer.readsLargeM);
    expectFarFromNone(seen.micrometerM);
    // Of six strings or more twice the spread is no luck: a variance four times as large has p = 0.001 (F, 5 degrees).
    expect(seen.spreadM.strings).toBeGreaterThanOrEqual(6);
    expect(seen.spreadM.bad).toBeGreaterThan(2 * seen.spreadM.others);
    expectFarFromNone(seen.massShare);
    expect(seen.massShare.value).toBeLessThan(-0.01);
  });

  it('do not show where they are not planted', async () => {
    const seen = await seenIn(NONE);
    for (const figure of [seen.wearMPerDay, seen.othersMPerDay, seen.micrometerM]) expectAbout(figure, 0);
    expect(seen.spreadM.bad).toBeLessThan(1.5 * seen.spreadM.others);
    expect(Math.abs(seen.massShare.value)).toBeLessThan(0.01);
  });

  it('are those of which the page beside them tells', () => {
    const page = readFileSync(new URL('../../demo/history/README.md', import.meta.url), 'utf8');
    const told = [
      wear.machine,
      wear.from,
      `${wear.growthMPerDay * 1e9} nm a day`,
      badLot.wire,
      badLot.lot,
      badLot.arrives,
      `${Math.abs(badLot.offShare) * 100} %`,
      `${badLot.spreadShare * 100} %`,
      micrometer.instrument,
      micrometer.from,
      `${micrometer.readsLargeM * 1e6} µm`,
    ];
    for (const fact of told) expect(page).toContain(fact);
  });
});
