import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { sql } from 'kysely';
import { afterAll, describe, expect, it } from 'vitest';
import { askAgain } from './ask-again.js';
import { sqliteEngine } from './sqlite-engine.js';
import type { EventRow, Sql } from './tables.js';

const folder = mkdtempSync(join(tmpdir(), 'tautwork-ask-again-'));
const engine = sqliteEngine({ file: join(folder, 'events.db'), lockWaitMs: 1000 });
afterAll(async () => {
  await engine.close();
  rmSync(folder, { recursive: true });
});

const event = (number: number, record_id: string): EventRow => ({
  number,
  topic: 'bin',
  record_id,
  version: 1,
  use_case: 'save-bin',
  at: '2027-03-01T07:30:00.000Z',
});

const append = (trx: Sql, rows: readonly EventRow[], built: string[]) =>
  askAgain(trx, 'append', rows, (marks) => {
    built.push(`${marks.length} rows`);
    return trx.insertInto('events').values(marks);
  });

describe('a query that is asked again', () => {
  it('is built once for as many rows, and takes the values of each time', async () => {
    const built: string[] = [];
    const rows = await engine.write(async (trx) => {
      await sql`create table events (number integer, topic text, record_id text, version integer, use_case text, at text)`.execute(
        trx,
      );
      await append(trx, [event(1, 'a')], built);
      await append(trx, [event(2, '\u00000 number')], built);
      await append(trx, [event(3, 'a'), event(4, 'b')], built);
      await append(trx, [event(5, 'b'), event(6, 'a')], built);
      return trx.selectFrom('events').selectAll().orderBy('number').execute();
    });
    expect(rows).toEqual([
      event(1, 'a'),
      event(2, '\u00000 number'),
      event(3, 'a'),
      event(4, 'b'),
      event(5, 'b'),
      event(6, 'a'),
    ]);
    expect(built).toEqual(['1 rows', '2 rows']);
  });

  it('keeps what is not of a row as it was built, and tells how many rows it changed', async () => {
    const rename = (trx: Sql, record_id: string) =>
      askAgain(trx, 'rename', [{ record_id }], ([mark]) =>
        trx.updateTable('events').set({ topic: 'pack' }).where('record_id', '=', mark!.record_id),
      );
    const changed = await engine.write(async (trx) => [await rename(trx, 'a'), await rename(trx, 'nobody')]);
    expect(changed.map(({ numAffectedRows }) => numAffectedRows)).toEqual([3n, 0n]);
    const packs = await engine.read((trx) =>
      trx.selectFrom('events').select('number').where('topic', '=', 'pack').orderBy('number').execute(),
    );
    expect(packs.map(({ number }) => number)).toEqual([1, 3, 6]);
  });

  it('is not asked with a value missing', async () => {
    const asked = engine.write(async (trx) => {
      const { at: _, ...short } = event(7, 'c');
      await append(trx, [short as EventRow], []);
    });
    await expect(asked).rejects.toThrow('no value for at');
  });
});
