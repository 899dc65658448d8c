import Database from 'better-sqlite3';
import { invariant } from '../../src/core/foundation/index.js';
import { uuid, uuidSql } from '../ledger-history/lay-down.js';
import { RUN, RUNS } from '../ten-years/lay-down.js';

const WIRE = 25;
const SPOOL_OF_WIRE = 30;
const TALLY = 31;
const WINDER = 28;
const WIRES = 20;
const SPOOLS = 1200;

/**
 * Makes of ten years of runs, each with a hundred measurements, what a quality room looks at: runs begun one after the
 * other, by three winders, of spools that last some thirty runs each, their readings grouped into strings, and scrap.
 */
export function layDownQuality(file: string): void {
  const database = new Database(file);
  try {
    database.pragma('synchronous = OFF');
    database.pragma('foreign_keys = OFF');
    database.pragma('cache_size = -400000');
    const guards = database
      .prepare<[], { name: string; sql: string }>(
        `select name, sql from sqlite_schema where type = 'trigger' and tbl_name = 'measurements'`,
      )
      .all();
    invariant(guards.length > 0, 'measurements are append only');
    database.transaction(() => {
      layWire(database);
      database.exec(RUN_BODIES);
      for (const { name } of guards) database.exec(`drop trigger ${name}`);
      database.exec(STRINGS);
      for (const { sql } of guards) database.exec(sql);
      database.exec(TALLIES);
    })();
    database.pragma('wal_checkpoint(TRUNCATE)');
  } finally {
    database.close();
  }
}

const AT = '2017-01-02T08:00:00.000Z';

function layWire(database: Database.Database): void {
  const columns = '(id, version, state, created_at, updated_at, search_text, name';
  const wire = database.prepare(
    `insert into wires ${columns}, body) values (?, 1, '', '${AT}', '${AT}', ?, ?, ?)`,
  );
  for (let at = 0; at < WIRES; at++) {
    const name = `round steel ${10 + at}`;
    const core = { sizeM: 3e-4, alloy: 'music-wire', strengthTable: 'astm-a228' };
    const body = { name, use: 'core', shape: 'round', priceMinorPerKg: 900, ...core };
    wire.run(uuid(WIRE, at), name, name, JSON.stringify(body));
  }
  const spool = database.prepare(
    `insert into spools ${columns}, wire_id, lot, body) values (?, 1, 'empty', '${AT}', '${AT}', ?, ?, ?, ?, ?)`,
  );
  for (let at = 0; at < SPOOLS; at++) {
    const wireId = uuid(WIRE, at % WIRES);
    const [name, lot] = [`spool ${at}`, `wire lot ${Math.floor(at / 3)}`];
    const body = { name, wireId, lot, tareKg: 0.2, receivedAt: AT };
    spool.run(uuid(SPOOL_OF_WIRE, at), name, name, wireId, lot, JSON.stringify(body));
  }
}

const spoolOf = (which: number) => uuidSql(SPOOL_OF_WIRE, `(i / 33 * 2 + ${which}) % ${SPOOLS}`);

const NUMBERED = `(select id, row_number() over (order by id) - 1 as i from runs
  where id between '${uuid(RUN, 0)}' and '${uuid(RUN, RUNS)}')`;

const RUN_BODIES = `update runs set body = json_set(body, '$.startedAt', created_at,
    '$.winderId', n.winder, '$.spoolIds', json_array(n.core, n.wrap))
  from (select id, ${uuidSql(WINDER, 'i % 3')} as winder, ${spoolOf(0)} as core, ${spoolOf(1)} as wrap
    from ${NUMBERED}) n
  where n.id = runs.id`;

/** Seven readings of a run in a row are one string, written down at one moment. */
const STRINGS = `update measurements set
    at = substr(n.begun, 1, 11) || printf('%02d:%02d:00.000Z', 8 + n.string / 6, n.string % 6 * 10),
    instrument = 'micrometer ' || (1 + n.string % 3)
  from (select m.id, r.created_at as begun,
      (row_number() over (partition by m.run_id order by m.id) - 1) / 7 as string
    from measurements m join runs r on r.id = m.run_id) n
  where n.id = measurements.id`;

const TALLIES = `insert into tallies (id, run_id, lot_id, station, outcome, reason, count, at, "by")
  select ${uuidSql(TALLY, 'i')}, id, null, 'winder', 'scrap',
    case i % 4 when 0 then 'end slipped' when 1 then 'turns ride up' else 'kinked core' end, 1, '${AT}', 'person/a'
  from ${NUMBERED}`;
