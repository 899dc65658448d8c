// @ts-check
import { readdirSync } from 'node:fs';
import { startPostgres } from './machinery/postgres.mjs';
import { rootPath } from './machinery/root.mjs';
import { runTool } from './machinery/run.mjs';
import { say, withWords } from './machinery/say.mjs';
import { heedStops } from './machinery/stopping.mjs';
import { setUp } from './setup.mjs';

// Runs every benchmark in bench/, one after the other so that none disturbs another, or those whose names are given.

/** Benchmarks that also ask PostgreSQL, one that waits for the disk as a shop's does. */
const ON_POSTGRES = ['kills.ts', 'tablets.ts'];
/** What benchmarks share, and no benchmark itself. */
const SHARED = ['index.ts', 'measure.ts'];

await withWords(async () => {
  heedStops();
  await setUp();
  const wanted = process.argv.slice(2);
  const files = readdirSync(rootPath('bench'))
    .filter((name) => name.endsWith('.ts') && !SHARED.includes(name))
    .filter((name) => wanted.length === 0 || wanted.some((word) => name.includes(word)))
    .sort();
  if (files.length === 0) {
    say('there is no such benchmark');
    process.exitCode = 1;
  }
  for (const file of files) {
    say(`bench/${file}`);
    const postgres = ON_POSTGRES.includes(file) ? await startPostgres({ waitsForDisk: true }) : undefined;
    const code = await runTool('tsx/dist/cli.mjs', [`bench/${file}`], {
      ...process.env,
      ...(postgres ? { TAUTWORK_BENCH_POSTGRES: postgres.url } : {}),
    });
    postgres?.stop();
    if (code !== 0) process.exitCode = 1;
  }
});
