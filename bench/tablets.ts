import assert from 'node:assert/strict';
import { fork } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { performance } from 'node:perf_hooks';
import type { CalendarDate } from '../src/core/foundation/index.js';
import { openServer } from '../src/server/index.js';
import { openStore, type Store, type StorePlace } from '../src/store/index.js';
import { loadDemoHistory, newId, perform, recordMeasurements } from '../src/workshop/index.js';
import { machineDescription, reportSpread, spreadOf } from './measure.js';
import type { Shift, Shifted } from './tablets/at-work.js';
import { benchServer } from './tablets/bench-server.js';
import { CONSOLE } from './tablets/console.js';

/**
 * 50 tablets that each post a measurement every second over HTTP, durable on SQLite, while 20 screens listen to
 * live events; then how many single measurements a second become durable. On PostgreSQL too where
 * `TAUTWORK_BENCH_POSTGRES` names an empty database. Run: npx tsx bench/tablets.ts [seconds]
 */
const seconds = Number(process.argv[2] ?? 60);
const TABLETS = 50;
const WATCHERS = 20;
const LIMIT_P99_MS = 50;
const WRITING_MS = 5000;

console.log(machineDescription());
const folder = mkdtempSync(join(tmpdir(), 'tautwork-tablets-'));
try {
  await inShop({ file: join(folder, 'shop.db') }, async (store, runIds) => {
    await tabletsAtWork(store, runIds);
    await durableWrites('SQLite', store, runIds);
  });
  const url = process.env.TAUTWORK_BENCH_POSTGRES;
  if (url) await inShop({ url }, (store, runIds) => durableWrites('PostgreSQL', store, runIds));
  else console.log('PostgreSQL: LEFT OUT, since TAUTWORK_BENCH_POSTGRES names none');
} finally {
  rmSync(folder, { recursive: true });
}

/** The invented workshop after its first day. */
async function inShop(
  place: StorePlace,
  work: (store: Store, runIds: readonly string[]) => Promise<void>,
): Promise<void> {
  const store = await openStore(place);
  try {
    const told = await loadDemoHistory(store, { until: '2026-03-02' as CalendarDate });
    assert.ok(!('code' in told), 'the place is empty');
    const runs = await store.read((tx) => tx.records.all('run', { state: 'closed' }));
    await work(
      store,
      runs.map(({ id }) => id),
    );
  } finally {
    await store.close();
  }
}

async function tabletsAtWork(store: Store, runIds: readonly string[]): Promise<void> {
  const served = await benchServer(store);
  const open = await openServer(served.server, 0);
  try {
    const shift = {
      port: open.port,
      token: served.token,
      runIds,
      tablets: TABLETS,
      watchers: WATCHERS,
      seconds,
    };
    const { tookMs, refused, acknowledged, heard, eventLagMs } = await shiftOf(shift);
    const took = spreadOf(tookMs);
    reportSpread(`${TABLETS} tablets for ${seconds} s, a post to its answer`, took);
    console.log(`limit p99 ${LIMIT_P99_MS} ms: ${took.p99Ms <= LIMIT_P99_MS ? 'kept' : 'MISSED'}`);
    reportSpread(`${WATCHERS} screens, from the moment of a write to its event`, spreadOf(eventLagMs));
    const missing = await missingOf(store, acknowledged);
    const unheard = heard.reduce((sum, count) => sum + (acknowledged.length - count), 0);
    console.log(
      `${acknowledged.length} acknowledged of ${TABLETS * seconds}, ${refused.length} refused, ${missing} lost, ${unheard} events lost`,
    );
    assert.deepEqual([refused.slice(0, 3), missing, unheard], [[], 0, 0]);
  } finally {
    await open.close();
  }
}

async function shiftOf(shift: Shift): Promise<Shifted> {
  const tablets = fork(new URL('./tablets/at-work.ts', import.meta.url));
  tablets.send(shift);
  const [shifted] = (await Promise.race([
    once(tablets, 'message'),
    once(tablets, 'exit').then(() => {
      throw new Error('the tablets fell silent');
    }),
  ])) as [Shifted];
  return shifted;
}

async function missingOf(store: Store, acknowledged: readonly string[]): Promise<number> {
  const kept = new Set<string>();
  let after: string | undefined;
  do {
    const page = await store.read(({ readings }) =>
      readings.measurements({ limit: 500, ...(after === undefined ? {} : { after }) }),
    );
    for (const { id } of page.items) kept.add(id);
    after = page.next;
  } while (after !== undefined);
  return acknowledged.filter((id) => !kept.has(id)).length;
}

/** Whole use cases with journal and events, each in a transaction of its own, on the disk before it is told. */
async function durableWrites(engine: string, store: Store, runIds: readonly string[]): Promise<void> {
  for (const writers of [1, 20]) {
    const until = performance.now() + WRITING_MS;
    let written = 0;
    const write = async (): Promise<void> => {
      while (performance.now() < until) {
        const row = { id: newId(), runId: runIds[0]!, quantity: 'diameter' as const, value: 0.001168 };
        const input = { rows: [{ ...row, instrument: 'micrometer 1' }] };
        const done = await perform(store, recordMeasurements, { ...CONSOLE, input, requestId: newId() });
        assert.ok(done.ok, JSON.stringify(done));
        written++;
      }
    };
    await Promise.all(Array.from({ length: writers }, write));
    const aSecond = (written / (WRITING_MS / 1000)).toFixed(0);
    console.log(`${engine}: ${aSecond} durable single measurements a second, ${writers} at once`);
  }
}
