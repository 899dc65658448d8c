import Database from 'better-sqlite3';

/**
 * Lays down a shop's years of movements in a store's SQLite file, by SQL and in one transaction: through the
 * ledger's own door five million would take an hour. Each lot of strings is 50 movements: a spool in, its use,
 * the strings made, carried, picked one by one, sealed in packs, shipped. Of all but the newest lots nothing
 * is left. The store's check of the ledger finds no fault in it.
 */
export function layDownHistory(file: string, lots: number): void {
  const database = new Database(file);
  try {
    database.pragma('synchronous = OFF');
    database.pragma('cache_size = -400000');
    database.pragma('temp_store = FILE');
    const indexes = database
      .prepare<[], IndexRow>(
        `select name, sql from sqlite_schema where type = 'index' and sql is not null
           and tbl_name in ('movements', 'movement_entries', 'balances')`,
      )
      .all();
    database.transaction(() => {
      for (const { name } of indexes) database.exec(`drop index ${name}`);
      database.exec(namesOf(lots));
      database.exec(MOVEMENTS);
      database.exec(ENTRIES);
      for (const { sql } of indexes) database.exec(sql);
      database.exec(BALANCES);
    })();
    database.pragma('wal_checkpoint(TRUNCATE)');
  } finally {
    database.close();
  }
}

interface IndexRow {
  readonly name: string;
  readonly sql: string;
}

export const MOVEMENTS_A_LOT = 50;
export const KINDS = 300;
export const BINS = 300;
/** Lots that still have strings in their bins, and lots whose spool still has wire. */
export const LOTS_ON_HAND = 2000;
export const SPOOLS_ON_HAND = 200;

/** Names as long as the real ones: the ids of the shop are UUIDs. */
export const uuid = (what: number, number: number): string =>
  `0190${what.toString(16).padStart(4, '0')}-0000-7000-8000-${number.toString(16).padStart(12, '0')}`;

export const uuidSql = (what: number, number: string) =>
  `printf('0190%04x-0000-7000-8000-%012x', ${what}, ${number})`;

export const LOT = 1;
export const SPOOL = 2;
export const BIN = 3;
const ORDER = 4;
const PACK = 5;
export const kindKey = (kind: number): string => `wound ${10 + kind} thou, nickel-plated steel, ball`;

/** One row a lot: what its movements are about. */
const namesOf = (lots: number) => `
  create temp table lots as
  with recursive count(b) as (select 0 union all select b + 1 from count where b < ${lots} - 1)
  select b,
    ${uuidSql(LOT, 'b')} as lot,
    ${uuidSql(SPOOL, 'b')} as spool,
    'wire/' || ${uuidSql(6, 'b % 40')} as wire,
    'string/' || printf('wound %d thou, nickel-plated steel, ball', 10 + b % ${KINDS}) as string,
    'bin/' || ${uuidSql(BIN, `b % ${BINS}`)} as bin,
    'bin/' || ${uuidSql(BIN, `(b + 1) % ${BINS}`)} as next_bin,
    case when b < ${lots} - ${SPOOLS_ON_HAND} then 4500000 else 4000000 end as used_mg,
    case when b < ${lots} - ${LOTS_ON_HAND} then 15 else 47 end as good
  from count;
  create temp table turns as
  with recursive count(k) as (select 0 union all select k + 1 from count where k < ${MOVEMENTS_A_LOT} - 1)
  select k, case
    when k = 0 then 'receive' when k = 1 then 'use' when k = 2 then 'make' when k < 5 then 'move'
    when k < 20 then 'pick' when k < 35 then 'seal' else 'ship' end as what,
    (k - 5) % 15 as copy
  from count;`;

const NUMBER = `b * ${MOVEMENTS_A_LOT} + k + 1`;

const MOVEMENTS = `
  insert into movements (number, id, at, "by", what, reason, of_kind, of_id)
  select ${NUMBER}, ${uuidSql(7, NUMBER)},
    strftime('%Y-%m-%dT%H:%M:%S.000Z', 1450000000 + (${NUMBER}) * 63, 'unixepoch'),
    'person/' || ${uuidSql(8, 'b % 7')}, what, '', 'string-lot', lot
  from lots cross join turns;`;

const order = `'order/' || ${uuidSql(ORDER, 'b * 3 + copy / 5')}`;
const pack = `'pack/' || ${uuidSql(PACK, 'b * 15 + copy')}`;

/** Where each movement takes what: from, to, item, lot, unit, how many. Each row becomes two entries. */
const TRANSFERS = `
  select b, k, 1 as place, 'supplier' as source, 'spool/' || spool as goal, wire as item, spool as lot,
    'mg' as unit, 4500000 as quantity from lots cross join turns where what = 'receive'
  union all select b, k, 2, 'supplier', 'spool/' || spool, wire, spool, 'mm', 9000000
    from lots cross join turns where what = 'receive'
  union all select b, k, 1, 'spool/' || spool, 'wound-in', wire, spool, 'mg', used_mg
    from lots cross join turns where what = 'use'
  union all select b, k, 2, 'spool/' || spool, 'wound-in', wire, spool, 'mm', 2 * used_mg
    from lots cross join turns where what = 'use'
  union all select b, k, 1, 'made', bin, string, lot, 'pieces', good
    from lots cross join turns where what = 'make'
  union all select b, k, 2, 'made', 'scrap/gap in the wrap', string, lot, 'pieces', 3
    from lots cross join turns where what = 'make'
  union all select b, k, 1, case k when 3 then bin else next_bin end, case k when 3 then next_bin else bin end,
    string, lot, 'pieces', 2 from lots cross join turns where what = 'move'
  union all select b, k, 1, bin, ${order}, string, lot, 'pieces', 1
    from lots cross join turns where what = 'pick'
  union all select b, k, 1, ${order}, ${pack}, string, lot, 'pieces', 1
    from lots cross join turns where what = 'seal'
  union all select b, k, 2, 'made', ${pack}, 'set/six strings', '', 'pieces', 1
    from lots cross join turns where what = 'seal'
  union all select b, k, 1, ${pack}, 'customer', string, lot, 'pieces', 1
    from lots cross join turns where what = 'ship'
  union all select b, k, 2, ${pack}, 'customer', 'set/six strings', '', 'pieces', 1
    from lots cross join turns where what = 'ship'`;

const ENTRIES = `
  insert into movement_entries (movement_number, line, account, item, lot, unit, quantity)
  select ${NUMBER} as number, 2 * place - side as line,
    case side when 1 then source else goal end, item, lot, unit, case side when 1 then -quantity else quantity end
  from (${TRANSFERS}) cross join (select 1 as side union all select 0)
  order by number, line;`;

const BALANCES = `
  insert into balances (account, item, lot, unit, quantity)
  select account, item, lot, unit, sum(quantity) from movement_entries
  group by account, item, lot, unit having sum(quantity) <> 0
  order by account, item, lot, unit;`;
