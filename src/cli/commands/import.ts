import { createReadStream, existsSync } from 'node:fs';
import type { Command } from 'commander';
import { archiveFaultWords } from '../../contract/index.js';
import { importShop } from '../../workshop/index.js';
import { Refusal } from '../inputs.js';
import type { Terminal } from '../terminal.js';
import { withStore } from '../with-store.js';

/** `tautwork import`: a whole shop from an archive into an empty place. */
export function importCommand(program: Command, terminal: Terminal): void {
  program
    .command('import')
    .summary('read a whole shop from an archive')
    .description(
      'Fills an empty shop from an archive that `tautwork export` wrote: all of it, or nothing where the archive is not whole. Orders are imported on the page or over HTTP, with a preview.',
    )
    .requiredOption(
      '--db <place>',
      'where the shop is to lie: a file that is not there yet, or an empty PostgreSQL database',
    )
    .requiredOption('--from <file>', 'the archive')
    .action(async ({ db, from }: { readonly db: string; readonly from: string }) => {
      if (!existsSync(from)) throw new Refusal(`${from}: there is no such file.`);
      const done = await withStore(db, (store) => importShop(store, createReadStream(from)), {
        mayMake: true,
      });
      if (!done.ok) {
        const { what, mend } = archiveFaultWords(done.fault);
        throw new Refusal(`${from}: ${what} ${mend}`);
      }
      terminal.print(`${done.value.rows} rows read from ${from}.`);
    });
}
