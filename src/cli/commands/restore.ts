import type { Command } from 'commander';
import { archiveFaultWords } from '../../contract/index.js';
import { computerClock, restoreShop } from '../../workshop/index.js';
import { Refusal } from '../inputs.js';
import { storePlace } from '../store-place.js';
import type { Terminal } from '../terminal.js';

interface RestoreOptions {
  readonly db: string;
  readonly from: string;
  readonly overwrite?: boolean;
}

/** `tautwork restore`: a shop from a backup, never over another without being told. */
export function restoreCommand(program: Command, terminal: Terminal): void {
  program
    .command('restore')
    .summary('make a shop from a backup')
    .description(
      'Looks a backup through and makes a shop of it. Stop the server first. A shop that stands in the place is never overwritten: with --overwrite it is kept beside under another name.',
    )
    .requiredOption('--db <place>', 'where the shop is to lie: a file, or an empty PostgreSQL database')
    .requiredOption('--from <file>', 'the backup: a database file, or an archive (.gz)')
    .option('--overwrite', 'put a shop that stands in the place aside')
    .action(async ({ db, from, overwrite = false }: RestoreOptions) => {
      const done = await restoreShop({
        backup: from,
        to: storePlace(db),
        overwrite,
        at: computerClock.now(),
      });
      if (!done.ok) {
        const { what, mend } = archiveFaultWords(done.fault);
        throw new Refusal(`${from}: ${what} ${mend}`);
      }
      const { keptAt } = done.value;
      terminal.print(`Restored.${keptAt === undefined ? '' : ` What stood there is kept as ${keptAt}.`}`);
    });
}
