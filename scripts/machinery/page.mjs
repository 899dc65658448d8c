// @ts-check
import { runTool } from './run.mjs';
import { SetUpFault, sayWhile } from './say.mjs';
import { stampIs, stampOf, writeStamp } from './stamp.mjs';

const STAMP = 'dist/web/.stamp';
/** The page runs the core in the browser, so it is made of the core and the contract too. */
const SOURCES = [
  'src/web',
  'src/core',
  'src/contract',
  'data',
  'package-lock.json',
  'vite.config.ts',
  'tsconfig.web.json',
];

/** Bundles the page to `dist/web` where its sources changed since.
 * @returns {Promise<'built' | 'ready'>} */
export async function buildPage() {
  const stamp = stampOf(SOURCES, [], (path) => !/\.test\.tsx?$/.test(path));
  if (stampIs(STAMP, stamp)) return 'ready';
  await sayWhile('bundling the page', async () => {
    const code = await runTool('vite/bin/vite.js', ['build', '--logLevel', 'warn']);
    if (code !== 0)
      throw new SetUpFault('the page could not be bundled; the bundler says above where and why.');
  });
  writeStamp(STAMP, stamp);
  return 'built';
}
