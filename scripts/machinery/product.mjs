// @ts-check
import { cpSync, existsSync, mkdirSync, renameSync, rmSync } from 'node:fs';
import { dirname } from 'node:path';
import { rootPath } from './root.mjs';
import { runTool } from './run.mjs';
import { SetUpFault, sayWhile } from './say.mjs';
import { filesUnder, stampIs, stampOf, writeStamp } from './stamp.mjs';

const STAMP = 'dist/.product-stamp';
const NEXT = '.cache/dist-next';
const PARTS = ['src', 'demo', 'data'];
const SETTINGS = ['package-lock.json', 'tsconfig.base.json', 'tsconfig.build.json'];

/** Compiles server, commands and library to `dist` where the sources changed since.
 * @returns {Promise<'built' | 'ready'>} */
export async function buildProduct() {
  const stamp = stampOf([...PARTS, ...SETTINGS], [], isPartOfProduct);
  if (stampIs(STAMP, stamp)) return 'ready';
  await sayWhile('compiling the server and the commands', compile);
  writeStamp(STAMP, stamp);
  return 'built';
}

const isPartOfProduct = (/** @type {string} */ path) =>
  !path.startsWith('src/web/') && !/\.test\.tsx?$/.test(path);

/** Compiled aside and then moved in place: a failing compile leaves the last good one standing, and files of
 * sources that are gone do not linger. */
async function compile() {
  rmSync(rootPath(NEXT), { recursive: true, force: true });
  const code = await runTool('typescript/bin/tsc', ['-p', 'tsconfig.build.json', '--outDir', NEXT]);
  if (code !== 0) throw new SetUpFault('the code does not compile; the compiler says above where and why.');
  copyAssets();
  rmSync(rootPath(STAMP), { force: true });
  mkdirSync(rootPath('dist'), { recursive: true });
  for (const part of PARTS) {
    rmSync(rootPath('dist', part), { recursive: true, force: true });
    if (existsSync(rootPath(NEXT, part))) renameSync(rootPath(NEXT, part), rootPath('dist', part));
  }
  rmSync(rootPath(NEXT), { recursive: true, force: true });
}

/** Files that code reads from beside itself stand in `dist` at the same place as in the source. */
function copyAssets() {
  const isAsset = (/** @type {string} */ path) => isPartOfProduct(path) && !/\.(ts|tsx|md)$/.test(path);
  for (const path of PARTS.flatMap(filesUnder).filter(isAsset)) {
    mkdirSync(dirname(rootPath(NEXT, path)), { recursive: true });
    cpSync(rootPath(path), rootPath(NEXT, path));
  }
}
