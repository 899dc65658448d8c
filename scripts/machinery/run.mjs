// @ts-check
import { spawn } from 'node:child_process';
import { ROOT, rootPath } from './root.mjs';

/** Runs a program in the project's folder, its output shown as it comes.
 * @param {string} program
 * @param {readonly string[]} words
 * @param {{ env?: NodeJS.ProcessEnv, shell?: boolean }} [how]
 * @returns {Promise<number>} its exit code; 1 where it could not start or was ended by a signal */
export function run(program, words, { env = process.env, shell = false } = {}) {
  return new Promise((resolve) => {
    const child = spawn(program, [...words], {
      cwd: ROOT,
      env,
      shell,
      stdio: ['ignore', 'inherit', 'inherit'],
    });
    const endToo = () => child.kill();
    process.once('exit', endToo);
    const end = (/** @type {number} */ code) => {
      process.off('exit', endToo);
      resolve(code);
    };
    child.once('error', (fault) => {
      console.error(`tautwork: ${program} could not be started: ${fault.message}`);
      end(1);
    });
    child.once('close', (code) => end(code ?? 1));
  });
}

/** Runs a tool that npm installed, by its script rather than by npx: quicker, and the same on every system.
 * @param {string} script below node_modules
 * @param {readonly string[]} words
 * @param {NodeJS.ProcessEnv} [env] */
export const runTool = (script, words, env) =>
  run(process.execPath, [rootPath('node_modules', script), ...words], env ? { env } : {});
