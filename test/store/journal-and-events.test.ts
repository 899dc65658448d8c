import { randomUUID } from 'node:crypto';
import { beforeAll, describe, expect, it } from 'vitest';
import { openStore, type Store, type StoredEvent, type StorePlace } from '../../src/store/index.js';
import { ask, engines } from './harness.js';
import { at, event, insertRun, journalEntry, measurement, movement, tally } from './samples.js';

describe.each(engines())('the journal on $name', (engine) => {
  let place: StorePlace;
  let store: Store;
  beforeAll(async () => {
    place = await engine.place();
    store = await openStore(place);
    return () => store.close();
  });

  it('tells who did what to which record, newest first, page by page', async () => {
    const recordId = randomUUID();
    const touched = [
      { kind: 'bin', id: recordId, version: 1 },
      { kind: 'bin', id: recordId, version: 2 },
    ];
    const entries = Array.from({ length: 5 }, (_, index) =>
      journalEntry({ at: at(index), by: index % 2 ? 'person/b' : 'person/a', touched }),
    );
    await store.write(async (tx) => {
      for (const entry of [...entries, journalEntry({ at: at(9) })]) await tx.journal.append(entry);
    });
    const first = await store.read((tx) => tx.journal.list({ recordId, limit: 3 }));
    const second = await store.read((tx) => tx.journal.list({ recordId, limit: 3, after: first.next! }));
    expect([...first.items, ...second.items]).toEqual([...entries].reverse());
    const ofOne = await store.read((tx) => tx.journal.list({ recordId, by: 'person/b', limit: 9 }));
    expect(ofOne.items).toEqual([entries[3], entries[1]]);
    const all = await store.read((tx) => tx.journal.list({ limit: 9 }));
    expect(all.items).toHaveLength(6);
    expect(
      (await store.read((tx) => tx.journal.list({ by: 'person/a', limit: 1, order: 'oldest' }))).items,
    ).toEqual([entries[0]]);
  });

  it('cannot be changed, nor can readings and movements, not even past the store', async () => {
    await store.write(async (tx) => {
      const runId = await insertRun(tx);
      await tx.readings.addMeasurements([measurement(runId)]);
      await tx.readings.addTally(tally(runId));
      await tx.ledger.post(movement('a'));
      await tx.events.append([event('a')]);
    });
    for (const table of APPEND_ONLY)
      await expect(ask(place, `delete from ${table}`), table).rejects.toThrow('append only');
    await expect(ask(place, "update journal set by = 'nobody'")).rejects.toThrow('append only');
    await expect(ask(place, 'update measurements set value = 1')).rejects.toThrow('append only');
  });
});

const APPEND_ONLY = [
  'journal',
  'journal_touched',
  'events',
  'measurements',
  'tallies',
  'movements',
  'movement_entries',
];

describe.each(engines())('events on $name', (engine) => {
  it('are numbered without a gap, and no reader finds a lower number later, with writers racing', async () => {
    const place = await engine.place();
    const stores = await Promise.all([openStore(place), openStore(place)]);
    try {
      const writing = Promise.all(
        Array.from({ length: 60 }, (_, index) =>
          stores[index % 2]!.write(async (tx) => {
            await tx.events.append([event(`a${index}`), event(`b${index}`)]);
            if (index % 5 === 0) throw new Error('thought better of it');
          }).catch(() => {}),
        ),
      );
      const seen: StoredEvent[] = [];
      const read = async () => {
        const more = await stores[0]!.read((tx) => tx.events.since(seen.at(-1)?.number ?? 0, 500));
        seen.push(...more);
      };
      let isWriting = true;
      const done = writing.then(() => {
        isWriting = false;
      });
      while (isWriting) await read();
      await done;
      await read();
      expect(seen.map(({ number }) => number)).toEqual(Array.from({ length: 96 }, (_, index) => index + 1));
      for (let index = 0; index < seen.length; index += 2)
        expect(seen[index + 1]!.recordId).toBe(seen[index]!.recordId.replace('a', 'b'));
      expect(await stores[1]!.read((tx) => tx.events.last())).toBe(96);
    } finally {
      for (const store of stores) await store.close();
    }
  });

  it('are told once and in order, whichever process wrote them', async () => {
    const place = await engine.place();
    const stores = [await openStore(place), await openStore(place)] as const;
    try {
      const told = stores.map((): number[] => []);
      const everythingTold = Promise.all(
        stores.map(
          (store, which) =>
            new Promise<void>((resolve) =>
              store.onEvents((events) => {
                told[which]!.push(...events.map(({ number }) => number));
                if (told[which]!.length >= 30) resolve();
              }),
            ),
        ),
      );
      for (let index = 0; index < 30; index++)
        await stores[index % 2]!.write((tx) => tx.events.append([event(`e${index}`)]));
      await everythingTold;
      const counted = Array.from({ length: 30 }, (_, index) => index + 1);
      expect(told).toEqual([counted, counted]);
    } finally {
      for (const store of stores) await store.close();
    }
  });

  it('are not told of before they are committed, nor of work that was undone, nor to those who have left', async () => {
    const store = await engine.open();
    const told: string[] = [];
    const leave = store.onEvents((events) => told.push(...events.map(({ recordId }) => recordId)));
    await store
      .write(async (tx) => {
        await tx.events.append([event('undone')]);
        throw new Error('no');
      })
      .catch(() => {});
    const heard = new Promise<void>((resolve) => {
      const off = store.onEvents(() => {
        off();
        resolve();
      });
    });
    await store.write(async (tx) => {
      await tx.events.append([event('done')]);
      expect(told).toEqual([]);
    });
    await heard;
    expect(told).toEqual(['done']);
    leave();
    const next = new Promise<void>((resolve) => store.onEvents(() => resolve()));
    await store.write((tx) => tx.events.append([event('later')]));
    await next;
    expect(told).toEqual(['done']);
  });

  it('reach the others though one listener fails', async () => {
    const trouble: unknown[] = [];
    const store = await engine.open({ onTrouble: (thrown) => trouble.push(thrown) });
    const fault = new Error('a listener of ill will');
    store.onEvents(() => {
      throw fault;
    });
    const heard = new Promise<void>((resolve) => store.onEvents(() => resolve()));
    await store.write((tx) => tx.events.append([event('x')]));
    await heard;
    expect(trouble).toEqual([fault]);
  });
});
