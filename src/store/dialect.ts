import { type ColumnDataType, type Expression, type RawBuilder, type SqlBool, sql } from 'kysely';

/** Where the two engines speak differently, and nowhere else: every other file says the same to both. */
export interface Dialect {
  readonly engine: 'sqlite' | 'postgresql';
  /** Types of columns. Text is compared byte by byte on both, so that lists have the same order. */
  readonly text: ColumnDataType | RawBuilder<unknown>;
  /** Whole numbers up to 2^53: quantities in small units, money, counters. */
  readonly whole: ColumnDataType | RawBuilder<unknown>;
  /** Binary floating point, for what is measured. */
  readonly real: ColumnDataType | RawBuilder<unknown>;
  /** What ends a `create table`: SQLite takes any value in any column unless told to be strict. */
  readonly tableEnd: RawBuilder<unknown>;
  /** Whether a text holds another, letter for letter; `like` differs in which letters it takes as equal. */
  contains(text: Expression<string>, part: string): RawBuilder<SqlBool>;
  /** Names of the shop's own tables. */
  readonly tableNames: RawBuilder<{ readonly name: string }>;
  /** Statements after which rows of the table can be neither changed nor removed. */
  appendOnly(table: string): readonly RawBuilder<unknown>[];
}

export const SQLITE: Dialect = {
  engine: 'sqlite',
  text: 'text',
  whole: 'integer',
  real: 'real',
  tableEnd: sql`strict`,
  contains: (text, part) => sql<SqlBool>`instr(${text}, ${part}) > 0`,
  tableNames: sql`select name from sqlite_master where type = 'table'`,
  appendOnly: (table) =>
    ['update', 'delete'].map(
      (
        deed,
      ) => sql`create trigger ${sql.id(`${table}_no_${deed}`)} before ${sql.raw(deed)} on ${sql.table(table)}
        begin select raise(abort, 'append only'); end`,
    ),
};

export const POSTGRESQL: Dialect = {
  engine: 'postgresql',
  text: sql`text collate "C"`,
  whole: 'bigint',
  real: 'double precision',
  tableEnd: sql``,
  contains: (text, part) => sql<SqlBool>`strpos(${text}, ${part}) > 0`,
  tableNames: sql`select tablename as name from pg_tables where schemaname = current_schema()`,
  appendOnly: (table) => [
    sql`create or replace function refuse_change() returns trigger language plpgsql as
      'begin raise exception ''append only''; end'`,
    sql`create trigger ${sql.id(`${table}_no_change`)} before update or delete on ${sql.table(table)}
      for each row execute function refuse_change()`,
  ],
};
