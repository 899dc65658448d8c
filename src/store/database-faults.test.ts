import Database from 'better-sqlite3';
import { describe, expect, it } from 'vitest';
import { asStoreFault } from './database-faults.js';
import { StoreUnavailable } from './store-faults.js';

const sqlite = (code: string) => new Database.SqliteError('as SQLite says it', code);
const server = (code: string) => Object.assign(new Error('as the server says it'), { code });

describe("a database's own error", () => {
  it.each([
    // SQLite, "Result and Error Codes", sqlite.org/rescode.html.
    [sqlite('SQLITE_FULL'), 'store.disk-full'],
    [sqlite('SQLITE_READONLY_DIRECTORY'), 'store.read-only'],
    [sqlite('SQLITE_BUSY_SNAPSHOT'), 'store.locked'],
    [sqlite('SQLITE_CORRUPT_INDEX'), 'store.damaged'],
    [sqlite('SQLITE_NOTADB'), 'store.damaged'],
    [sqlite('SQLITE_IOERR_WRITE'), 'store.lost'],
    [sqlite('SQLITE_CANTOPEN'), 'store.lost'],
    // PostgreSQL manual, appendix A, "PostgreSQL Error Codes".
    [server('53100'), 'store.disk-full'],
    [server('25006'), 'store.read-only'],
    [server('55P03'), 'store.locked'],
    [server('40P01'), 'store.locked'],
    [server('XX001'), 'store.damaged'],
    [server('57P01'), 'store.lost'],
    [server('57P03'), 'store.lost'],
    [server('08006'), 'store.lost'],
    [server('53300'), 'store.lost'],
    [server('ECONNREFUSED'), 'store.lost'],
    [new Error('Connection terminated unexpectedly'), 'store.lost'],
  ])('%o means %s', (thrown, code) => {
    const fault = asStoreFault(thrown);
    expect(fault).toBeInstanceOf(StoreUnavailable);
    expect(fault).toMatchObject({ code, detail: thrown.message, cause: thrown });
  });

  it('is left as it is where the fault is in the program, and so is anything that is no error', () => {
    for (const thrown of [
      sqlite('SQLITE_CONSTRAINT_CHECK'),
      server('23505'),
      new Error('other'),
      'text',
      null,
    ])
      expect(asStoreFault(thrown)).toBe(thrown);
  });

  it('is found behind the error of a transaction that went on in vain', () => {
    const dead = new Error('it can only be rolled back', { cause: sqlite('SQLITE_FULL') });
    expect(asStoreFault(dead)).toMatchObject({ code: 'store.disk-full' });
    const other = new Error('it can only be rolled back', { cause: sqlite('SQLITE_CONSTRAINT') });
    expect(asStoreFault(other)).toBe(other);
  });
});
