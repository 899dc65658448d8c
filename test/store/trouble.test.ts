import { spawnSync } from 'node:child_process';
import { randomUUID } from 'node:crypto';
import {
  closeSync,
  mkdirSync,
  mkdtempSync,
  openSync,
  rmSync,
  truncateSync,
  writeFileSync,
  writeSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openStore, type Store, StoreUnavailable, type Transaction } from '../../src/store/index.js';
import { ask, engines } from './harness.js';
import { at, binBody } from './samples.js';

const insertBin = (tx: Transaction, name: string) =>
  tx.records.insert('bin', { id: randomUUID(), body: binBody(name), at: at(0) });
const insertDocument = (tx: Transaction) =>
  tx.records.insert('document', {
    id: randomUUID(),
    at: at(0),
    body: {
      title: 'large',
      mediaType: 'text/plain',
      ofKind: 'order',
      ofId: randomUUID(),
      contentBase64: 'A'.repeat(100_000),
    },
  });
const countOf = (store: Store, kind: 'bin' | 'document') =>
  store.read(async (tx) => (await tx.records.all(kind)).length);

const all = engines();

describe.each(all)('in trouble on $name', (engine) => {
  it('a database that another program holds is waited for, then said to be locked, and can be read meanwhile', async () => {
    const place = await engine.place();
    const [holder, store] = [await openStore(place), await openStore(place, { lockWaitMs: 150 })];
    try {
      let release = () => {};
      const held = new Promise<void>((resolve) => {
        release = resolve;
      });
      let holds = () => {};
      const holding = new Promise<void>((resolve) => {
        holds = resolve;
      });
      const first = holder.write(async (tx) => {
        await insertBin(tx, 'held');
        holds();
        await held;
      });
      await holding;
      const refused = store.write((tx) => insertBin(tx, 'waits'));
      await expect(refused).rejects.toMatchObject({ name: 'StoreUnavailable', code: 'store.locked' });
      expect(await countOf(store, 'bin')).toBe(0);
      release();
      await first;
      await store.write((tx) => insertBin(tx, 'waits'));
      expect(await countOf(store, 'bin')).toBe(2);
    } finally {
      await holder.close();
      await store.close();
    }
  });

  it('a database newer than the program is refused and left as it is', async () => {
    const place = await engine.place();
    await (await openStore(place)).close();
    await ask(place, "insert into migrations values (999, 'of the future', '2099-01-01T00:00:00.000Z')");
    await expect(openStore(place)).rejects.toMatchObject({
      code: 'store.newer',
      detail: expect.stringMatching(/version 999.*up to \d+/),
    });
  });

  it('a sound database has nothing to be said against it, one with a lost version has', async () => {
    const place = await engine.place();
    const store = await openStore(place);
    try {
      const bin = await store.write((tx) => insertBin(tx, 'sound'));
      for (const expectedVersion of [1, 2])
        await store.write((tx) =>
          tx.records.update('bin', { id: bin.id, expectedVersion, body: bin.body, at: at(1) }),
        );
      expect(await store.integrity()).toEqual([]);
      await ask(place, 'update bins set version = 5');
      expect(await store.integrity()).toEqual([
        { check: 'versions', detail: `bin ${bin.id} is at version 5, but 2 versions before it are kept` },
      ]);
    } finally {
      await store.close();
    }
  });

  it('a crowd of writers that wait for one another leaves room for readers', async () => {
    const store = await engine.open({ lockWaitMs: 100 });
    let release = () => {};
    const held = new Promise<void>((resolve) => {
      release = resolve;
    });
    const first = store.write(async () => held);
    const crowd = Array.from({ length: 40 }, (_, index) =>
      store.write((tx) => insertBin(tx, `bin ${index}`)),
    );
    expect(await countOf(store, 'bin')).toBe(0);
    release();
    await Promise.all([first, ...crowd]);
    expect(await countOf(store, 'bin')).toBe(40);
  });
});

