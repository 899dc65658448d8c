import { type Compilable, CompiledQuery, type QueryResult } from 'kysely';
import { invariant } from '../core/foundation/index.js';
import type { Sql } from './tables.js';

type Value = string | number | null;
type Fields = Readonly<Record<string, Value>>;

/** A statement's text, and where each of its values comes from: a field of a row, or always the same. */
interface Made {
  readonly sql: string;
  readonly sources: readonly (Place | { readonly always: unknown })[];
}

interface Place {
  readonly row: number;
  readonly field: string;
}

/**
 * Asks what is asked again and again with other values. The query is built once for each name and number of rows,
 * with marks in place of the values; after that only the values are put in. Building a query anew takes several
 * times as long as the database needs for it.
 *
 * `name` stands for the shape of the query: the same name with as many rows must always build the same.
 */
export function askAgain<Row extends object, Answer>(
  trx: Sql,
  name: string,
  rows: readonly Row[],
  build: (marks: readonly Row[]) => Compilable<Answer>,
): Promise<QueryResult<Answer>> {
  const made = madeFor(trx);
  const key = `${name} ${rows.length}`;
  let statement = made.get(key);
  if (!statement) {
    if (made.size >= MOST_MADE) made.clear();
    statement = makeStatement(rows as readonly Fields[], build as (marks: readonly Fields[]) => Compilable);
    made.set(key, statement);
  }
  const parameters = statement.sources.map((source) => valueFrom(rows as readonly Fields[], source));
  return trx.executeQuery(CompiledQuery.raw(statement.sql, parameters) as CompiledQuery<Answer>);
}

/** The same for any number of rows: in pieces, since a statement takes only so many values. Gives how many rows it touched in all. */
export async function askInPieces<Row extends object>(
  trx: Sql,
  name: string,
  rows: readonly Row[],
  build: (marks: readonly Row[]) => Compilable,
): Promise<bigint> {
  let touched = 0n;
  for (let at = 0; at < rows.length; at += PIECE) {
    const { numAffectedRows = 0n } = await askAgain(trx, name, rows.slice(at, at + PIECE), build);
    touched += numAffectedRows;
  }
  return touched;
}

const PIECE = 500;
const MOST_MADE = 500;

/** Each database connection pool has its own: the two engines write statements differently. */
const madeByAdapter = new WeakMap<object, Map<string, Made>>();

function madeFor(trx: Sql): Map<string, Made> {
  const { adapter } = trx.getExecutor();
  const known = madeByAdapter.get(adapter) ?? new Map<string, Made>();
  madeByAdapter.set(adapter, known);
  return known;
}

function makeStatement(rows: readonly Fields[], build: (marks: readonly Fields[]) => Compilable): Made {
  const places = new Map<unknown, Place>();
  const marks = rows.map((fields, row) =>
    Object.fromEntries(
      Object.keys(fields).map((field) => {
        const mark = `\u0000${row} ${field}`;
        places.set(mark, { row, field });
        return [field, mark];
      }),
    ),
  );
  const { sql, parameters } = build(marks).compile();
  return { sql, sources: parameters.map((value) => places.get(value) ?? { always: value }) };
}

function valueFrom(rows: readonly Fields[], source: Made['sources'][number]): unknown {
  if ('always' in source) return source.always;
  const value = rows[source.row]?.[source.field];
  invariant(value !== undefined, `no value for ${source.field} of row ${source.row}`);
  return value;
}
