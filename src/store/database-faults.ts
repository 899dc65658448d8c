import Database from 'better-sqlite3';
import { StoreUnavailable } from './store-faults.js';

type Code = StoreUnavailable['code'];

/**
 * What the database's own error means to those above: `StoreUnavailable` where the database cannot take or give, the
 * error itself where the fault is in the program. The one place that knows the engines' codes.
 */
export function asStoreFault(thrown: unknown): unknown {
  if (!(thrown instanceof Error) || thrown instanceof StoreUnavailable) return thrown;
  const code =
    thrown instanceof Database.SqliteError ? sqliteMeaning(thrown.code) : postgresqlMeaning(thrown);
  if (code) return new StoreUnavailable(code, thrown.message, { cause: thrown });
  return thrown.cause === undefined ? thrown : causeOr(thrown);
}

/** A transaction that failed says so; why it failed is behind it. */
function causeOr(thrown: Error): unknown {
  const cause = asStoreFault(thrown.cause);
  return cause instanceof StoreUnavailable ? cause : thrown;
}

function sqliteMeaning(code: string): Code | undefined {
  if (code === 'SQLITE_FULL') return 'store.disk-full';
  if (code.startsWith('SQLITE_READONLY')) return 'store.read-only';
  if (code.startsWith('SQLITE_BUSY') || code.startsWith('SQLITE_LOCKED')) return 'store.locked';
  if (code.startsWith('SQLITE_CORRUPT') || code === 'SQLITE_NOTADB') return 'store.damaged';
  if (code.startsWith('SQLITE_IOERR') || code.startsWith('SQLITE_CANTOPEN')) return 'store.lost';
  return undefined;
}

/** SQLSTATE (PostgreSQL manual, appendix A), or the code of the socket. */
function postgresqlMeaning(thrown: Error): Code | undefined {
  const code = 'code' in thrown && typeof thrown.code === 'string' ? thrown.code : '';
  if (code === '53100') return 'store.disk-full';
  if (code === '25006') return 'store.read-only';
  if (code === '55P03' || code === '40001' || code === '40P01') return 'store.locked';
  if (code === 'XX001' || code === 'XX002') return 'store.damaged';
  if (code.startsWith('08') || code.startsWith('57P') || code.startsWith('53') || code === '25P03')
    return 'store.lost';
  if (SOCKET_CODES.has(code)) return 'store.lost';
  // The driver has no codes for these.
  if (/^(Connection terminated|Client has encountered a connection error)/.test(thrown.message))
    return 'store.lost';
  if (thrown.message === 'timeout exceeded when trying to connect') return 'store.lost';
  return undefined;
}

const SOCKET_CODES: ReadonlySet<string> = new Set([
  'ECONNREFUSED',
  'ECONNRESET',
  'EPIPE',
  'ETIMEDOUT',
  'EHOSTUNREACH',
  'ENETUNREACH',
  'ENOTFOUND',
  'EAI_AGAIN',
]);
