import { randomUUID } from 'node:crypto';
import { beforeAll, describe, expect, it } from 'vitest';
import { openStore, type Store, type StorePlace } from '../../src/store/index.js';
import { ask, engines } from './harness.js';
import { at, cautionReading, insertRun } from './samples.js';

describe.each(engines())('cautions that were read, on $name', (engine) => {
  let place: StorePlace;
  let store: Store;
  let machineId: string;
  beforeAll(async () => {
    place = await engine.place();
    store = await openStore(place);
    machineId = await store.write(
      async (tx) => (await tx.records.get('run', await insertRun(tx)))!.body.machineId,
    );
    return () => store.close();
  });

  it('are told by machine and by person, newest first, as they were written', async () => {
    const [one, other] = [randomUUID(), randomUUID()];
    const rows = [
      cautionReading(machineId, one, { at: at(1) }),
      cautionReading(machineId, other, { at: at(2) }),
      cautionReading(machineId, one, { at: at(3), cautions: ['nickel-skin'], edition: 2 }),
    ];
    await store.write(async ({ cautionReadings }) => {
      for (const row of rows) await cautionReadings.add(row);
    });
    const told = (query: { machineId?: string; personId?: string; after?: string; limit: number }) =>
      store.read(({ cautionReadings }) => cautionReadings.list(query));
    expect((await told({ machineId, limit: 9 })).items).toEqual(rows.toReversed());
    const first = await told({ machineId, personId: one, limit: 1 });
    expect(first.items).toEqual([rows[2]]);
    expect((await told({ personId: one, limit: 1, after: first.next! })).items).toEqual([rows[0]]);
    expect((await told({ machineId: randomUUID(), limit: 9 })).items).toEqual([]);
  });

  it('are refused twice under one id and of a machine that is none, and nobody can change or remove one', async () => {
    const row = cautionReading(machineId, randomUUID());
    await store.write(({ cautionReadings }) => cautionReadings.add(row));
    const add = (each: typeof row) => store.write(({ cautionReadings }) => cautionReadings.add(each));
    await expect(add(row)).rejects.toMatchObject({ name: 'Taken', kind: 'caution-reading' });
    await expect(add(cautionReading(randomUUID(), randomUUID()))).rejects.toThrow(/foreign key/i);
    for (const deed of ['delete from caution_readings', "update caution_readings set at = ''"])
      await expect(ask(place, deed)).rejects.toThrow(/append only/);
  });
});
