import { randomUUID } from 'node:crypto';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import pg from 'pg';
import type { CalendarDate } from '../../src/core/foundation/index.js';
import {
  enterLot,
  loadDemoHistory,
  newId,
  openStore,
  performMany,
  type StorePlace,
  saveBin,
} from '../../src/workshop/index.js';
import { CONSOLE } from '../tablets/console.js';
import type { Ground } from './requests.js';

/** A place for a shop that holds nothing yet. */
export interface FreshPlace {
  readonly place: StorePlace;
  readonly remove: () => Promise<void>;
}

export async function freshFile(): Promise<FreshPlace> {
  const folder = mkdtempSync(join(tmpdir(), 'tautwork-kills-'));
  return {
    place: { file: join(folder, 'shop.db') },
    remove: async () => rmSync(folder, { recursive: true }),
  };
}

/** A schema of its own on a PostgreSQL server. */
export async function freshSchema(server: string): Promise<FreshPlace> {
  const schema = `kills_${randomUUID().replaceAll('-', '')}`;
  await tell(server, `create schema ${schema}`);
  const url = new URL(server);
  url.searchParams.set('options', `-c search_path=${schema}`);
  return { place: { url: url.href }, remove: () => tell(server, `drop schema ${schema} cascade`) };
}

async function tell(server: string, statement: string): Promise<void> {
  const client = new pg.Client(server);
  await client.connect();
  try {
    await client.query(statement);
  } finally {
    await client.end();
  }
}

/** The invented workshop after its first day, with a lot of strings that no round carries away whole. */
export async function furnish(place: StorePlace): Promise<Ground> {
  const store = await openStore(place);
  try {
    const told = await loadDemoHistory(store, { until: '2026-03-02' as CalendarDate });
    if ('code' in told) throw new Error(`the place is not empty: ${told.table}`);
    const furnished = await performMany(store, CONSOLE, async (ask, { records }) => {
      const bin = (name: string) =>
        ask(saveBin, { id: newId(), body: { name, walkOrder: 900, reorderLevel: 0 } });
      const [from, to] = [await bin('kills, from'), await bin('kills, to')];
      const spec = { gaugeThou: 36, kind: 'wound', material: 'phosphor-bronze', end: 'ball', lengthM: 1 };
      const lot = await ask(enterLot, {
        id: newId(),
        name: 'to be carried',
        spec: spec as never,
        binId: from.id,
        counted: 1_000_000,
        reason: 'so that they last',
      });
      const [wire] = await records.all('wire');
      const [run] = await records.all('run');
      return { wireId: wire!.id, runId: run!.id, lotId: lot.id, fromBinId: from.id, toBinId: to.id };
    });
    if (!furnished.ok) throw new Error(JSON.stringify(furnished.fault));
    return furnished.value;
  } finally {
    await store.close();
  }
}
