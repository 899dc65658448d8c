import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { DEMO_DATE, demoOrders, demoWorkshop } from '../demo/index.js';
import { packageRoot } from '../src/workshop/index.js';
import { machineDescription } from './measure.js';

/** `tautwork day` from the shell, as a person runs it: start of the program, reading, planning, printing, documents. */
const LIMIT_S = 3;
const LIMIT_MB = 400;
const REPEATS = 5;

/** Prints the child's largest memory when it ends, without changing what it does. */
const TELL_MEMORY = `data:text/javascript,process.on('exit',()=>process.stderr.write('\\nmaxrss '+process.resourceUsage().maxRSS+'\\n'))`;

interface Measured {
  readonly seconds: number;
  readonly megabytes: number;
}

function runDay(args: readonly string[]): Measured {
  const program = new URL('bin/tautwork.mjs', packageRoot()).pathname;
  const from = performance.now();
  const child = spawnSync(process.execPath, ['--import', TELL_MEMORY, program, 'day', ...args], {
    encoding: 'utf8',
    maxBuffer: 1 << 28,
  });
  const seconds = (performance.now() - from) / 1000;
  const kilobytes = Number(/maxrss (\d+)/.exec(child.stderr)?.[1]);
  if (child.status !== 0 && child.status !== 1) throw new Error(`the day failed: ${child.stderr}`);
  return { seconds, megabytes: kilobytes / 1024 };
}

function report(what: string, runs: readonly Measured[], limited: boolean): void {
  const seconds = runs.map((run) => run.seconds).sort((a, b) => a - b)[Math.floor(runs.length / 2)]!;
  const megabytes = Math.max(...runs.map((run) => run.megabytes));
  const verdict = limited
    ? `; limit ${LIMIT_S} s and ${LIMIT_MB} MB: ${seconds <= LIMIT_S && megabytes <= LIMIT_MB ? 'kept' : 'MISSED'}`
    : '';
  console.log(
    `${what}: median ${seconds.toFixed(2)} s of ${runs.length}, at most ${megabytes.toFixed(0)} MB${verdict}`,
  );
}

const folder = mkdtempSync(join(tmpdir(), 'tautwork-bench-'));
try {
  console.log(machineDescription());
  const shop = demoWorkshop();
  const wish = { from: DEMO_DATE, days: 28, customShare: 0.4, requestShare: 0.1 };
  for (const count of [1_000, 10_000]) {
    const orders = join(folder, `orders-${count}.csv`);
    writeFileSync(orders, demoOrders(shop, { ...wish, count, seed: count }));
    const args = ['--orders', orders, '--date', DEMO_DATE];
    const repeats = count === 1_000 ? REPEATS : 1;
    const times = (more: readonly string[]) =>
      Array.from({ length: repeats }, () => runDay([...args, ...more]));
    report(`${count} orders, tables`, times([]), count === 1_000);
    report(
      `${count} orders, tables and all documents`,
      times(['--out', join(folder, `out-${count}`)]),
      count === 1_000,
    );
  }
} finally {
  rmSync(folder, { recursive: true, force: true });
}
