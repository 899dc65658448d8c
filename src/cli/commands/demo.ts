import type { Command } from 'commander';
import { workshopFaultWords } from '../../contract/index.js';
import { type DemoSignIn, letDemoPeopleIn, loadDemoHistory, slowHash } from '../../workshop/index.js';
import { Refusal } from '../inputs.js';
import { textTable } from '../table.js';
import type { Terminal } from '../terminal.js';
import { withStore } from '../with-store.js';

/** `tautwork demo`: the invented workshop with a year behind it, as a shop to try things on. */
export function demoCommand(program: Command, terminal: Terminal): void {
  program
    .command('demo')
    .summary('load the invented workshop and a year of its past')
    .description(
      'Fills an empty shop with the invented demo workshop and a year of orders, runs, measurements and packs, all through the same doors that people use. Its people get a password and a PIN that everybody knows: for trying out, never for a shop of your own.',
    )
    .requiredOption(
      '--db <place>',
      'where it is to lie: a file that is not there yet, or an empty PostgreSQL database',
    )
    .action(async ({ db }: { readonly db: string }) => {
      const { told, letIn } = await withStore(
        db,
        async (store) => {
          const told = await loadDemoHistory(store, {
            onProgress: (share, date) => terminal.progress.show(share, date),
          });
          return { told, letIn: 'code' in told ? [] : await letDemoPeopleIn(store, slowHash()) };
        },
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
      terminal.print(signInsInWords(letIn));
    });
}

function signInsInWords(letIn: readonly DemoSignIn[]): string {
  const [first] = letIn;
  if (!first) return '';
  const people = textTable(letIn, [
    { heading: 'Name', cell: ({ name }) => name },
    { heading: 'Role', cell: ({ roles }) => roles.join(', ') },
  ]);
  return [
    '',
    'FOR DEMONSTRATION ONLY. Sign in as any of these invented people:',
    '',
    people,
    '',
    `Password of all of them: ${first.password}`,
    `PIN of all of them, on a device that the owner enrolled: ${first.pin}`,
    '',
    'Everybody knows both. Put nothing of your own into this shop, and do not open it to a network.',
  ].join('\n');
}
