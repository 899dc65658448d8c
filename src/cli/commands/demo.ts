import type { Command } from 'commander';
import { workshopFaultWords } from '../../contract/index.js';
import { loadDemoHistory } from '../../workshop/index.js';
import { Refusal } from '../inputs.js';
import type { Terminal } from '../terminal.js';
import { withStore } from '../with-store.js';

/** `tautwork demo`: the invented workshop with a year behind it, as a shop to try things on. */
export function demoCommand(program: Command, terminal: Terminal): void {
  program
    .command('demo')
    .summary('load the invented workshop and a year of its past')
    .description(
      'Fills an empty shop with the invented demo workshop and a year of orders, runs, measurements and packs, all through the same doors that people use.',
    )
    .requiredOption(
      '--db <place>',
      'where it is to lie: a file that is not there yet, or an empty PostgreSQL database',
    )
    .action(async ({ db }: { readonly db: string }) => {
      const told = await withStore(
        db,
        (store) =>
          loadDemoHistory(store, { onProgress: (share, date) => terminal.progress.show(share, date) }),
        { mayMake: true },
      );
      terminal.progress.end();
      if ('code' in told) {
        const { what, mend } = workshopFaultWords({ ...told });
        throw new Refusal(`${what} ${mend}`);
      }
      terminal.print(
        `${told.days} days loaded, ${told.asked} things done in them. Open it with: tautwork serve --db ${db}`,
      );
    });
}
