import assert from 'node:assert/strict';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { performance } from 'node:perf_hooks';
import { demoWorkshop } from '../demo/index.js';
import type { QualityView } from '../src/contract/index.js';
import { openStore } from '../src/store/index.js';
import { machineDescription, reportSpread, spread, spreadOf } from './measure.js';
import { drawingTimes } from './quality-room/draw-chart.js';
import { layDownQuality } from './quality-room/lay-down.js';
import { type BenchServer, benchServer } from './tablets/bench-server.js';
import { layDownTenYears, MEASUREMENTS_A_RUN, RUNS } from './ten-years/lay-down.js';

/**
 * Times the quality room of a shop with 2 million measurements in 20,000 runs of ten years, over HTTP with sign-in,
 * checks and JSON; how long it takes to work the kept sums out anew and to prove them; and how soon a chart of 5,000 of
 * its points stands on the screen. Run: npx tsx bench/quality.ts
 */
const LIMIT_MS = 300;
const LIMIT_DRAW_MS = 50;
const YEAR = 'until=2026-12-31';
/** As the room opens, and what one asks of it further; nobody promised ten years at once. */
const ASKED = [
  ['as it opens', YEAR, LIMIT_MS],
  ['one lot', `${YEAR}&measure=along&by=lot&lot=LOT`, LIMIT_MS],
  ['all ten years', `${YEAR}&from=2017-01-01`, undefined],
  ['all ten years, compared by lot', `${YEAR}&from=2017-01-01&measure=along&by=lot`, undefined],
] as const;

const folder = mkdtempSync(join(tmpdir(), 'tautwork-quality-'));
const file = join(folder, 'shop.db');
console.log(machineDescription());
try {
  await (await openStore({ file })).close();
  layDownTenYears(file, demoWorkshop());
  layDownQuality(file);
  const store = await openStore({ file });
  const served = await benchServer(store);
  try {
    const from = performance.now();
    await store.write(({ tables }) => tables.filled());
    console.log(`sums of all runs worked out anew in ${told(from)}`);
    const begun = performance.now();
    // Rows laid down by SQL have no former versions; their sums must be right all the same.
    const faults = await store.integrity();
    assert.deepEqual(
      faults.filter(({ check }) => check === 'sums'),
      [],
    );
    console.log(`the whole check of the shop, sums proved from every measurement: ${told(begun)}`);
    const whole = await seen(served, ASKED[2][1]);
    assert.equal(whole.readings, RUNS * MEASUREMENTS_A_RUN);
    assert.equal(whole.series.points.length, 5000);
    const lot = encodeURIComponent(whole.choices.lots[7]?.id ?? '');
    for (const [what, query, limitMs] of ASKED)
      reportSpread(
        `GET quality, ${what}`,
        await spread(() => seen(served, query.replace('LOT', lot)), 30),
        limitMs,
      );
    reportSpread('a chart of 5,000 points drawn', spreadOf(await drawingTimes(whole)), LIMIT_DRAW_MS);
  } finally {
    await served.close();
    await store.close();
  }
} finally {
  rmSync(folder, { recursive: true });
}

async function seen({ server, token }: BenchServer, query: string): Promise<QualityView> {
  const { statusCode, body } = await server.inject({
    url: `/api/v1/quality?${query}`,
    headers: { authorization: `Bearer ${token}` },
  });
  assert.equal(statusCode, 200, body);
  return JSON.parse(body) as QualityView;
}

function told(from: number): string {
  return `${((performance.now() - from) / 1000).toFixed(1)} s`;
}
