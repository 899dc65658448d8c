import type { Command } from 'commander';
import { checkShop } from '../../workshop/index.js';
import { EXIT } from '../exit-codes.js';
import type { Terminal } from '../terminal.js';
import { withStore } from '../with-store.js';

/** `tautwork check`: the database's integrity and every law of the ledger. */
export function checkCommand(program: Command, terminal: Terminal): void {
  program
    .command('check')
    .summary('look a shop through for damage')
    .description(
      'Checks the pages, indexes and references of the database and what it keeps worked out of the measurements, and works the whole stock ledger out anew: every movement balances, every balance is the sum of its movements, nothing was ever below zero.',
    )
    .requiredOption('--db <place>', 'the shop: a file, or a postgres:// address')
    .option('--json', 'print as JSON')
    .action(async ({ db, json }: { readonly db: string; readonly json?: boolean }) => {
      const check = await withStore(db, checkShop);
      process.exitCode = check.isSound ? EXIT.done : EXIT.someFaults;
      if (json) return terminal.print(JSON.stringify(check));
      terminal.print(
        check.isSound
          ? 'Sound: the database is whole and the ledger keeps its laws.'
          : [
              'NOT sound. Keep this file, stop writing to it, and restore the newest sound backup.',
              ...check.integrity.map(({ check: look, detail }) => `  database, ${look}: ${detail}`),
              ...check.ledger.map(
                ({ law, movementId, account, item, quantity, unit }) =>
                  `  ledger, ${law}: ${[account, item].filter((part) => part !== '').join(', ')} by ${quantity} ${unit}${movementId === '' ? '' : ` (movement ${movementId})`}`,
              ),
            ].join('\n'),
      );
    });
}
