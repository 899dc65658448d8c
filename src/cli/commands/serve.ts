import type { Command } from 'commander';
import { numberOption } from '../options.js';
import type { Terminal } from '../terminal.js';

const USUAL_PORT = 4870;

/** `tautwork serve`: the page of the demo workshop, for this machine alone, until it is stopped. */
export function serveCommand(program: Command, terminal: Terminal): void {
  program
    .command('serve')
    .summary('open the demo workshop in a browser')
    .description(
      'Serves the page of the invented demo workshop to browsers on this machine, until it is stopped with Ctrl+C.',
    )
    .option('--port <number>', 'where to listen; a free port where that one is taken', String(USUAL_PORT))
    .action(async ({ port }: { readonly port: string }) => {
      // Loaded when asked for: the other commands should not wait for a server they never open.
      const { startServer } = await import('../../server/index.js');
      const server = await startServer({
        port: Math.round(numberOption('--port', port, { least: 0, most: 65_535 })),
      });
      terminal.print(`The demo workshop is open at ${server.url} (stop with Ctrl+C).`);
      for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, () => void server.close());
    });
}
