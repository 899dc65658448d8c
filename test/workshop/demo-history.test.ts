import { createWriteStream, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { gunzipSync } from 'node:zlib';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { PLANTED_CAUSES, type PlantedCauses } from '../../demo/index.js';
import type { CalendarDate } from '../../src/core/foundation/index.js';
import type { Store } from '../../src/store/index.js';
import { causesSeen, checkShop, exportShop, loadDemoHistory, type Seen } from '../../src/workshop/index.js';
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
