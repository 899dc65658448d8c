import type { Command } from 'commander';
import { workshopFaultWords } from '../../contract/index.js';
import type { OpenShop } from '../../server/index.js';
import {
  type Clock,
  type Store,
  scheduleBackups,
  USUAL_KEEP,
  type WorkshopFault,
} from '../../workshop/index.js';
import { demoSignInWords } from '../demo-sign-in-words.js';
import { Refusal } from '../inputs.js';
import { numberOption } from '../options.js';
import { storePlace } from '../store-place.js';
import type { Terminal } from '../terminal.js';

const USUAL_PORT = 4870;

interface ServeOptions {
  readonly port: string;
  readonly db?: string;
  readonly host?: string;
  readonly certificate?: string;
  readonly backups?: string;
  readonly backupHours: string;
  readonly log?: boolean;
}

/** `tautwork serve`: the demo workshop, or with `--db` a shop's own records, until it is stopped. */
export function serveCommand(program: Command, terminal: Terminal): void {
  program
    .command('serve')
    .summary('open the demo workshop, or a shop, in a browser')
    .description(
      "Without --db, serves the page of the invented demo workshop to browsers on this machine. With --db, serves a shop's own records, its API under /api/v1 and live events, to whoever is signed in. Stop it with Ctrl+C: what is in hand is finished first.",
    )
    .option('--port <number>', 'where to listen (0: any free port)', String(USUAL_PORT))
    .option('--db <place>', 'the shop: a file, made where there is none, or a postgres:// address')
    .option('--host <address>', 'where to listen; on a network only with --certificate')
    .option('--certificate <folder>', 'speak https with the certificate of this folder')
    .option('--backups <folder>', 'back the shop up there while it is served')
    .option('--backup-hours <hours>', 'hours from one backup to the next', '24')
    .option('--log', 'write a line of JSON for every request to standard error')
    .action(async (options: ServeOptions) => {
      const port = Math.round(numberOption('--port', options.port, { least: 0, most: 65_535 }));
      const open = await (options.db === undefined
        ? demo(port)
        : shop(terminal, options, { port, db: options.db }));
      // Before anyone is told that it is open: whoever reads that may stop it at once.
      for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, () => void open.close());
      open.tell(terminal);
    });
}

/** Something that is open: how to say so, and how to close it. */
interface Opened {
  readonly tell: (terminal: Terminal) => void;
  readonly close: () => Promise<void>;
}

async function demo(port: number): Promise<Opened> {
  // Loaded when asked for: the other commands should not wait for a server they never open.
  const { serveDemo } = await import('../../server/index.js');
  const served = await serveDemo({ port, history: A_FORTNIGHT });
  if (!served.ok) throw refusalOf(served.fault);
  const { url, close } = served.value;
  return {
    tell: (terminal) => {
      terminal.print(
        `The demo workshop is open at ${url} (stop with Ctrl+C; what was done in it is then gone). ${demoSignInWords()}`,
      );
    },
    close,
  };
}

/** Enough of a past to look at, and made in a second or two. */
const A_FORTNIGHT = { days: 14 };

async function shop(
  terminal: Terminal,
  options: ServeOptions,
  { port, db }: { readonly port: number; readonly db: string },
): Promise<Opened> {
  const { serveShop } = await import('../../server/index.js');
  const { host, certificate, log } = options;
  const beside = backupsBeside(terminal, options);
  const served = await serveShop({
    place: storePlace(db),
    port,
    log: {
      level: log === true ? 'info' : 'warn',
      stream: { write: (line) => terminal.remark(line.trimEnd()) },
    },
    ...(host === undefined ? {} : { host }),
    ...(certificate === undefined ? {} : { certificateFolder: certificate }),
    ...(beside ? { beside } : {}),
  }).catch((thrown: unknown) => {
    throw portRefusal(port, thrown) ?? thrown;
  });
  if (!served.ok) throw refusalOf(served.fault);
  const open = served.value;
  return { tell: (told) => tellOpened(told, open), close: open.close };
}

function refusalOf(fault: WorkshopFault): Refusal {
  const { what, mend } = workshopFaultWords(fault);
  return new Refusal(`${what} ${mend}`);
}

function tellOpened(terminal: Terminal, { url, firstLink, clockSetBack, renewSoon }: OpenShop): void {
  terminal.print(`The shop is open at ${url} (stop with Ctrl+C). What can be asked is told at ${url}api/v1/`);
  if (firstLink) {
    terminal.print(
      `Nobody can sign in yet. Until ${firstLink.expiresAt} the owner sets a password with this link, once: ${url}first-sign-in#${firstLink.secret}`,
    );
  }
  if (clockSetBack) {
    terminal.remark(
      `This computer's clock says ${clockSetBack.computerSays}, but the last entry was made at ${clockSetBack.lastWritten}. Set the clock right; until then entries bear the later time.`,
    );
  }
  if (renewSoon) {
    terminal.remark('The certificate runs out soon: renew it with `tautwork certificate`.');
  }
}

function backupsBeside(terminal: Terminal, { backups: folder, backupHours }: ServeOptions) {
  if (folder === undefined) return undefined;
  const everyHours = numberOption('--backup-hours', backupHours, { least: 0.1, most: 8784 });
  return (store: Store, clock: Clock) =>
    scheduleBackups(store, {
      folder,
      everyHours,
      keep: USUAL_KEEP,
      clock,
      onDone: (path) => terminal.remark(`Backed up to ${path}.`),
      onTrouble: (thrown) => terminal.remark(`The backup failed: ${String(thrown)}`),
    });
}

function portRefusal(port: number, thrown: unknown): Refusal | undefined {
  const { code } = thrown as { readonly code?: unknown };
  if (code === 'EADDRINUSE') {
    return new Refusal(`Port ${port} is taken. End what holds it, or choose another with --port.`);
  }
  if (code === 'EADDRNOTAVAIL') return new Refusal('This machine has no such address. Check --host.');
  if (code === 'EACCES')
    return new Refusal(`Port ${port} may not be used by this account. Choose one above 1023.`);
  return undefined;
}
