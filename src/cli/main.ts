import { Command, CommanderError } from 'commander';
import { backupCommand } from './commands/backup.js';
import { certificateCommand } from './commands/certificate.js';
import { checkCommand } from './commands/check.js';
import { dayCommand } from './commands/day.js';
import { demoCommand } from './commands/demo.js';
import { exportCommand } from './commands/export.js';
import { importCommand } from './commands/import.js';
import { recipeCommand } from './commands/recipe.js';
import { restoreCommand } from './commands/restore.js';
import { schemaCommand } from './commands/schema.js';
import { serveCommand } from './commands/serve.js';
import { setCommand } from './commands/set.js';
import { setupCommand } from './commands/setup.js';
import { signInLinkCommand } from './commands/sign-in-link.js';
import { EXIT } from './exit-codes.js';
import { Refusal } from './inputs.js';
import { processTerminal, type Terminal } from './terminal.js';

/** The command line: parses what was typed, has it worked out, prints the answer. */
export function tautwork(terminal: Terminal): Command {
  const program = new Command('tautwork')
    .description("Carries a small guitar-string maker's job, from a player's request to the envelope.")
    .configureHelp({ showGlobalOptions: true })
    .showHelpAfterError('(tautwork --help shows what there is)')
    .exitOverride();
  dayCommand(program, terminal);
  setCommand(program, terminal);
  recipeCommand(program, terminal);
  setupCommand(program, terminal);
  schemaCommand(program, terminal);
  serveCommand(program, terminal);
  backupCommand(program, terminal);
  restoreCommand(program, terminal);
  checkCommand(program, terminal);
  exportCommand(program, terminal);
  importCommand(program, terminal);
  certificateCommand(program, terminal);
  signInLinkCommand(program, terminal);
  demoCommand(program, terminal);
  return program;
}

export async function main(words: readonly string[]): Promise<void> {
  const terminal = processTerminal();
  // A reader that stops early, such as `head`, is no fault of ours.
  process.stdout.on('error', (fault: NodeJS.ErrnoException) =>
    process.exit(fault.code === 'EPIPE' ? EXIT.done : EXIT.broken),
  );
  try {
    await tautwork(terminal).parseAsync(words, { from: 'user' });
  } catch (thrown) {
    terminal.progress.end();
    process.exitCode = exitOf(thrown, terminal);
  }
}

function exitOf(thrown: unknown, terminal: Terminal): number {
  if (thrown instanceof CommanderError) return thrown.exitCode === 0 ? EXIT.done : EXIT.refused;
  if (thrown instanceof Refusal) {
    terminal.remark(thrown.message);
    return EXIT.refused;
  }
  terminal.remark(
    `A fault of the program itself, please report it: ${(thrown as Error).stack ?? String(thrown)}`,
  );
  return EXIT.broken;
}
