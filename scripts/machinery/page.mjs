// @ts-check
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { brotliCompress, gzip } from 'node:zlib';
import { rootPath } from './root.mjs';
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
    await compressPage();
  });
  writeStamp(STAMP, stamp);
  return 'built';
}

/** Lays a compressed copy beside each file of text, once and as small as can be, so that the server need not work at every visit. */
async function compressPage() {
  const folder = rootPath('dist/web');
  for (const name of readdirSync(folder, { recursive: true, encoding: 'utf8' })) {
    if (!/\.(js|css|html|svg|webmanifest)$/.test(name)) continue;
    const text = readFileSync(join(folder, name));
    writeFileSync(join(folder, `${name}.br`), await promisify(brotliCompress)(text));
    writeFileSync(join(folder, `${name}.gz`), await promisify(gzip)(text, { level: 9 }));
  }
}
