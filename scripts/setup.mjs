// @ts-check
import { pathToFileURL } from 'node:url';
import { withLock } from './machinery/lock.mjs';
import { checkNode, installPackages } from './machinery/packages.mjs';
import { buildPage } from './machinery/page.mjs';
import { buildProduct } from './machinery/product.mjs';
import { say, withWords } from './machinery/say.mjs';

// Everything a bare machine needs, with nothing but Node: this file and what it imports use no package, since it is
// what installs them.

/** Packages, and nothing else: enough to lint, check types and run tests. */
export async function setUpPackages() {
  checkNode();
  const packages = await withLock('set-up', installPackages);
  if (packages === 'ready') say('packages are up to date');
}

/** Packages, then what is compiled and bundled from the sources. Safe to repeat, quick where nothing changed. */
export async function setUp() {
  await setUpPackages();
  if ((await withLock('build', buildProduct)) === 'ready') say('server and commands are up to date');
  if ((await withLock('build', buildPage)) === 'ready') say('the page is up to date');
}

const isRunItself = import.meta.url === pathToFileURL(process.argv[1] ?? '').href;
if (isRunItself) await withWords(setUp);
