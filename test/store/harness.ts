import { randomUUID } from 'node:crypto';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import pg from 'pg';
import { afterAll, it } from 'vitest';
import { openStore, type Store, type StoreOptions, type StorePlace } from '../../src/store/index.js';

/** An engine to run a suite of tests on. */
export interface TestEngine {
  readonly name: 'sqlite' | 'postgresql';
  /** A fresh place that holds nothing yet: a file, or a schema of its own. */
  place(): Promise<StorePlace>;
  /** A store in a fresh place. */
  open(options?: StoreOptions): Promise<Store>;
}

/** SQLite always; PostgreSQL where `TAUTWORK_TEST_POSTGRES` names a server, as the test command sees to. Call it at a
 * test file's top level: after the file's last test the stores are closed and the places removed. */
export function engines(): readonly TestEngine[] {
  const server = process.env.TAUTWORK_TEST_POSTGRES;
  const sqlite = tracked('sqlite', freshFile);
  if (server) return [sqlite, tracked('postgresql', () => freshSchema(server))];
  it.skip('the same on PostgreSQL, of which there is none here', () => {});
  return [sqlite];
}

interface FreshPlace {
  readonly place: StorePlace;
  readonly remove: () => Promise<void>;
}

function tracked(name: TestEngine['name'], fresh: () => Promise<FreshPlace>): TestEngine {
  const endings: (() => Promise<void>)[] = [];
  afterAll(async () => {
    for (const end of endings.reverse()) await end();
  });
  const place = async () => {
    const made = await fresh();
    endings.push(made.remove);
    return made.place;
  };
  return {
    name,
    place,
    open: async (options = {}) => {
      const store = await openStore(await place(), options);
      endings.push(() => store.close());
      return store;
    },
  };
}

async function freshFile(): Promise<FreshPlace> {
  const folder = mkdtempSync(join(tmpdir(), 'tautwork-store-'));
  return {
    place: { file: join(folder, 'shop.db') },
    remove: async () => rmSync(folder, { recursive: true, force: true }),
  };
}

async function freshSchema(server: string): Promise<FreshPlace> {
  const schema = `test_${randomUUID().replaceAll('-', '')}`;
  await askServer(server, `create schema ${schema}`);
  const url = new URL(server);
  url.searchParams.set('options', `-c search_path=${schema}`);
  return {
    place: { url: url.href },
    remove: async () => void (await askServer(server, `drop schema ${schema} cascade`)),
  };
}

/** Says something to the database itself, behind the store's back. */
export async function ask(place: StorePlace, statement: string): Promise<readonly unknown[]> {
  if ('url' in place) return askServer(place.url, statement);
  const database = new Database(place.file);
  try {
    const prepared = database.prepare(statement);
    return prepared.reader ? prepared.all() : [prepared.run()];
  } finally {
    database.close();
  }
}

async function askServer(url: string, statement: string): Promise<readonly unknown[]> {
  const client = new pg.Client(url);
  await client.connect();
  try {
    return (await client.query(statement)).rows;
  } finally {
    await client.end();
  }
}
