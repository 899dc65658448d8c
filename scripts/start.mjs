// @ts-check
import { pathToFileURL } from 'node:url';
import { parseArgs } from 'node:util';
import { rootPath } from './machinery/root.mjs';
import { SetUpFault, say, withWords } from './machinery/say.mjs';
import { heedStops } from './machinery/stopping.mjs';
import { setUp } from './setup.mjs';

const USUAL_PORT = 4870;

await withWords(async () => {
  const stops = heedStops();
  const port = wantedPort();
  await setUp();
  // In this process, not in a child: a child would outlive npm when npm is told to stop.
  const { startServer } = await import(pathToFileURL(rootPath('dist/src/server/index.js')).href);
  const server = await startServer({ port });
  if (port !== 0 && server.port !== port) say(`port ${port} is taken, so another was chosen`);
  say(`the demo workshop is open at ${server.url}`);
  say('press Ctrl+C to close it');
  stops.instead(closeGently(server));
});

function wantedPort() {
  const { values } = parseArgs({ options: { port: { type: 'string' } }, strict: false });
  const asked = values.port ?? process.env.PORT;
  if (asked === undefined || asked === '') return USUAL_PORT;
  const port = Number(asked);
  if (Number.isInteger(port) && port >= 0 && port <= 65_535) return port;
  throw new SetUpFault(`'${asked}' is no port; give a number from 0 (any that is free) to 65535.`);
}

/** @param {{ close: () => Promise<void> }} server */
function closeGently(server) {
  let closing = false;
  return async () => {
    if (closing) return;
    closing = true;
    say('closing ...');
    await server.close();
    process.exit(0);
  };
}
