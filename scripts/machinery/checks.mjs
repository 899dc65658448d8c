// @ts-check
import { existsSync } from 'node:fs';
import { withLock } from './lock.mjs';
import { rootPath } from './root.mjs';
import { runTool } from './run.mjs';
import { say } from './say.mjs';

/** @typedef {{ name: string, remedy: string, passes: () => Promise<boolean> }} Check */

/** What is checked without running the product, in the order of how quickly each finds fault.
 * @type {readonly Check[]} */
export const CHECKS = [
  {
    name: 'format and lint',
    remedy: '`npm run format` mends most of it',
    passes: () => ended(runTool('@biomejs/biome/bin/biome', ['check', '--error-on-warnings'])),
  },
  typeCheck('types of the core (no Node, no browser)', 'tsconfig.core.json'),
  typeCheck('types of all but the page', 'tsconfig.json'),
  typeCheck('types of the page', 'tsconfig.web.json'),
  {
    name: 'layers',
    remedy: 'each breach above says what it means and the way out; the order stands in layers.json',
    passes: async () => {
      const places = ['src', 'demo', 'bench', 'test', 'scripts'].filter((place) =>
        existsSync(rootPath(place)),
      );
      const words = [...places, '--config', '.dependency-cruiser.mjs', '--output-type', 'err-long'];
      return ended(runTool('dependency-cruiser/bin/dependency-cruise.mjs', words));
    },
  },
  {
    name: 'nothing unused',
    remedy: 'remove what nobody uses, or do not export it',
    passes: () => ended(runTool('knip/bin/knip.js', ['--no-progress'])),
  },
];

/** @param {string} name @param {string} project
 * @returns {Check} */
function typeCheck(name, project) {
  return {
    name,
    remedy: 'the compiler says above where and why',
    // Locked: two runs at once would write the same record of what was checked before.
    passes: () => withLock('types', () => ended(runTool('typescript/bin/tsc', ['-p', project]))),
  };
}

/** @param {Promise<number>} code */
const ended = async (code) => (await code) === 0;

/** Does a check and says its outcome.
 * @param {Check} check
 * @returns {Promise<boolean>} */
export async function perform({ name, remedy, passes }) {
  const from = performance.now();
  const passed = await passes();
  const seconds = ((performance.now() - from) / 1000).toFixed(1);
  say(passed ? `ok      ${name} (${seconds} s)` : `FAILED  ${name} (${seconds} s): ${remedy}`);
  return passed;
}
