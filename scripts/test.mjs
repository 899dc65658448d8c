// @ts-check
import { CHECKS, perform } from './machinery/checks.mjs';
import { withLock } from './machinery/lock.mjs';
import { buildPage } from './machinery/page.mjs';
import { startPostgres } from './machinery/postgres.mjs';
import { buildProduct } from './machinery/product.mjs';
import { SetUpFault, say } from './machinery/say.mjs';
import { heedStops } from './machinery/stopping.mjs';
import { findBrowser, prepareTools } from './machinery/tools.mjs';
import { runVitest } from './machinery/vitest.mjs';
import { setUpPackages } from './setup.mjs';

// Everything that must hold, in one command. A step that fails does not keep the others from being tried; each step
// counts as one check beside the tests, and the last line gives the sum.

heedStops();
const counts = { passed: 0, failed: 0, skipped: 0 };
const count = (/** @type {boolean} */ passed) => {
  if (passed) counts.passed += 1;
  else counts.failed += 1;
};

if (await packagesAreReady()) {
  const missing = [...(await prepareTools())];
  const postgres = await startPostgres();
  if (!postgres) missing.push('postgresql');
  const steps = [
    {
      name: 'programs for the tests',
      remedy: 'install what is named above',
      passes: async () => isEnough(missing),
    },
    ...CHECKS,
    built('server and commands build', buildProduct),
    built('page builds', buildPage),
  ];
  for (const step of steps) count(await perform(step));
  const browser = findBrowser();
  const tests = await runVitest(process.argv.slice(2), {
    ...(browser ? { CHROMIUM_PATH: browser } : {}),
    ...(postgres ? { TAUTWORK_TEST_POSTGRES: postgres.url } : {}),
  });
  postgres?.stop();
  counts.passed += tests.passed;
  counts.failed += tests.failed;
  counts.skipped += tests.skipped;
}

const skipped = counts.skipped > 0 ? `, ${counts.skipped} skipped` : '';
process.exitCode = counts.failed > 0 ? 1 : 0;
console.log(`${counts.passed} passed, ${counts.failed} failed${skipped}`);

async function packagesAreReady() {
  const ready = await withoutFault(setUpPackages);
  if (!ready) count(false);
  return ready;
}

/** A developer's own machine may lack a browser; the machine that judges a change may not.
 * @param {readonly string[]} missing */
function isEnough(missing) {
  return missing.length === 0 || !process.env.CI;
}

/** @param {string} name @param {() => Promise<'built' | 'ready'>} build */
function built(name, build) {
  return {
    name,
    remedy: 'the compiler or bundler says above where and why',
    passes: () => withLock('build', () => withoutFault(build)),
  };
}

/** @param {() => Promise<unknown>} work */
async function withoutFault(work) {
  try {
    await work();
    return true;
  } catch (fault) {
    if (!(fault instanceof SetUpFault)) throw fault;
    say(fault.message);
    return false;
  }
}
