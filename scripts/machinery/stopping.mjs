// @ts-check
import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { isAlive } from './lock.mjs';

/** Heeds Ctrl+C, a request to end, and the death of npm. The last matters because npm cannot always pass a signal on,
 * and a program left behind would hold its port or its lock with nobody to stop it.
 * @returns {{ instead: (close: () => void) => void }} what to do instead of ending at once */
export function heedStops() {
  /** @type {() => void} */
  let stop = () => process.exit(143);
  process.on('SIGINT', () => stop());
  process.on('SIGTERM', () => stop());
  if (process.env.npm_lifecycle_event !== undefined) whenNpmIsGone(() => stop());
  return {
    instead(close) {
      stop = close;
    },
  };
}

/** Between npm and this process stands a shell, which waits for us and so outlives npm: both are watched.
 * @param {() => void} stop */
function whenNpmIsGone(stop) {
  const shell = process.ppid;
  const npm = parentOf(shell);
  // An orphaned shell gets a new parent on some systems; where that cannot be seen quickly, the old one is asked after.
  const parentNow = process.platform === 'linux' ? parentOf : () => npm;
  const isOrphan = () => {
    if (process.ppid !== shell || !isAlive(shell)) return true;
    return npm !== undefined && (!isAlive(npm) || parentNow(shell) !== npm);
  };
  const watching = setInterval(() => {
    if (isOrphan()) stop();
  }, 500);
  watching.unref();
}

/** The parent of a process, where the system tells.
 * @param {number} pid
 * @returns {number | undefined} */
function parentOf(pid) {
  try {
    const told =
      process.platform === 'linux'
        ? // pid (name, which may hold spaces) state parent ...
          readFileSync(`/proc/${pid}/stat`, 'utf8').replace(/^.*\) \S+ /s, '')
        : execFileSync('ps', ['-o', 'ppid=', '-p', String(pid)], { encoding: 'utf8' });
    return Number.parseInt(told, 10) || undefined;
  } catch {
    return undefined;
  }
}
