// @ts-check
import { mkdirSync, readFileSync, renameSync, rmSync, statSync, utimesSync, writeFileSync } from 'node:fs';
import { setTimeout as pause } from 'node:timers/promises';
import { rootPath } from './root.mjs';
import { say } from './say.mjs';

const TOUCH_MS = 5_000;
const STALE_MS = 60_000;

/** Does a thing while no other process of this checkout does the same. A lock left by a process that died is taken
 * over; so is one that nobody has touched for a minute, since after a crash its number may belong to another.
 * @template T
 * @param {string} name
 * @param {() => Promise<T>} doing
 * @returns {Promise<T>} */
export async function withLock(name, doing) {
  // Not in node_modules: `npm ci` empties that.
  const path = rootPath('.cache', `${name}.lock`);
  mkdirSync(rootPath('.cache'), { recursive: true });
  await take(path);
  const touching = setInterval(() => touch(path), TOUCH_MS);
  try {
    return await doing();
  } finally {
    clearInterval(touching);
    if (holderOf(path) === process.pid) rmSync(path, { force: true });
  }
}

/** @param {string} path */
async function take(path) {
  let told = false;
  while (!tryTake(path)) {
    const holder = holderOf(path);
    if (isStale(path, holder)) {
      dropStale(path, holder);
      continue;
    }
    if (!told) say(`another run (process ${holder}) is at the same work; waiting for it ...`);
    told = true;
    await pause(200);
  }
}

/** @param {string} path */
function tryTake(path) {
  try {
    writeFileSync(path, String(process.pid), { flag: 'wx' });
    return true;
  } catch (fault) {
    if (codeOf(fault) === 'EEXIST') return false;
    throw fault;
  }
}

/** @param {string} path */
function holderOf(path) {
  try {
    return Number(readFileSync(path, 'utf8'));
  } catch {
    return 0;
  }
}

/** @param {string} path @param {number} holder */
function isStale(path, holder) {
  try {
    if (Date.now() - statSync(path).mtimeMs > STALE_MS) return true;
  } catch {
    return false;
  }
  return holder > 0 && !isAlive(holder);
}

/** Moved aside before it is removed: two waiters may both have seen the dead holder, and the slower must not
 * remove the lock that the quicker has taken since.
 * @param {string} path @param {number} holder */
function dropStale(path, holder) {
  const aside = `${path}.${process.pid}`;
  try {
    renameSync(path, aside);
  } catch {
    return;
  }
  const moved = holderOf(aside);
  if (moved !== holder && isAlive(moved)) renameSync(aside, path);
  else rmSync(aside, { force: true });
}

/** @param {string} path */
function touch(path) {
  try {
    const now = new Date();
    utimesSync(path, now, now);
  } catch {
    // Someone removed the lock by hand; the work goes on.
  }
}

/** Whether a process runs, also one that belongs to somebody else.
 * @param {number} pid */
export function isAlive(pid) {
  try {
    process.kill(pid, 0);
    return true;
  } catch (fault) {
    return codeOf(fault) === 'EPERM';
  }
}

/** @param {unknown} fault */
const codeOf = (fault) => (fault instanceof Error && 'code' in fault ? fault.code : undefined);