describe('in trouble with a file', () => {
  let folder: string;
  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), 'tautwork-trouble-'));
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  it('a folder that is not there, or a folder in place of a file, is said to be lost', async () => {
    await expect(openStore({ file: join(folder, 'no', 'shop.db') })).rejects.toMatchObject({
      code: 'store.lost',
      detail: expect.stringContaining('does not exist'),
    });
    await expect(openStore({ file: folder })).rejects.toMatchObject({ code: 'store.lost' });
  });

  it('a file that is no database is said to be damaged', async () => {
    const file = join(folder, 'letter.db');
    writeFileSync(file, 'Dear shop, please send two sets of strings. '.repeat(200));
    await expect(openStore({ file })).rejects.toMatchObject({ code: 'store.damaged' });
  });

  it('a torn page and a row without its parent are found', async () => {
    const file = join(folder, 'torn.db');
    const store = await openStore({ file });
    await store.write(async (tx) => {
      for (let index = 0; index < 300; index++) await insertBin(tx, `bin ${index}`);
    });
    await store.close();
    await ask({ file }, 'pragma wal_checkpoint(truncate)');
    const root = await ask({ file }, "select rootpage as page from sqlite_master where name = 'bins'");
    const descriptor = openSync(file, 'r+');
    writeSync(descriptor, Buffer.alloc(4_096, 7), 0, 4_096, ((root[0] as { page: number }).page - 1) * 4_096);
    closeSync(descriptor);
    const torn = await openStore({ file });
    const faults = await torn.integrity().catch((thrown: unknown) => thrown);
    await torn.close();
    if (faults instanceof Error) expect(faults).toMatchObject({ code: 'store.damaged' });
    else expect(faults).toContainEqual({ check: 'pages', detail: expect.any(String) });

    const orphan = join(folder, 'orphan.db');
    await (await openStore({ file: orphan })).close();
    const careless = new Database(orphan);
    careless.pragma('foreign_keys = off');
    careless.exec(
      `insert into packs (id, version, state, created_at, updated_at, search_text, order_id, label_code, body)
       values ('p', 1, 'open', '', '', '', 'nowhere', 'l', '{}')`,
    );
    careless.close();
    const opened = await openStore({ file: orphan });
    expect(await opened.integrity()).toEqual([
      { check: 'references', detail: 'row 1 of packs refers to what is not in orders' },
    ]);
    await opened.close();
  });

  it('a file cut short is said to be damaged, not read as if nothing were', async () => {
    const file = join(folder, 'cut.db');
    const store = await openStore({ file });
    await store.write(async (tx) => {
      for (let index = 0; index < 20; index++) await insertDocument(tx);
    });
    await store.close();
    await ask({ file }, 'pragma wal_checkpoint(truncate)');
    truncateSync(file, 1_000_000);
    const look = async () => {
      const opened = await openStore({ file });
      try {
        return await opened.integrity();
      } finally {
        await opened.close();
      }
    };
    const seen = await look().catch((thrown: unknown) => thrown);
    if (seen instanceof Error) expect(seen).toMatchObject({ code: 'store.damaged' });
    else expect(seen).not.toEqual([]);
  });

  it('is copied while others write, as it was at one moment, and over no other file', async () => {
    const store = await openStore({ file: join(folder, 'living.db') });
    await store.write(async (tx) => {
      for (let index = 0; index < 40; index++) await insertDocument(tx);
    });
    let isCopying = true;
    let written = 0;
    // Pairs: a copy with an odd number would have caught a transaction half-way.
    const writing = (async () => {
      while (isCopying) {
        await store.write(async (tx) => {
          await insertBin(tx, `a${written}`);
          await insertBin(tx, `b${written}`);
        });
        written += 1;
      }
    })();
    const copy = join(folder, 'copy.db');
    await store.backupTo(copy);
    isCopying = false;
    await writing;
    await expect(store.backupTo(copy)).rejects.toThrow(/exists already/);
    expect(await countOf(store, 'bin')).toBe(2 * written);
    await store.close();
    const copied = await openStore({ file: copy });
    expect(await copied.integrity()).toEqual([]);
    expect(await countOf(copied, 'document')).toBe(40);
    expect((await countOf(copied, 'bin')) % 2).toBe(0);
    await copied.close();
  });
});

/** A small disk of its own, where this machine lets us have one. */
const disk = join(tmpdir(), `tautwork-disk-${process.pid}`);
const mount = (...words: string[]) => spawnSync('mount', words).status === 0;
const hasDisk = (() => {
  mkdirSync(disk, { recursive: true });
  return process.getuid?.() === 0 && mount('-t', 'tmpfs', '-o', 'size=8m', 'tmpfs', disk);
})();
afterAll(() => {
  if (hasDisk) spawnSync('umount', ['-l', disk]);
  rmSync(disk, { recursive: true, force: true });
});

describe.runIf(hasDisk)('in trouble with a disk', () => {
  const file = join(disk, 'shop.db');
  const hog = join(disk, 'hog');

  it('a full one refuses the write, is read as before, and is written to again when there is room', async () => {
    const store = await openStore({ file });
    await store.write(insertDocument);
    fillUp(hog);
    const acknowledged = { count: 1 };
    const untilFull = async () => {
      for (;;) {
        await store.write(insertDocument);
        acknowledged.count += 1;
      }
    };
    const refused = untilFull();
    await expect(refused).rejects.toBeInstanceOf(StoreUnavailable);
    await expect(refused).rejects.toMatchObject({ code: 'store.disk-full' });
    expect(await countOf(store, 'document')).toBe(acknowledged.count);
    rmSync(hog);
    await store.write(insertDocument);
    expect(await countOf(store, 'document')).toBe(acknowledged.count + 1);
    await store.close();
  });

  it('too small a one for a large write takes nothing of it', async () => {
    const store = await openStore({ file });
    const before = await countOf(store, 'document');
    const tooMuch = store.write(async (tx) => {
      for (let index = 0; index < 200; index++) await insertDocument(tx);
    });
    await expect(tooMuch).rejects.toMatchObject({ code: 'store.disk-full' });
    expect(await countOf(store, 'document')).toBe(before);
    expect(await store.integrity()).toEqual([]);
    await store.close();
  });

  it('one that can only be read is said to be so, and used again when it can be written to', async () => {
    mount('-o', 'remount,ro', disk);
    await expect(openStore({ file })).rejects.toMatchObject({ code: 'store.read-only' });
    await expect(openStore({ file: join(disk, 'new.db') })).rejects.toMatchObject({
      code: 'store.read-only',
    });
    mount('-o', 'remount,rw', disk);
    const again = await openStore({ file });
    await again.write((tx) => insertBin(tx, 'again'));
    await again.close();
  });
});

function fillUp(path: string): void {
  const descriptor = openSync(path, 'w');
  try {
    for (;;) writeSync(descriptor, Buffer.alloc(4_096));
  } catch (thrown) {
    if ((thrown as NodeJS.ErrnoException).code !== 'ENOSPC') throw thrown;
  } finally {
    closeSync(descriptor);
  }
}
