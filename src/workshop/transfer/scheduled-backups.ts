import type { Store } from '../../store/index.js';
import type { Clock } from '../clock.js';
import { backupShop, backupsIn, dropOldBackups } from './backup.js';
import type { KeepRule } from './keep-rule.js';

export interface BackupSchedule {
  readonly folder: string;
  readonly everyHours: number;
  readonly keep: KeepRule;
  readonly clock: Clock;
  /** Told of each backup, and of each that failed: the next is tried all the same. */
  readonly onDone: (path: string) => void;
  readonly onTrouble: (thrown: unknown) => void;
}

const LOOK_MS = 60_000;

/**
 * Backs a shop up whenever the newest backup of the folder is older than wished, and drops old ones by the rule. What
 * counts is the newest file, not a timer: a restart neither skips a backup nor makes one too many. Gives how to stop.
 */
export function scheduleBackups(store: Store, schedule: BackupSchedule): () => Promise<void> {
  let running: Promise<void> = Promise.resolve();
  const look = (): void => {
    running = running.then(() => backUpIfDue(store, schedule)).catch(schedule.onTrouble);
  };
  look();
  const timer = setInterval(look, LOOK_MS);
  timer.unref();
  return async () => {
    clearInterval(timer);
    await running;
  };
}

/** One look: backs up where it is time to. */
export async function backUpIfDue(store: Store, schedule: BackupSchedule): Promise<void> {
  const now = schedule.clock.now();
  const newest = (await backupsIn(schedule.folder).catch(() => [])).at(-1);
  if (newest && Date.parse(now) - Date.parse(newest.at) < schedule.everyHours * 3_600_000) return;
  schedule.onDone(await backupShop(store, schedule.folder, now));
  await dropOldBackups(schedule.folder, schedule.keep);
}
