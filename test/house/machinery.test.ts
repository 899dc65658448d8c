import { spawn } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { stampOf } from '../../scripts/machinery/stamp.mjs';
import { countReport } from '../../scripts/machinery/vitest.mjs';
import { rootPath } from './the-house.js';

const NOTHING = {
  numPassedTests: 0,
  numFailedTests: 0,
  numPendingTests: 0,
  numTodoTests: 0,
  testResults: [],
};

describe('the last line of the test command', () => {
  const failed = (assertionResults: readonly { status: string }[]) => ({
    status: 'failed',
    name: 'x.test.ts',
    assertionResults: [...assertionResults],
  });

  it('counts what passed, failed and was skipped', () => {
    const testResults = [failed([{ status: 'failed' }, { status: 'failed' }, { status: 'passed' }])];
    const report = { numPassedTests: 3, numFailedTests: 2, numPendingTests: 1, numTodoTests: 1, testResults };
    expect(countReport(report, 1)).toEqual({ passed: 3, failed: 2, skipped: 2 });
  });

  it('counts a file that could not be loaded as a failure', () => {
    const report = { ...NOTHING, numPassedTests: 5, testResults: [failed([]), failed([])] };
    expect(countReport(report, 1)).toEqual({ passed: 5, failed: 2, skipped: 0 });
  });

  it('counts a file whose set-up failed, so that its tests never ran, as a failure', () => {
    const report = { ...NOTHING, numPassedTests: 5, testResults: [failed([{ status: 'skipped' }])] };
    expect(countReport(report, 1)).toMatchObject({ failed: 1 });
  });

  it('counts a run in which no test ran as a failure', () => {
    expect(countReport({ ...NOTHING, numPendingTests: 9 }, 0)).toEqual({ passed: 0, failed: 1, skipped: 9 });
  });

  it('counts a run that failed outside of every test as a failure', () => {
    expect(countReport({ ...NOTHING, numPassedTests: 5 }, 1)).toEqual({ passed: 5, failed: 1, skipped: 0 });
  });
});

describe('a stamp', () => {
  const folder = '.cache/stamp-trial';
  beforeAll(() => {
    mkdirSync(rootPath(folder), { recursive: true });
    writeFileSync(rootPath(`${folder}/a.ts`), 'one');
    writeFileSync(rootPath(`${folder}/a.test.ts`), 'test');
  });
  afterAll(() => rmSync(rootPath(folder), { recursive: true, force: true }));

  it('changes with what files say, with their names and with the facts, and with nothing else', () => {
    const stamp = () => stampOf([folder, 'no-such-folder'], [], (path: string) => !path.endsWith('.test.ts'));
    const before = stamp();
    expect(stamp()).toBe(before);
    writeFileSync(rootPath(`${folder}/a.test.ts`), 'another test');
    expect(stamp()).toBe(before);
    writeFileSync(rootPath(`${folder}/a.ts`), 'two');
    const after = stamp();
    expect(after).not.toBe(before);
    writeFileSync(rootPath(`${folder}/b.ts`), '');
    expect(stamp()).not.toBe(after);
    expect(stampOf([folder], ['Node 20'])).not.toBe(stampOf([folder], ['Node 22']));
  });
});

describe('the lock', () => {
  const lock = `trial-${process.pid}`;
  const lockPath = rootPath(`.cache/${lock}.lock`);
  let folder: string;
  beforeAll(() => {
    mkdirSync(rootPath('.cache'), { recursive: true });
    folder = mkdtempSync(rootPath('.cache/lock-trial-'));
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  /** A process that writes its beginning and its end into a file while it holds the lock. */
  const worker = (journal: string): Promise<number | null> => {
    const { href } = pathToFileURL(rootPath('scripts/machinery/lock.mjs'));
    const work = `
      import { appendFileSync } from 'node:fs';
      import { withLock } from ${JSON.stringify(href)};
      await withLock(${JSON.stringify(lock)}, async () => {
        appendFileSync(${JSON.stringify(journal)}, 'begin ');
        for (let turn = 0; turn < 20; turn += 1) await new Promise(setImmediate);
        appendFileSync(${JSON.stringify(journal)}, 'end ');
      });`;
    return new Promise((resolve) => {
      spawn(process.execPath, ['--input-type=module', '-e', work], { stdio: 'ignore' }).once(
        'close',
        resolve,
      );
    });
  };

  it('lets one process work at a time, takes over from a dead one, and leaves nothing behind', async () => {
    // A number that no process can have, as if its owner had died.
    writeFileSync(lockPath, '999999999');
    const journal = join(folder, 'journal');
    const codes = await Promise.all([worker(journal), worker(journal), worker(journal)]);
    expect(codes).toEqual([0, 0, 0]);
    expect(readFileSync(journal, 'utf8')).toBe('begin end '.repeat(3));
    expect(existsSync(lockPath)).toBe(false);
  });
});
