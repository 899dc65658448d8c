import { randomUUID } from 'node:crypto';
import { setImmediate as nextTurn } from 'node:timers/promises';
import { describe, expect, it } from 'vitest';
import { openStore, type Store, type Transaction } from '../../src/store/index.js';
import { engines } from './harness.js';
import { at, binBody, event, insertRun, journalEntry, measurement, movement } from './samples.js';

const insertBin = (tx: Transaction, name: string) =>
  tx.records.insert('bin', { id: randomUUID(), body: binBody(name), at: at(0) });
const names = (store: Store) =>
  store.read(async (tx) => (await tx.records.all('bin')).map(({ body }) => body.name));

describe.each(engines())('a transaction on $name', (engine) => {
  it('that throws leaves nothing behind, in any table', async () => {
    const store = await engine.open();
    const before = await everyRow(store);
    const fault = new Error('thought better of it');
    const deed = store.write(async (tx) => {
      const runId = await insertRun(tx);
      await tx.readings.addMeasurements([measurement(runId)]);
      await tx.ledger.post(movement('a'));
      await tx.journal.append(journalEntry());
      await tx.events.append([event('x')]);
      await tx.mappings.put('s', {});
      await tx.access.putAttempts({ subject: 's', failures: 1, lockedUntil: null });
      throw fault;
    });
    await expect(deed).rejects.toBe(fault);
    expect(await everyRow(store)).toEqual(before);
  });

  it('in which the database refused something is not committed, whoever catches that', async () => {
    const store = await engine.open();
    const deed = store.write(async (tx) => {
      await insertBin(tx, 'before');
      const lost = {
        id: randomUUID(),
        body: { name: 'S', wireId: randomUUID(), lot: 'l', tareKg: 0, receivedAt: at(0) },
      };
      await tx.records.insert('spool', { ...lost, at: at(0) }).catch(() => {});
      await insertBin(tx, 'after').catch(() => {});
      return 'done';
    });
    await expect(deed).rejects.toThrow();
    expect(await names(store)).toEqual([]);
  });

  it('sees one moment throughout where it only reads, and holds up no writer', async () => {
    const store = await engine.open();
    await store.write((tx) => insertBin(tx, 'first'));
    await store.read(async (tx) => {
      expect(await tx.records.all('bin')).toHaveLength(1);
      await outside(() => store.write((other) => insertBin(other, 'second')));
      expect(await tx.records.all('bin')).toHaveLength(1);
    });
    expect(await names(store)).toHaveLength(2);
  });

  it('sees what it wrote itself, and nobody else does until the end', async () => {
    const store = await engine.open();
    await store.write(async (tx) => {
      await insertBin(tx, 'own');
      expect(await tx.records.find('bin', { name: 'own' })).toBeDefined();
      expect(await outside(() => names(store))).toEqual([]);
    });
    expect(await names(store)).toEqual(['own']);
  });

  it('that writes waits for the one before it, over both of two stores', async () => {
    const place = await engine.place();
    const stores = [await openStore(place), await openStore(place)] as const;
    try {
      let inside = 0;
      await Promise.all(
        Array.from({ length: 30 }, (_, index) =>
          stores[index % 2]!.write(async (tx) => {
            inside += 1;
            const seen = (await tx.records.all('bin')).length;
            await nextTurn();
            expect(inside).toBe(1);
            await insertBin(tx, String(seen));
            inside -= 1;
          }),
        ),
      );
      expect((await names(stores[0])).map(Number).sort((one, other) => one - other)).toEqual(
        Array.from({ length: 30 }, (_, index) => index),
      );
    } finally {
      for (const store of stores) await store.close();
    }
  });

  it('refuses to ask its own store, which on one engine would wait for itself for ever', async () => {
    const store = await engine.open();
    await expect(store.write(() => store.write(async () => 1))).rejects.toThrow(/from within a transaction/);
    await expect(store.write(() => names(store))).rejects.toThrow(/from within a transaction/);
    await expect(store.read(() => names(store))).rejects.toThrow(/from within a transaction/);
    expect(await names(store)).toEqual([]);
  });

  it('takes nothing after its end, from work that nobody waited for', async () => {
    const store = await engine.open();
    const kept = await store.write(async (tx) => ({ tx }));
    await expect(insertBin(kept.tx, 'late')).rejects.toThrow();
    expect(await names(store)).toEqual([]);
  });

  it('that only reads cannot write', async () => {
    const store = await engine.open();
    await expect(store.read((tx) => insertBin(tx as Transaction, 'sly'))).rejects.toThrow();
    expect(await names(store)).toEqual([]);
  });

  it('is asked no more of a store that was closed, which may be closed twice', async () => {
    const store = await openStore(await engine.place());
    await Promise.all([store.close(), store.close()]);
    await expect(names(store)).rejects.toThrow();
  });
});

/** Does a thing as somebody else would: not as part of the transaction that is running. */
function outside<T>(deed: () => Promise<T>): Promise<T> {
  return new Promise((resolve, reject) => {
    elsewhere.push(() => deed().then(resolve, reject));
  });
}
const elsewhere: (() => void)[] = [];
setInterval(() => elsewhere.shift()?.(), 1).unref();

async function everyRow(store: Store) {
  return store.read(async ({ tables }) => {
    const rows: Record<string, unknown> = {};
    for (const name of tables.names) rows[name] = (await tables.rows(name, { limit: 500 })).items;
    return rows;
  });
}
