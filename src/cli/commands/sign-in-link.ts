import type { Command } from 'commander';
import { workshopFaultWords } from '../../contract/index.js';
import { computerClock, consoleSignInLink, firstOwner, newId } from '../../workshop/index.js';
import { Refusal } from '../inputs.js';
import type { Terminal } from '../terminal.js';
import { withStore } from '../with-store.js';

/** `tautwork sign-in-link`: lets the owner in again, or anyone by name. Whoever may read the shop's database may do this. */
export function signInLinkCommand(program: Command, terminal: Terminal): void {
  program
    .command('sign-in-link')
    .summary('make a one-time link for whoever cannot sign in')
    .description(
      'Makes a link that sets a new password, once, within a day. It also opens a lock after too many wrong attempts. For the owner where no name is given.',
    )
    .argument('[name]', 'the person; the owner where left out')
    .requiredOption('--db <place>', 'the shop: a file, or a postgres:// address')
    .option('--at <address>', 'where browsers reach the server', 'http://localhost:4870')
    .action(async (name: string | undefined, { db, at }: { readonly db: string; readonly at: string }) => {
      const link = await withStore(db, async (store) => {
        const parts = { store, clock: computerClock, newId };
        const first = name === undefined ? await firstOwner(parts) : undefined;
        return first ? { ok: true as const, value: first } : consoleSignInLink(parts, name);
      });
      if (!link.ok) {
        const { what, mend } = workshopFaultWords(link.fault);
        throw new Refusal(`${what} ${mend}`);
      }
      const { person, secret, expiresAt } = link.value;
      terminal.print(`${at.replace(/\/$/, '')}/first-sign-in#${secret}`);
      terminal.remark(`For ${person.body.name}, once, until ${expiresAt}. Hand it to nobody else.`);
    });
}
