import { describe, expect, it } from 'vitest';
import { RECORD_KINDS } from '../../src/contract/index.js';
import { openStore, type Store, type TableRow } from '../../src/store/index.js';
import { ask, engines } from './harness.js';
import {
  at,
  cautionReading,
  endChecksOf,
  event,
  insertRun,
  journalEntry,
  measurement,
  movement,
  personBody,
  tally,
} from './samples.js';

const all = engines();

/** A shop with something in most tables, some of it awkward. */
async function fillShop(store: Store): Promise<void> {
  await store.write(async (tx) => {
    const runId = await insertRun(tx);
    const person = await tx.records.insert('person', {
      id: '00000000-0000-7000-8000-000000000001',
      at: at(0),
      body: personBody('Ünä "quoted"\n\\ ½ 🎸 \u0001'),
    });
    await tx.records.update('person', {
      id: person.id,
      expectedVersion: 1,
      at: at(1),
      body: personBody('B'),
    });
    await tx.readings.addMeasurements([
      measurement(runId, { value: 0.1 + 0.2 }),
      measurement(runId, { value: 1e-300, placeM: null, rotationDeg: 1 / 3 }),
    ]);
    await tx.readings.addEndChecks(await endChecksOf(tx, runId));
    await tx.readings.addTally(tally(runId));
    const machineId = (await tx.records.get('run', runId))!.body.machineId;
    await tx.cautionReadings.add(cautionReading(machineId, person.id));
    for (let index = 0; index < 12; index++) await tx.ledger.post(movement(`bin ${index}`));
    await tx.journal.append(journalEntry({ touched: [{ kind: 'run', id: runId, version: 1 }] }));
    await tx.events.append(Array.from({ length: 25 }, (_, index) => event(`e${index}`)));
    await tx.mappings.put('s', { gauge: 'Gauge' });
  });
}

async function everyRow(store: Store): Promise<Map<string, readonly TableRow[]>> {
  return store.read(async ({ tables }) => {
    const found = new Map<string, readonly TableRow[]>();
    for (const name of tables.names) {
      const rows: TableRow[] = [];
      let after: string | undefined;
      do {
        const page = await tables.rows(name, { limit: 4, ...(after === undefined ? {} : { after }) });
        rows.push(...page.items);
        after = page.next;
      } while (after !== undefined);
      found.set(name, rows);
    }
    return found;
  });
}

const refill = (store: Store, shop: Map<string, readonly TableRow[]>) =>
  store.write(async ({ tables }) => {
    for (const [name, rows] of shop) await tables.fill(name, rows);
  });

describe('the whole shop, table by table', () => {
  it('goes from engine to engine and back without a change', async () => {
    const first = await all[0]!.open();
    await fillShop(first);
    const shop = await everyRow(first);
    expect(shop.get('events')).toHaveLength(25);
    expect(shop.get('movements')).toHaveLength(12);
    for (const engine of [...all, ...all]) {
      const next = await engine.open();
      await refill(next, shop);
      expect(await everyRow(next)).toEqual(shop);
    }
  });

  it.each(all)('has on $name every table and every key column that the program speaks of', async (engine) => {
    const place = await engine.place();
    const store = await openStore(place);
    try {
      const { names } = await store.read(async ({ tables }) => tables);
      const inDatabase = await ask(
        place,
        'file' in place
          ? "select name from sqlite_master where type = 'table' and name not like 'sqlite_%'"
          : 'select tablename as name from pg_tables where schemaname = current_schema()',
      );
      expect([...names, 'migrations', 'run_facts', 'string_sums'].sort()).toEqual(
        inDatabase.map((row) => (row as { name: string }).name).sort(),
      );
      for (const { collection, keys } of Object.values(RECORD_KINDS)) {
        const columns = ['id', 'search_text', 'body', ...keys.map(snake)].join(', ');
        await expect(
          ask(place, `select ${columns} from ${collection.replaceAll('-', '_')}`),
        ).resolves.toEqual([]);
      }
    } finally {
      await store.close();
    }
  });

  it.each(all)('refuses on $name a table that is none', async (engine) => {
    const store = await engine.open();
    await expect(store.read(({ tables }) => tables.rows('migrations', { limit: 1 }))).rejects.toThrow(
      /no table/,
    );
  });
});

const snake = (field: string) => field.replace(/[A-Z]/g, (letter) => `_${letter.toLowerCase()}`);
