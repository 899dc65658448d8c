import { type RawBuilder, type SqlBool, sql } from 'kysely';
import { invariant } from '../core/foundation/index.js';
import type { Page } from './store.js';
import { UnreadableCursor } from './store-faults.js';

const MOST_ITEMS = 500;

/** A place in a list: the values by which it is ordered, of the row after which the next page begins. */
export type Place = readonly (string | number)[];

export interface Walk {
  /** Columns by which the list is ordered; together they are unique. */
  readonly by: readonly string[];
  readonly order: 'newest' | 'oldest';
  readonly after?: string | undefined;
  readonly limit: number;
}

/** Rows behind the place at which the last page ended; all of them where there was none. */
export function behind({ by, order, after }: Walk): RawBuilder<SqlBool> {
  if (after === undefined) return sql<SqlBool>`1 = 1`;
  const place = readCursor(after, by);
  const sign = sql.raw(order === 'newest' ? '<' : '>');
  return sql<SqlBool>`(${sql.join(by.map((column) => sql.ref(column)))}) ${sign} (${sql.join(place)})`;
}

/** For `orderBy`: the columns, all in the same direction. */
export const inOrder = ({ by, order }: Walk): RawBuilder<unknown> =>
  sql.join(by.map((column) => sql`${sql.ref(column)} ${sql.raw(order === 'newest' ? 'desc' : 'asc')}`));

/** One row more than asked for tells whether another page follows. */
export function rowsToFetch({ limit }: Walk): number {
  invariant(Number.isInteger(limit) && limit >= 1 && limit <= MOST_ITEMS, `a page of ${limit} rows`);
  return limit + 1;
}

/** The page out of the rows fetched. */
export function pageOf<Row extends object, Item>(
  rows: readonly Row[],
  walk: Walk,
  itemOf: (row: Row) => Item,
): Page<Item> {
  const shown = rows.slice(0, walk.limit);
  const items = shown.map(itemOf);
  const last = shown.at(-1);
  if (last === undefined || rows.length <= walk.limit) return { items };
  const place = walk.by.map((column) => (last as Readonly<Record<string, string | number>>)[column]!);
  return { items, next: writeCursor(walk.by, place) };
}

/** The names of the columns travel along, so that a cursor of another list is known as such. */
const writeCursor = (by: readonly string[], place: Place): string =>
  Buffer.from(JSON.stringify([by.join(), ...place])).toString('base64url');

function readCursor(cursor: string, by: readonly string[]): Place {
  let read: unknown;
  try {
    read = JSON.parse(Buffer.from(cursor, 'base64url').toString());
  } catch {
    throw new UnreadableCursor(cursor);
  }
  if (!isPlaceOf(read, by)) throw new UnreadableCursor(cursor);
  return read.slice(1);
}

const isPlaceOf = (read: unknown, by: readonly string[]): read is Place =>
  Array.isArray(read) &&
  read.length === by.length + 1 &&
  read[0] === by.join() &&
  read.every((value) => typeof value === 'string' || Number.isFinite(value));
