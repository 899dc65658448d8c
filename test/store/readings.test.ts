import { randomUUID } from 'node:crypto';
import { beforeAll, describe, expect, it } from 'vitest';
import type { Store, TrialString } from '../../src/store/index.js';
import { engines } from './harness.js';
import { at, endChecksOf, insertRun, measurement, tally } from './samples.js';

describe.each(engines())('readings of the floor on $name', (engine) => {
  let store: Store;
  let runId: string;
  beforeAll(async () => {
    store = await engine.open();
    runId = await store.write(insertRun);
  });

  const trialString = (number: number, changes: Partial<TrialString> = {}): TrialString => ({
    id: randomUUID(),
    runId,
    number,
    position: 1,
    verdict: 'open',
    at: at(1),
    by: 'person/a',
    ...changes,
  });
  it('come back to the last bit', async () => {
    const trial = trialString(1);
    const rows = [
      measurement(runId, { trialStringId: trial.id, value: 0.1 + 0.2, rotationDeg: 359.999 }),
      measurement(runId, { quantity: 'mass', value: 5e-324, placeM: null }),
      measurement(runId, { value: Number.MAX_VALUE, at: at(6) }),
    ];
    await store.write(async ({ readings }) => {
      await readings.addTrialString(trial);
      await readings.addMeasurements(rows);
    });
    const page = await store.read((tx) => tx.readings.measurements({ runId, limit: 10 }));
    expect(new Map(page.items.map((item) => [item.id, item]))).toEqual(
      new Map(rows.map((row) => [row.id, row])),
    );
    expect(page.items.at(-1)).toEqual(rows[2]);
  });

  it.each([null, undefined, Number.NaN, Number.POSITIVE_INFINITY, 0, -0.001, '0.0006', '', true, [1]])(
    'refuse %j for a value, and all that came with it',
    async (value) => {
      const own = await store.write(insertRun);
      const rows = [measurement(own), measurement(own, { value: value as number })];
      await expect(store.write((tx) => tx.readings.addMeasurements(rows))).rejects.toThrow(/has no value/);
      expect((await store.read((tx) => tx.readings.measurements({ runId: own, limit: 9 }))).items).toEqual(
        [],
      );
    },
  );

  it('of ends come back as they were found, by run, wire and bench, and what was not looked at stays missing', async () => {
    const own = await store.write(insertRun);
    const rows = await store.write(async (tx) => {
      const found = await endChecksOf(tx, own);
      await tx.readings.addEndChecks(found);
      return found;
    });
    const [first, second] = rows;
    const read = (query: { runId?: string; wireId?: string; machineId?: string; spoolId?: string }) =>
      store.read((tx) => tx.readings.endChecks({ ...query, limit: 10 }));
    expect((await read({ runId: own })).items).toEqual([first, second]);
    expect((await read({ wireId: first!.wireId })).items).toHaveLength(2);
    expect((await read({ machineId: first!.machineId })).items).toHaveLength(2);
    expect((await read({ spoolId: randomUUID() })).items).toEqual([]);
    expect(second).not.toHaveProperty('twists');
    await expect(store.write((tx) => tx.readings.addEndChecks(rows))).rejects.toThrow(/end-check/);
    const odd = { ...first!, id: randomUUID(), twists: Number.NaN };
    await expect(store.write((tx) => tx.readings.addEndChecks([odd]))).rejects.toThrow(/twists/);
  });

  it('refuse a place that is no number, but take none', async () => {
    for (const placeM of [Number.NaN, '' as unknown as number, undefined as unknown as number]) {
      const rows = [measurement(runId, { placeM })];
      await expect(store.write((tx) => tx.readings.addMeasurements(rows))).rejects.toThrow(/placeM/);
    }
  });

  it('are refused where another has the id, where there is no such run, or where nothing was counted', async () => {
    const row = measurement(runId);
    await store.write((tx) => tx.readings.addMeasurements([row]));
    await expect(
      store.write((tx) => tx.readings.addMeasurements([measurement(runId), row])),
    ).rejects.toMatchObject({
      name: 'Taken',
      kind: 'measurement',
    });
    const lost = [measurement(randomUUID())];
    await expect(store.write((tx) => tx.readings.addMeasurements(lost))).rejects.toThrow(/foreign key/i);
    for (const count of [0, 1.5, Number.NaN])
      await expect(store.write((tx) => tx.readings.addTally(tally(runId, { count })))).rejects.toThrow(
        /a tally of/,
      );
  });

  it('give a trial string one number in its run, and let its verdict change', async () => {
    const own = await store.write(insertRun);
    const [second, first] = [trialString(2, { runId: own }), trialString(1, { runId: own, position: 2 })];
    await store.write(async ({ readings }) => {
      for (const one of [second, first]) await readings.addTrialString(one);
      await readings.setVerdict(second.id, 'scrap');
    });
    expect(await store.read((tx) => tx.readings.trialStrings(own))).toEqual([
      first,
      { ...second, verdict: 'scrap' },
    ]);
    const again = trialString(2, { runId: own });
    await expect(store.write((tx) => tx.readings.addTrialString(again))).rejects.toMatchObject({
      name: 'Taken',
      key: 'number',
    });
    await expect(store.write((tx) => tx.readings.setVerdict(randomUUID(), 'good'))).rejects.toThrow();
  });

  it('keep what a trial string was wound at and how its turns lie, and nothing where nobody said', async () => {
    const own = await store.write(insertRun);
    const told = trialString(1, { runId: own, setting: -0.1 - 0.2, setBy: 'override', seen: 'gaps' });
    const untold = trialString(2, { runId: own });
    await store.write(async ({ readings }) => {
      for (const one of [told, untold]) await readings.addTrialString(one);
    });
    const kept = await store.read((tx) => tx.readings.trialStrings(own));
    expect(kept).toEqual([told, untold]);
    expect(Object.keys(kept[1]!)).not.toContain('setting');
    for (const wrong of [{ setting: Number.NaN }, { setBy: 'chance' }, { seen: 'both' }])
      await expect(
        store.write((tx) =>
          tx.readings.addTrialString(trialString(3, { runId: own, ...(wrong as Partial<TrialString>) })),
        ),
      ).rejects.toThrow();
  });

  it('name the runs that were dialled in, the last tried first, on a machine and on the others', async () => {
    const runs = [await store.write(insertRun), await store.write(insertRun), await store.write(insertRun)];
    const [here, there, unset] = runs as [string, string, string];
    await store.write(async ({ readings }) => {
      await readings.addTrialString(trialString(1, { runId: there, setting: 3, at: at(3) }));
      await readings.addTrialString(trialString(1, { runId: here, setting: 3, at: at(4) }));
      await readings.addTrialString(trialString(1, { runId: unset, at: at(5) }));
    });
    const machineOf = (runId: string) =>
      store.read(async (tx) => (await tx.records.get('run', runId))!.body.machineId);
    const asked = (machineId: string, isElsewhere: boolean) =>
      store.read((tx) => tx.readings.runsDialledIn({ machineId, isElsewhere, limit: 9 }));
    expect(await asked(await machineOf(here), false)).toEqual([here]);
    expect(await asked(await machineOf(unset), false)).toEqual([]);
    const elsewhere = await asked(await machineOf(unset), true);
    expect(elsewhere.filter((id) => runs.includes(id))).toEqual([here, there]);
    expect(await asked(await machineOf(here), true)).not.toContain(here);
  });

  it('are listed by run or by lot, oldest first, page by page', async () => {
    const own = await store.write(insertRun);
    const lotId = randomUUID();
    const rows = Array.from({ length: 7 }, (_, index) => tally(own, { at: at(index), count: index + 1 }));
    const ofLot = { ...tally(own), runId: null, lotId };
    await store.write(async ({ records, readings }) => {
      const spec = {
        gaugeThou: 26,
        kind: 'wound',
        material: 'pure-nickel',
        end: 'ball',
        lengthM: 1,
      } as const;
      await records.insert('string-lot', {
        id: lotId,
        body: { name: 'L', spec, stringKey: 'w26', made: 5, spoolIds: [] },
        at: at(0),
      });
      for (const row of [...rows, ofLot]) await readings.addTally(row);
    });
    const first = await store.read((tx) => tx.readings.tallies({ runId: own, limit: 4 }));
    const second = await store.read((tx) =>
      tx.readings.tallies({ runId: own, limit: 4, after: first.next! }),
    );
    expect([...first.items, ...second.items]).toEqual(rows);
    expect(second.next).toBeUndefined();
    expect((await store.read((tx) => tx.readings.tallies({ lotId, limit: 4 }))).items).toEqual([ofLot]);
    const newest = await store.read((tx) => tx.readings.tallies({ runId: own, limit: 1, order: 'newest' }));
    expect(newest.items).toEqual([rows.at(-1)]);
  });
});
