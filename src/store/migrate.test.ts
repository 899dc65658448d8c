import { randomUUID } from 'node:crypto';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { sql } from 'kysely';
import pg from 'pg';
import { afterEach, describe, expect, it } from 'vitest';
import type { Engine } from './engine.js';
import { migrate } from './migrate.js';
import { MIGRATIONS } from './migrations/index.js';
import type { Migration } from './migrations/migration.js';
import { postgresqlEngine } from './postgresql-engine.js';
import { sqliteEngine } from './sqlite-engine.js';
import { StoreUnavailable } from './store-faults.js';

const endings: (() => Promise<unknown>)[] = [];
afterEach(async () => {
  for (const end of endings.splice(0).reverse()) await end();
});

function freshSqlite(): Promise<Engine> {
  const folder = mkdtempSync(join(tmpdir(), 'tautwork-migrate-'));
  endings.push(async () => rmSync(folder, { recursive: true, force: true }));
  return open(sqliteEngine({ file: join(folder, 'shop.db'), lockWaitMs: 5_000 }));
}

async function freshPostgresql(): Promise<Engine> {
  const server = process.env.TAUTWORK_TEST_POSTGRES!;
  const schema = `test_${randomUUID().replaceAll('-', '')}`;
  const client = new pg.Client(server);
  await client.connect();
  await client.query(`create schema ${schema}`);
  endings.push(() => client.query(`drop schema ${schema} cascade`).finally(() => client.end()));
  const url = new URL(server);
  url.searchParams.set('options', `-c search_path=${schema}`);
  return open(postgresqlEngine({ url: url.href, lockWaitMs: 5_000, onTrouble: () => {} }));
}

async function open(engine: Engine): Promise<Engine> {
  endings.push(() => engine.close());
  return engine;
}

const step = (number: number, statement: string, ...more: readonly string[]): Migration => ({
  number,
  name: `step-${number}`,
  up: async (trx) => {
    for (const each of [statement, ...more]) await sql.raw(each).execute(trx);
  },
});

const FIRST = step(1, 'create table one (id text primary key)');
const SECOND = step(2, 'create table two (id text primary key)', "insert into one values ('from two')");
const BROKEN = step(3, 'create table three (id text primary key)', 'insert into nowhere values (1)');

const tables = (engine: Engine) =>
  engine.read(async (trx) => {
    const { rows } = await engine.dialect.tableNames.execute(trx);
    return rows.map(({ name }) => name).sort();
  });
const standing = (engine: Engine) =>
  engine.read(async (trx) => {
    const rows = await trx.selectFrom('migrations').selectAll().orderBy('number').execute();
    return rows.map(({ number, name }) => `${number} ${name}`);
  });

const fresh = [
  { name: 'sqlite', engine: freshSqlite },
  ...(process.env.TAUTWORK_TEST_POSTGRES ? [{ name: 'postgresql', engine: freshPostgresql }] : []),
];

describe.each(fresh)('migrations on $name', ({ engine: freshEngine }) => {
  it('run in order, each once', async () => {
    const engine = await freshEngine();
    await migrate(engine, [FIRST]);
    await migrate(engine, [FIRST, SECOND]);
    await migrate(engine, [FIRST, SECOND]);
    expect(await tables(engine)).toEqual(['migrations', 'one', 'two']);
    expect(await standing(engine)).toEqual(['1 step-1', '2 step-2']);
  });

  it('that fail half-way leave nothing of themselves, and what stood before them stands', async () => {
    const engine = await freshEngine();
    await expect(migrate(engine, [FIRST, SECOND, BROKEN])).rejects.toThrow(/nowhere/);
    expect(await tables(engine)).toEqual(['migrations', 'one', 'two']);
    await migrate(engine, [FIRST, SECOND, step(3, 'create table three (id text primary key)')]);
    expect(await tables(engine)).toEqual(['migrations', 'one', 'three', 'two']);
  });

  it('leave a database alone that is newer than the program, and name both versions', async () => {
    const engine = await freshEngine();
    await migrate(engine, [FIRST, SECOND]);
    const older = migrate(engine, [FIRST]);
    await expect(older).rejects.toBeInstanceOf(StoreUnavailable);
    await expect(older).rejects.toMatchObject({
      code: 'store.newer',
      detail: 'the database is at version 2, this program knows up to 1',
    });
    expect(await standing(engine)).toEqual(['1 step-1', '2 step-2']);
  });

  it('run once where two programs start at the same moment', async () => {
    const engine = await freshEngine();
    await Promise.all([migrate(engine, [FIRST, SECOND]), migrate(engine, [FIRST, SECOND])]);
    expect(await standing(engine)).toEqual(['1 step-1', '2 step-2']);
  });

  it('make of a fresh database what they make of an old one, step by step', async () => {
    const [atOnce, stepwise] = [await freshEngine(), await freshEngine()];
    await migrate(atOnce, MIGRATIONS);
    for (let known = 1; known <= MIGRATIONS.length; known++)
      await migrate(stepwise, MIGRATIONS.slice(0, known));
    expect(await tables(stepwise)).toEqual(await tables(atOnce));
    expect(await standing(stepwise)).toEqual(await standing(atOnce));
    expect(MIGRATIONS.map(({ number }) => number)).toEqual(MIGRATIONS.map((_, index) => index + 1));
  });
});
