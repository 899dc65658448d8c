import {
  createReadStream,
  createWriteStream,
  existsSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  truncateSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { gunzipSync, gzipSync } from 'node:zlib';
import { afterAll, describe, expect, it } from 'vitest';
import { openStore, type Store, type StorePlace } from '../../src/store/index.js';
import {
  backupShop,
  checkShop,
  exportRecords,
  exportShop,
  importShop,
  restoreShop,
  scheduleBackups,
  USUAL_KEEP,
} from '../../src/workshop/index.js';
import { ask, engines, type TestEngine } from '../store/harness.js';
import { SmallShop } from './small-shop.js';

const folder = mkdtempSync(join(tmpdir(), 'tautwork-transfer-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const path = (name: string): string => join(folder, name);
const available = engines();
const sqlite = available[0] as TestEngine;

async function archiveOf(store: Store, name: string): Promise<string> {
  await exportShop(store, createWriteStream(path(name)));
  return gunzipSync(readFileSync(path(name))).toString();
}

async function filled(engine: TestEngine, archive: string): Promise<Store> {
  const store = await engine.open();
  const told = await importShop(store, createReadStream(path(archive)));
  expect(told).toMatchObject({ ok: true });
  return store;
}

describe('the archive of a shop', () => {
  it.each(available.flatMap((from) => available.map((to) => [from.name, to.name, from, to] as const)))(
    'goes from %s to %s and back to the letter',
    async (_from, _to, from, to) => {
      const { store } = await SmallShop.open(from);
      const first = await archiveOf(store, 'first.gz');
      expect(first.split('\n').length).toBeGreaterThan(20);
      const second = await archiveOf(await filled(to, 'first.gz'), 'second.gz');
      expect(second).toBe(first);
      const third = await archiveOf(await filled(from, 'second.gz'), 'third.gz');
      expect(third).toBe(first);
    },
  );

  it('is refused by a shop that holds anything, and changes nothing there', async () => {
    const { store } = await SmallShop.open(sqlite);
    const before = await archiveOf(store, 'full.gz');
    expect(await importShop(store, createReadStream(path('full.gz')))).toMatchObject({
      ok: false,
      fault: { code: 'archive.shop-not-empty' },
    });
    expect(await archiveOf(store, 'after.gz')).toBe(before);
  });

  it.each([
    ['cut short', (lines: string[]) => lines.slice(0, -3), 'archive.cut-short'],
    [
      'with a row changed',
      (lines: string[]) => lines.map((line) => line.replace('"version":1,"state"', '"version":7,"state"')),
      'archive.damaged',
    ],
    ['with a row lost', (lines: string[]) => lines.filter((_, at) => at !== 5), 'archive.damaged'],
    [
      'of a later form',
      (lines: string[]) => [lines[0]!.replace('"version":1', '"version":99'), ...lines.slice(1)],
      'archive.newer',
    ],
    [
      'of another program',
      (lines: string[]) => ['{"form":"something else"}', ...lines.slice(1)],
      'archive.other-form',
    ],
    ['that is no JSON', () => ['hello'], 'archive.unreadable'],
  ] as const)('%s fills nothing', async (_what, spoil, code) => {
    const { store } = await SmallShop.open(sqlite);
    const lines = (await archiveOf(store, 'good.gz')).trimEnd().split('\n');
    writeFileSync(path('bad.gz'), gzipSync(`${spoil(lines).join('\n')}\n`));
    const empty = await sqlite.open();
    expect(await importShop(empty, createReadStream(path('bad.gz')))).toMatchObject({
      ok: false,
      fault: { code },
    });
    await empty.read(async (tx) => {
      for (const table of tx.tables.names)
        expect((await tx.tables.rows(table, { limit: 1 })).items, table).toEqual([]);
    });
  });

  it('that is no gzip, or half of one, is unreadable', async () => {
    const { store } = await SmallShop.open(sqlite);
    await archiveOf(store, 'half.gz');
    truncateSync(path('half.gz'), 900);
    writeFileSync(path('text.gz'), 'hello');
    for (const name of ['half.gz', 'text.gz'])
      expect(await importShop(await sqlite.open(), createReadStream(path(name))), name).toMatchObject({
        ok: false,
        fault: { code: 'archive.unreadable' },
      });
  });
});

describe.each(available.map((engine) => [engine.name, engine] as const))(
  'a backup on %s',
  (_name, engine) => {
    it('of a living shop restores to a sound shop with all that was there (a drill)', async () => {
      const { store } = await SmallShop.open(engine);
      const before = await archiveOf(store, 'drill.gz');
      const backups = path(`backups-${engine.name}`);
      const backup = await backupShop(store, backups, '2027-03-01T08:00:00.000Z');
      expect(readdirSync(backups)).toHaveLength(1);
      const to = { file: path(`restored-${engine.name}.db`) };
      expect(await restoreShop({ backup, to, overwrite: false, at: '2027-03-01T09:00:00.000Z' })).toEqual({
        ok: true,
        value: {},
      });
      const restored = await openStore(to);
      expect(await checkShop(restored)).toEqual({ integrity: [], ledger: [], isSound: true });
      expect(await archiveOf(restored, 'drilled.gz')).toBe(before);
      await restored.close();
    });
  },
);

describe('a restore', () => {
  it('refuses to overwrite, and when told keeps what stood there', async () => {
    const { store } = await SmallShop.open(sqlite);
    const backup = await backupShop(store, path('kept'), '2027-03-01T08:00:00.000Z');
    const to: StorePlace = { file: path('standing.db') };
    writeFileSync(to.file, 'what stood here');
    const task = { backup, to, at: '2027-03-02T10:11:12.000Z' };
    expect(await restoreShop({ ...task, overwrite: false })).toMatchObject({
      ok: false,
      fault: { code: 'restore.would-overwrite' },
    });
    expect(readFileSync(to.file, 'utf8')).toBe('what stood here');
    const done = await restoreShop({ ...task, overwrite: true });
    expect(done).toEqual({ ok: true, value: { keptAt: `${to.file}.before-20270302T101112Z` } });
    expect(readFileSync(`${to.file}.before-20270302T101112Z`, 'utf8')).toBe('what stood here');
    expect(existsSync(`${to.file}.part`)).toBe(false);
  });

  it('of a backup that is not there, or is damaged, changes nothing', async () => {
    const to: StorePlace = { file: path('never.db') };
    const at = '2027-03-02T10:11:12.000Z';
    expect(await restoreShop({ backup: path('nowhere.sqlite'), to, overwrite: false, at })).toMatchObject({
      ok: false,
      fault: { code: 'restore.no-backup' },
    });
    writeFileSync(path('broken.shop.gz'), gzipSync('hello\n'));
    expect(await restoreShop({ backup: path('broken.shop.gz'), to, overwrite: false, at })).toMatchObject({
      ok: false,
    });
    expect(existsSync(to.file)).toBe(false);
  });
});

describe('the check of a shop', () => {
  it('finds a balance that somebody changed behind the ledger’s back', async () => {
    const place = await sqlite.place();
    const shop = await openStore(place);
    const { store } = await SmallShop.open(sqlite);
    await archiveOf(store, 'checked.gz');
    await importShop(shop, createReadStream(path('checked.gz')));
    expect((await checkShop(shop)).isSound).toBe(true);
    await ask(
      place,
      "insert into balances (account, item, lot, unit, quantity) values ('bin/b', 'string/s', 'l', 'pieces', 5)",
    );
    const check = await checkShop(shop);
    expect(check.isSound).toBe(false);
    expect(check.ledger.map(({ law, quantity }) => [law, quantity])).toContainEqual(['other-balance', 5]);
    await shop.close();
  });
});

describe('scheduled backups', () => {
  it('back up when the newest is old enough, and not before', async () => {
    const { store } = await SmallShop.open(sqlite);
    const backups = path('scheduled');
    let now = '2027-03-01T08:00:00.000Z';
    const made: string[] = [];
    const troubles: unknown[] = [];
    const schedule = {
      folder: backups,
      everyHours: 24,
      keep: USUAL_KEEP,
      clock: { now: () => now },
      onDone: (file: string) => made.push(file),
      onTrouble: (thrown: unknown) => troubles.push(thrown),
    };
    const oneLook = async (): Promise<void> => scheduleBackups(store, schedule)();
    await oneLook();
    now = '2027-03-01T20:00:00.000Z';
    await oneLook();
    now = '2027-03-02T08:00:00.000Z';
    await oneLook();
    expect(troubles).toEqual([]);
    expect(made).toHaveLength(2);
    expect(readdirSync(backups)).toHaveLength(2);
  });
});

describe('records of one kind', () => {
  it('are written as a table and as JSON, oldest first', async () => {
    const { store } = await SmallShop.open(sqlite);
    const csv = await store.read((tx) => exportRecords(tx, 'wire', 'csv'));
    expect(csv.split('\n')[0]).toMatch(/^id,version,state,createdAt,updatedAt,name,use,shape,sizeM/);
    const json = JSON.parse(await store.read((tx) => exportRecords(tx, 'wire', 'json'))) as {
      body: { name: string };
    }[];
    expect(csv.trimEnd().split('\n')).toHaveLength(json.length + 1);
    for (const { body } of json) expect(csv).toContain(body.name);
  });
});
