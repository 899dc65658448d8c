import assert from 'node:assert/strict';
import { mkdtempSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { performance } from 'node:perf_hooks';
import { demoWorkshop } from '../demo/index.js';
import { openStore, type ReadTransaction } from '../src/store/index.js';
import { LOT, layDownHistory, MOVEMENTS_A_LOT, uuid } from './ledger-history/lay-down.js';
import { machineDescription, reportSpread, spread } from './measure.js';
import { type BenchServer, benchServer } from './tablets/bench-server.js';
import { layDownTenYears, MEASUREMENTS_A_RUN, machineId, ORDERS, RUN, RUNS } from './ten-years/lay-down.js';
import { MOVEMENTS, PAGE, PATHS, QUESTIONS } from './ten-years/questions.js';

/**
 * Times pages of lists, and single records, of a shop that has worked for ten years: 2 million measurements,
 * 500,000 movements, 100,000 orders, 20,000 runs; from the store, and over HTTP with sign-in, checks and JSON.
 * Run: npx tsx bench/lists.ts
 */
const LIMIT_MS = 30;
const folder = mkdtempSync(join(tmpdir(), 'tautwork-ten-years-'));
const file = join(folder, 'shop.db');

console.log(machineDescription());
try {
  await (await openStore({ file })).close();
  const from = performance.now();
  layDownHistory(file, MOVEMENTS / MOVEMENTS_A_LOT);
  layDownTenYears(file, demoWorkshop());
  const seconds = ((performance.now() - from) / 1000).toFixed(1);
  console.log(`ten years laid down in ${seconds} s, ${(statSync(file).size / 2 ** 30).toFixed(2)} GiB`);
  const store = await openStore({ file });
  const served = await benchServer(store);
  try {
    await store.read(answers);
    for (const [what, ask] of QUESTIONS)
      reportSpread(what, await spread(() => store.read(ask), 300), LIMIT_MS);
    for (const path of PATHS)
      reportSpread(`GET ${path().split('=')[0]}`, await spread(() => get(served, path()), 300), LIMIT_MS);
  } finally {
    await served.close();
    await store.close();
  }
} finally {
  rmSync(folder, { recursive: true });
}

/** A quick answer is worth nothing if it is wrong: what must be there by the way it was laid down. */
async function answers({ records, readings, ledger }: ReadTransaction): Promise<void> {
  const orders = await records.list('order', { limit: PAGE });
  assert.equal(orders.items[0]?.body.number, `T-${999 + ORDERS}`);
  const received = await records.list('order', { where: { state: 'received' }, limit: 500 });
  assert.equal(received.items.length, 300);
  const ofMachine = await records.list('run', { where: { machineId: machineId(1) }, limit: PAGE });
  assert.equal(ofMachine.items[0]?.body.name, `run ${RUNS - 4}`);
  const ofRun = await readings.measurements({ runId: uuid(RUN, 77), limit: 500 });
  assert.equal(ofRun.items.length, MEASUREMENTS_A_RUN);
  assert.equal((await ledger.movements({ lot: uuid(LOT, 5), limit: 500 })).items.length, MOVEMENTS_A_LOT - 2);
}

async function get({ server, token }: BenchServer, path: string): Promise<void> {
  const { statusCode, body } = await server.inject({
    url: `/api/v1${path}`,
    headers: { authorization: `Bearer ${token}` },
  });
  assert.equal(statusCode, 200, body);
}
