// @ts-check
import { existsSync, mkdirSync, rmSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import { parseArgs } from 'node:util';
import { rootPath } from './machinery/root.mjs';
import { SetUpFault, say, sayWhile, withWords } from './machinery/say.mjs';
import { heedStops } from './machinery/stopping.mjs';
import { setUp } from './setup.mjs';

const USUAL_PORT = 4870;
/** Where the shops of this checkout lie; never among what is kept in version control. */
const FOLDER = 'var';

await withWords(async () => {
  const stops = heedStops();
  const port = wantedPort();
  await setUp();
  // In this process, not in a child: a child would outlive npm when npm is told to stop.
  mkdirSync(rootPath(FOLDER), { recursive: true });
  const server = await (wanted().empty ? openOwn(port) : openDemo(port));
  if (port !== 0 && server.port !== port) say(`port ${port} is taken, so another was chosen`);
  say('press Ctrl+C to close it');
  stops.instead(closeGently(server));
});

/** The invented workshop with a year behind it, kept from one start to the next.
 * @param {number} port */
async function openDemo(port) {
  const { serveDemo } = await product('server');
  const { DEMO_PASSWORD, DEMO_PEOPLE } = await product('workshop');
  const file = rootPath(`${FOLDER}/demo.db`);
  if (wanted().fresh) for (const end of ['', '-wal', '-shm']) rmSync(`${file}${end}`, { force: true });
  const open = () => serveDemo({ port, file });
  const served = existsSync(file)
    ? await open()
    : await sayWhile("writing the demo workshop's year (about half a minute, the first time)", open);
  if (!served.ok) throw new SetUpFault(`the demo workshop could not be opened: ${served.fault.code}.`);
  say(`the demo workshop is open at ${served.value.url}`);
  say(
    `sign in as ${DEMO_PEOPLE.owner.name} with the password “${DEMO_PASSWORD}” (others: docs/handbook/demo.md)`,
  );
  say('start over with npm start -- --fresh; begin a shop of your own with npm start -- --empty');
  return served.value;
}

/** A shop of one's own, empty at first.
 * @param {number} port */
async function openOwn(port) {
  const { serveShop } = await product('server');
  const file = rootPath(`${FOLDER}/shop.db`);
  const served = await serveShop({ place: { file }, port, elsewhere: true });
  if (!served.ok) throw new SetUpFault(`the shop could not be opened: ${served.fault.code}.`);
  const { url, firstLink } = served.value;
  say(`your shop is open at ${url}; it is kept in ${file}`);
  if (firstLink) say(`choose the owner's password at ${url}first-sign-in#${firstLink.secret}`);
  return served.value;
}

/** @param {string} layer */
function product(layer) {
  return import(pathToFileURL(rootPath(`dist/src/${layer}/index.js`)).href);
}

function wanted() {
  const options = /** @type {const} */ ({
    port: { type: 'string' },
    empty: { type: 'boolean' },
    fresh: { type: 'boolean' },
  });
  return parseArgs({ options, strict: false }).values;
}

function wantedPort() {
  const asked = wanted().port ?? process.env.PORT;
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
