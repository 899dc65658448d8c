import type { Command } from 'commander';
import { backupShop, computerClock, dropOldBackups, USUAL_KEEP } from '../../workshop/index.js';
import { numberOption } from '../options.js';
import type { Terminal } from '../terminal.js';
import { withStore } from '../with-store.js';

interface BackupOptions {
  readonly db: string;
  readonly to: string;
  readonly daily: string;
  readonly weekly: string;
  readonly monthly: string;
  readonly keepAll?: boolean;
}

/** `tautwork backup`: a backup of a living shop into a folder, and old ones dropped by rule. */
export function backupCommand(program: Command, terminal: Terminal): void {
  program
    .command('backup')
    .summary('back a living shop up')
    .description(
      'Writes a whole backup of a shop into a folder while people go on working: a copy of the database from a file, an archive from PostgreSQL. Of the backups in the folder the newest of each of the last days, weeks and months stay.',
    )
    .requiredOption('--db <place>', 'the shop: a file, or a postgres:// address')
    .requiredOption('--to <folder>', 'where backups go')
    .option('--daily <count>', 'days to keep one of', String(USUAL_KEEP.daily))
    .option('--weekly <count>', 'weeks to keep one of', String(USUAL_KEEP.weekly))
    .option('--monthly <count>', 'months to keep one of', String(USUAL_KEEP.monthly))
    .option('--keep-all', 'drop none')
    .action(async (options: BackupOptions) => {
      const count = (name: 'daily' | 'weekly' | 'monthly'): number =>
        Math.round(numberOption(`--${name}`, options[name], { least: 0, most: 1000 }));
      const keep = { daily: count('daily'), weekly: count('weekly'), monthly: count('monthly') };
      const path = await withStore(options.db, (store) => backupShop(store, options.to, computerClock.now()));
      terminal.print(`Backed up to ${path}.`);
      if (options.keepAll) return;
      const dropped = await dropOldBackups(options.to, keep);
      if (dropped.length > 0) terminal.print(`Dropped by the rule: ${dropped.join(', ')}.`);
    });
}
