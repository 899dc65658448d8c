// @ts-check
import { existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs';
import { rootPath } from './root.mjs';
import { runTool } from './run.mjs';
import { say } from './say.mjs';

/** @typedef {{ passed: number, failed: number, skipped: number }} Counts */

/** Runs the tests, shown as they go, and counts them.
 * @param {readonly string[]} words for the test runner, such as the files wanted
 * @param {NodeJS.ProcessEnv} env in addition to our own
 * @returns {Promise<Counts>} */
export async function runVitest(words, env) {
  // One report a process, so that two runs at once do not read each other's.
  const report = rootPath('.cache', `tests-${process.pid}.json`);
  mkdirSync(rootPath('.cache'), { recursive: true });
  const asked = ['run', '--reporter=default', '--reporter=json', `--outputFile.json=${report}`, ...words];
  const code = await runTool('vitest/vitest.mjs', asked, { ...process.env, ...env });
  if (!existsSync(report)) {
    say('FAILED  the test runner ended without a report');
    return { passed: 0, failed: 1, skipped: 0 };
  }
  const counts = countReport(JSON.parse(readFileSync(report, 'utf8')), code);
  rmSync(report, { force: true });
  return counts;
}

/** Counts a report in the format that Jest and Vitest share. What a plain sum would miss counts as one failure each: a
 * file that could not be loaded, a run in which nothing ran, a run that failed outside of any test.
 * @param {{ numPassedTests: number, numFailedTests: number, numPendingTests: number, numTodoTests: number, testResults: { status: string, name: string, assertionResults: unknown[] }[] }} report
 * @param {number} code the runner's exit code
 * @returns {Counts} */
export function countReport(report, code) {
  const unloaded = report.testResults.filter((file) => file.status === 'failed' && hasNoFailure(file));
  const counts = {
    passed: report.numPassedTests,
    failed: report.numFailedTests + unloaded.length,
    skipped: report.numPendingTests + report.numTodoTests,
  };
  const nothingRan = counts.passed + counts.failed === 0;
  if (nothingRan || (code !== 0 && counts.failed === 0)) counts.failed += 1;
  return counts;
}

/** @param {{ assertionResults: unknown[] }} file */
const hasNoFailure = (file) =>
  !file.assertionResults.some((result) => /** @type {{ status?: string }} */ (result).status === 'failed');
