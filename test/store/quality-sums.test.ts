import { randomUUID } from 'node:crypto';
import { beforeAll, describe, expect, it } from 'vitest';
import { openStore, type Store } from '../../src/store/index.js';
import { ask, engines } from './harness.js';
import { at, insertRun, measurement, tally } from './samples.js';

const [A, B, C] = [randomUUID(), randomUUID(), randomUUID()].sort() as [string, string, string];
const EVER = { since: '', before: '9' };

describe.each(engines())('what is kept beside runs and readings on $name', (engine) => {
  let store: Store;
  let runId: string;
  beforeAll(async () => {
    store = await engine.open();
    runId = await store.write(insertRun);
  });

  const begin = (spoolIds: readonly string[]) =>
    store.write(async ({ records }) => {
      const { version, body } = (await records.get('run', runId))!;
      const begun = { ...body, startedAt: at(1), winderId: randomUUID(), spoolIds: [...spoolIds] };
      await records.update('run', { id: runId, expectedVersion: version, body: begun, at: at(1) });
    });
  const told = async () => (await store.read(({ quality }) => quality.runs(EVER)))[0];

  it('has nothing of a run that was not begun, and everything from then on', async () => {
    expect(await told()).toBeUndefined();
    await begin([B, A]);
    expect(await told()).toMatchObject({ runId, spoolIds: [A, B], goodCount: 0, at: at(1), sums: [] });
  });

  it('follows each reading that is written', async () => {
    const turned = { rotationDeg: 0, placeM: 0.2 };
    await store.write((tx) =>
      tx.readings.addMeasurements([measurement(runId, { ...turned, value: 1e-3, at: at(2) })]),
    );
    expect((await told())!.sums).toMatchObject([{ strings: 1, isFirst: true, meanM: 1e-3, alongDegrees: 0 }]);
    await store.write((tx) =>
      tx.readings.addMeasurements([
        measurement(runId, { ...turned, value: 1.002e-3, at: at(2), placeM: 0.5 }),
        measurement(runId, { ...turned, value: 1.004e-3, at: at(3) }),
      ]),
    );
    const { sums } = (await told())!;
    expect(sums).toMatchObject([
      { isFirst: false, strings: 1, meanM: 1.004e-3 },
      { isFirst: true, strings: 1, meanM: expect.closeTo(1.001e-3, 12), alongDegrees: 1, readings: 2 },
    ]);
    expect(sums[1]!.alongSquaresM2 * 1e12).toBeCloseTo(2, 6);
  });

  it('knows the spools of the lot that came of it, and what coiling threw away', async () => {
    const lotId = randomUUID();
    await store.write(async ({ records, readings }) => {
      const { version, body } = (await records.get('run', runId))!;
      const { spec, stringKey } = body;
      const lot = { name: 'L', runId, spec, stringKey, made: 9, spoolIds: [C, A] };
      await records.insert('string-lot', { id: lotId, state: 'in-check', body: lot, at: at(4) });
      const closed = { ...body, lotId, spoolIds: [], goodCount: 9, scrapCount: 1 };
      await records.update('run', { id: runId, expectedVersion: version, body: closed, at: at(4) });
      await readings.addTally(tally(runId, { reason: 'gap', count: 1 }));
      await readings.addTally({ ...tally(runId), runId: null, lotId, station: 'coiler', reason: 'gap' });
    });
    expect(await told()).toMatchObject({ spoolIds: [A, C], goodCount: 9, scrapCount: 1 });
    expect(await store.read(({ quality }) => quality.scrap(EVER))).toEqual([
      { runId, station: 'coiler', reason: 'gap', count: 2 },
      { runId, station: 'winder', reason: 'gap', count: 1 },
    ]);
    expect(await store.read(({ quality }) => quality.scrap({ since: at(2), before: '9' }))).toEqual([]);
  });

  it('forgets a reading, a string and a count that somebody took back', async () => {
    const reading = measurement(runId, { value: 9e-4, at: at(6), rotationDeg: 0 });
    const count = tally(runId, { reason: 'slip', count: 3 });
    const before = await told();
    await store.write(async ({ readings }) => {
      await readings.addMeasurements([reading]);
      await readings.addTally(count);
    });
    expect(await told()).not.toEqual(before);
    const taken = { runId, lotId: null, reason: 'misread', at: at(7), by: 'person/a' };
    await store.write(async ({ readings }) => {
      await readings.voidEntry({ id: randomUUID(), ofKind: 'measurement', entryId: reading.id, ...taken });
      await readings.voidEntry({ id: randomUUID(), ofKind: 'tally', entryId: count.id, ...taken });
    });
    expect(await told()).toEqual(before);
    const reasons = (await store.read(({ quality }) => quality.scrap(EVER))).map(({ reason }) => reason);
    expect(reasons).not.toContain('slip');
    expect(await store.integrity()).toEqual([]);
  });

  it('is undone with all that a transaction wrote', async () => {
    const before = await told();
    const failed = store.write(async (tx) => {
      await tx.readings.addMeasurements([measurement(runId, { at: at(8) })]);
      throw new Error('nothing of this');
    });
    await expect(failed).rejects.toThrow('nothing of this');
    expect(await told()).toEqual(before);
  });

  it('is proved by the check of the shop, which finds a figure that is not what the readings say', async () => {
    const place = await engine.place();
    const own = await openStore(place);
    const ownRun = await own.write(async (tx) => {
      const id = await insertRun(tx);
      await tx.readings.addMeasurements([measurement(id), measurement(id, { value: 7e-4, at: at(7) })]);
      return id;
    });
    expect(await own.integrity()).toEqual([]);
    await ask(place, 'update string_sums set mean_m = mean_m * 1.001');
    expect(await own.integrity()).toEqual([{ check: 'sums', detail: expect.stringContaining(ownRun) }]);
    // An archive holds no sums: they are worked out anew once its last row is in.
    await own.write(({ tables }) => tables.filled());
    expect(await own.integrity()).toEqual([]);
    await own.close();
  });

  it('is worked out for a shop of before by the step that brings it', async () => {
    const place = await engine.place();
    const former = await openStore(place);
    const ownRun = await former.write(async (tx) => {
      const id = await insertRun(tx);
      await tx.readings.addMeasurements([measurement(id)]);
      return id;
    });
    await former.close();
    for (const statement of [
      'drop table string_sums',
      'drop table run_facts',
      "delete from migrations where name = 'quality-sums'",
    ])
      await ask(place, statement);
    const now = await openStore(place);
    expect(await ask(place, 'select run_id from string_sums')).toEqual([{ run_id: ownRun }]);
    expect(await now.integrity()).toEqual([]);
    await now.close();
  });
});
