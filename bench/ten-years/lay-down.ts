import Database from 'better-sqlite3';
import type { Shop } from '../../src/core/day/index.js';
import { invariant } from '../../src/core/foundation/index.js';
import { stringKey } from '../../src/core/sets/index.js';
import { uuid, uuidSql } from '../ledger-history/lay-down.js';

export const ORDERS = 100_000;
export const RUNS = 20_000;
export const MEASUREMENTS_A_RUN = 100;
export const MACHINES = 5;
const RECIPES = 250;
const PLAYERS = 9000;

const MACHINE = 20;
const RECIPE = 21;
export const RUN = 22;
export const ORDER_RECORD = 23;
const MEASUREMENT = 24;

export const machineId = (number: number): string => uuid(MACHINE, number);
export const player = (number: number): string => `Player ${number} Quarrelmere`;

/**
 * Lays ten years of orders, runs and measurements down in a store's SQLite file, by SQL and in one transaction.
 * Bodies are as the shop would have them: what is read is of the true size.
 */
export function layDownTenYears(file: string, shop: Shop): void {
  const database = new Database(file);
  try {
    database.pragma('synchronous = OFF');
    database.pragma('foreign_keys = OFF');
    database.pragma('cache_size = -400000');
    const indexes = database
      .prepare<[], { name: string; sql: string }>(
        `select name, sql from sqlite_schema where type = 'index' and sql is not null
           and tbl_name in ('orders', 'runs', 'measurements')`,
      )
      .all();
    database.transaction(() => {
      for (const { name } of indexes) database.exec(`drop index ${name}`);
      layMachinesAndRecipes(database, shop);
      layDownOrders(database, shop);
      database.prepare(RUN_ROWS).run({ body: JSON.stringify(runBody(shop)) });
      database.exec(MEASUREMENT_ROWS);
      for (const { sql } of indexes) database.exec(sql);
    })();
    database.pragma('wal_checkpoint(TRUNCATE)');
  } finally {
    database.close();
  }
}

/** The orders alone. */
export function layDownOrders(database: Database.Database, shop: Shop): void {
  database.prepare(ORDER_ROWS).run({ body: JSON.stringify(orderBody(shop)) });
}

const AT = '2017-01-02T08:00:00.000Z';

function layMachinesAndRecipes(database: Database.Database, { machines, recipes }: Shop): void {
  const machine = database.prepare(
    `insert into machines (id, version, state, created_at, updated_at, search_text, name, body)
     values (?, 1, '', '${AT}', '${AT}', ?, ?, ?)`,
  );
  for (const [at, { id: _, ...body }] of machines.entries())
    machine.run(uuid(MACHINE, at), body.name.toLowerCase(), body.name, JSON.stringify(body));
  const recipe = database.prepare(
    `insert into recipes (id, version, state, created_at, updated_at, search_text, name, material, gauge_thou, body)
     values (?, 1, 'calibrated', '${AT}', '${AT}', ?, ?, ?, ?, ?)`,
  );
  for (const [at, { id: name, gaugeThou, material, construction }] of recipes.slice(0, RECIPES).entries()) {
    const wires = { coreWireId: uuid(25, at), wrapWireIds: [uuid(26, at)] };
    const body = { name, gaugeThou, material, construction, ...wires, note: '' };
    recipe.run(uuid(RECIPE, at), name, name, material, gaugeThou, JSON.stringify(body));
  }
}

/** Fields in angle brackets are filled in row by row. */
function orderBody({ sets }: Shop): object {
  const set = sets[0];
  invariant(set, 'the demo has sets');
  const strings = set.strings.map((spec, at) => ({
    position: at + 1,
    spec,
    stringKey: stringKey(spec),
    recipeId: uuid(RECIPE, at),
  }));
  return {
    number: '<number>',
    player: '<player>',
    due: '<due>',
    note: '',
    lines: [{ lineNumber: 1, kind: 'stock', setName: set.name, quantity: 2, strings }],
    imported: { source: 'post', hash: 'f'.repeat(64) },
  };
}

function runBody({ sets }: Shop): object {
  const spec = sets[0]?.strings.at(-1);
  invariant(spec, 'the demo has strings');
  return {
    name: '<name>',
    recipeId: '<recipe>',
    recipeVersion: 1,
    machineId: '<machine>',
    spec,
    stringKey: stringKey(spec),
    quantity: 12,
    spoolIds: [],
    lotId: uuid(27, 0),
    goodCount: 11,
    scrapCount: 1,
    startedAt: AT,
    closedAt: AT,
    winderId: uuid(28, 0),
    note: '',
  };
}

const counted = (rows: number) =>
  `with recursive counted(i) as (select 0 union all select i + 1 from counted where i < ${rows} - 1)`;

/** Evenly over ten years, from 2017 on. */
const momentSql = (share: string) =>
  `strftime('%Y-%m-%dT%H:%M:%S.000Z', 1483344000 + cast(315360000.0 * (${share}) as integer), 'unixepoch')`;

/** All but the last three hundred are shipped. */
const ORDER_ROWS = `${counted(ORDERS)}
  insert into orders (id, version, state, created_at, updated_at, search_text, number, player, due, body)
  select id, case state when 'shipped' then 3 else 1 end, state, at, at,
    lower(number || char(10) || player || char(10) || due), number, player, due,
    replace(replace(replace(@body, '<number>', number), '<player>', player), '<due>', due)
  from (select ${uuidSql(ORDER_RECORD, 'i')} as id,
      case when i < ${ORDERS} - 300 then 'shipped' else 'received' end as state,
      ${momentSql(`1.0 * i / ${ORDERS}`)} as at, 'T-' || (1000 + i) as number,
      'Player ' || (i * 7919 % ${PLAYERS}) || ' Quarrelmere' as player,
      substr(${momentSql(`1.0 * i / ${ORDERS}`)}, 1, 10) as due from counted)`;

const RUN_ROWS = `${counted(RUNS)}
  insert into runs (id, version, state, created_at, updated_at, search_text, name, machine_id, recipe_id, body)
  select id, 4, state, at, at, lower(name || char(10) || machine || char(10) || recipe), name, machine, recipe,
    replace(replace(replace(@body, '<name>', name), '<machine>', machine), '<recipe>', recipe)
  from (select ${uuidSql(RUN, 'i')} as id, case when i < ${RUNS} - 5 then 'closed' else 'running' end as state,
      ${momentSql(`1.0 * i / ${RUNS}`)} as at, 'run ' || i as name,
      ${uuidSql(MACHINE, `i % ${MACHINES}`)} as machine,
      ${uuidSql(RECIPE, `i * 37 % ${RECIPES}`)} as recipe from counted)`;

const MEASUREMENT_ROWS = `${counted(RUNS * MEASUREMENTS_A_RUN)}
  insert into measurements (id, run_id, trial_string_id, quantity, value, place_m, rotation_deg, instrument, at, "by")
  select ${uuidSql(MEASUREMENT, 'i')}, ${uuidSql(RUN, `i / ${MEASUREMENTS_A_RUN}`)}, null, 'diameter',
    0.001168 + (i * 31 % 17 - 8) * 1e-6, 0.2 + 0.3 * (i % 3), 90.0 * (i % 2), 'micrometer ' || (1 + i % 3),
    ${momentSql(`1.0 * i / ${RUNS * MEASUREMENTS_A_RUN}`)}, 'person/' || ${uuidSql(28, 'i % 3')}
  from counted`;
