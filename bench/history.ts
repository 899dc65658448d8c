import assert from 'node:assert/strict';
import { mkdtempSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { performance } from 'node:perf_hooks';
import { PLANTED_CAUSES } from '../demo/index.js';
import { openStore } from '../src/store/index.js';
import { causesSeen, loadDemoHistory, type Seen } from '../src/workshop/index.js';
import { machineDescription } from './measure.js';

/**
 * Times the load of the invented workshop's year into SQLite, through the use cases, and asks the records what
 * they show of the causes planted in it. Run: npx tsx bench/history.ts
 */
const LIMIT_S = 20;
const folder = mkdtempSync(join(tmpdir(), 'tautwork-year-'));
const file = join(folder, 'shop.db');

console.log(machineDescription());
try {
  const store = await openStore({ file });
  try {
    const from = performance.now();
    const used = process.cpuUsage();
    const told = await loadDemoHistory(store);
    const seconds = (performance.now() - from) / 1000;
    const { user, system } = process.cpuUsage(used);
    assert.ok(!('code' in told));
    const { days, asked } = told;
    console.log(
      `${days} days, ${asked} use cases in ${seconds.toFixed(1)} s (${((user + system) / 1e6).toFixed(1)} s of processor time), limit ${LIMIT_S} s: ${seconds <= LIMIT_S ? 'kept' : 'MISSED'}; ${(statSync(file).size / 1e6).toFixed(0)} MB`,
    );
    const { breaches, seen } = await store.read(async (tx) => ({
      breaches: await tx.ledger.breaches(),
      seen: await causesSeen(tx, PLANTED_CAUSES),
    }));
    assert.deepEqual(breaches, []);
    const { wear, badLot, micrometer } = PLANTED_CAUSES;
    reportSeen('worn gearbox, nm a day', seen.wearMPerDay, { factor: 1e9, planted: wear.growthMPerDay });
    reportSeen('other machines, nm a day', seen.othersMPerDay, { factor: 1e9, planted: 0 });
    reportSeen('micrometer, µm', seen.micrometerM, { factor: 1e6, planted: micrometer.readsLargeM });
    const { bad, others, strings } = seen.spreadM;
    console.log(
      `${badLot.lot}: spread along a string ${(bad * 1e6).toFixed(1)} µm (${strings} strings), of others ${(others * 1e6).toFixed(1)} µm; mass ${(seen.massShare.value * 100).toFixed(2)} ± ${(seen.massShare.u * 100).toFixed(2)} % off`,
    );
    assert.ok(bad > 2 * others);
  } finally {
    await store.close();
  }
} finally {
  rmSync(folder, { recursive: true });
}

/** A figure that the records show must agree with what was planted, within three of its standard errors. */
function reportSeen(
  what: string,
  { value, u }: Seen,
  { factor, planted }: { readonly factor: number; readonly planted: number },
): void {
  console.log(
    `${what}: ${(value * factor).toFixed(2)} ± ${(u * factor).toFixed(2)}, planted ${(planted * factor).toFixed(2)}`,
  );
  assert.ok(Math.abs(value - planted) < 3 * u);
}
