// @ts-check
import { spawn, spawnSync } from 'node:child_process';
import { chmodSync, chownSync, existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { delimiter, join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { run } from './run.mjs';
import { say, sayWhile } from './say.mjs';

/** @typedef {{ url: string, restart: () => Promise<void>, stop: () => void }} Postgres */
/** @typedef {{ uid: number, gid: number }} Account */

const READY_MS = 30_000;

/** Starts a PostgreSQL server for tests: its own, in a temporary folder, on a free port of this machine alone, without
 * waiting for the disk unless that is asked for. It is installed first where that can be done without asking anyone (root, with
 * apt-get).
 * @param {{ waitsForDisk?: boolean }} [options]
 * @returns {Promise<Postgres | undefined>} undefined where there is none, which has been said aloud */
export async function startPostgres({ waitsForDisk = false } = {}) {
  const programs = findPrograms() ?? (await installPrograms());
  if (!programs) {
    say('********************************************************************************');
    say('NO POSTGRESQL: every store test of that engine is SKIPPED (with CI set, a failure).');
    say('  On Debian or Ubuntu: sudo apt-get install --no-install-recommends postgresql');
    say('  Elsewhere: put initdb and postgres on the PATH.');
    say('********************************************************************************');
    return undefined;
  }
  const account = lesserAccount();
  const folder = makeCluster(programs, account);
  if (!folder) return undefined;
  const place = { programs, folder, port: await freePort(), account, waitsForDisk };
  let server = startServer(place);
  const stop = () => void server.guard.destroy();
  if (!(await isReady(folder, server.process))) {
    stop();
    say('NO POSTGRESQL: the server did not become ready; its own words stand above.');
    return undefined;
  }
  const restart = async () => {
    const ended = new Promise((resolve) => server.process.once('exit', resolve));
    server.guard.end('leave\n');
    server.process.kill('SIGINT');
    await ended;
    server = startServer(place);
    await isReady(folder, server.process);
  };
  return { url: `postgres://tautwork@127.0.0.1:${place.port}/postgres`, restart, stop };
}

/** An empty cluster in a folder of its own, where every local asker is believed.
 * @param {string} programs @param {Account | undefined} account */
function makeCluster(programs, account) {
  const folder = mkdtempSync(join(tmpdir(), 'tautwork-postgres-'));
  chmodSync(folder, 0o700);
  if (account) chownSync(folder, account.uid, account.gid);
  const words = '--pgdata data --username tautwork --auth trust --encoding UTF8 --locale C --no-sync'.split(
    ' ',
  );
  const made = spawnSync(join(programs, 'initdb'), words, { ...account, cwd: folder, encoding: 'utf8' });
  if (made.status === 0) return folder;
  rmSync(folder, { recursive: true, force: true });
  say(`NO POSTGRESQL: initdb failed: ${made.stderr || made.error?.message}`);
  return undefined;
}

/** @param {{ programs: string, folder: string, port: number, account: Account | undefined, waitsForDisk: boolean }} place */
function startServer({ programs, folder, port, account, waitsForDisk }) {
  const settings = {
    listen_addresses: '127.0.0.1',
    port: String(port),
    unix_socket_directories: folder,
    ...(waitsForDisk ? {} : { fsync: 'off', full_page_writes: 'off' }),
    max_connections: '200',
    log_min_messages: 'panic',
  };
  const words = Object.entries(settings).flatMap(([name, value]) => ['-c', `${name}=${value}`]);
  const program = [join(programs, 'postgres'), '-D', join(folder, 'data'), ...words];
  const started = spawn('/bin/sh', ['-c', GUARDED, folder, ...program], {
    ...account,
    cwd: folder,
    stdio: ['ignore', 'ignore', 'inherit', 'pipe'],
  });
  return { process: started, guard: /** @type {import('node:net').Socket} */ (started.stdio[3]) };
}

/** The shell becomes the server. What it leaves behind reads from a pipe that ends when we do, however we do; then it
 * stops the server at once, since nothing in it is worth keeping, and clears the folder away. */
const GUARDED = `(
  read word <&3 && exit
  kill -QUIT $$ 2>/dev/null
  while kill -0 $$ 2>/dev/null; do sleep 0.05; done
  rm -rf "$0"
) & exec "$@" 3<&-`;

/** The server writes its state to a file of its own.
 * @param {string} folder @param {import('node:child_process').ChildProcess} server */
async function isReady(folder, server) {
  const file = join(folder, 'data', 'postmaster.pid');
  for (let waited = 0; waited < READY_MS && server.exitCode === null; waited += 50) {
    if (existsSync(file) && /^ready\s*$/m.test(readFileSync(file, 'utf8'))) return true;
    await pause(50);
  }
  return false;
}

/** The server refuses to run as root.
 * @returns {Account | undefined} */
function lesserAccount() {
  if (process.getuid?.() !== 0) return undefined;
  const accounts = readFileSync('/etc/passwd', 'utf8').split('\n');
  const line = ['postgres', 'nobody']
    .map((name) => accounts.find((account) => account.startsWith(`${name}:`)))
    .find((found) => found !== undefined);
  const [, , uid, gid] = (line ?? 'nobody:x:65534:65534').split(':');
  return { uid: Number(uid), gid: Number(gid) };
}

/** The folder with PostgreSQL's programs: on Debian, the newest version's, which is not on the PATH.
 * @returns {string | undefined} */
function findPrograms() {
  const debian = '/usr/lib/postgresql';
  const versions = existsSync(debian) ? readdirSync(debian) : [];
  const places = [
    ...versions
      .sort((one, other) => Number(other) - Number(one))
      .map((version) => join(debian, version, 'bin')),
    ...(process.env.PATH ?? '').split(delimiter),
  ];
  return places.find((place) => existsSync(join(place, 'initdb')) && existsSync(join(place, 'postgres')));
}

async function installPrograms() {
  if (process.getuid?.() !== 0 || !existsSync('/usr/bin/apt-get')) return undefined;
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  const apt = (/** @type {string[]} */ ...words) =>
    run('apt-get', ['-o', 'DPkg::Lock::Timeout=300', '-qq', ...words], { env });
  await sayWhile('installing PostgreSQL, which only the tests need', async () => {
    await apt('update');
    await apt('install', '--yes', '--no-install-recommends', 'postgresql');
  });
  return findPrograms();
}

/** @returns {Promise<number>} */
function freePort() {
  return new Promise((resolve, reject) => {
    const server = createServer();
    server.once('error', reject);
    server.listen(0, '127.0.0.1', () => {
      const address = server.address();
      server.close(() => (address && typeof address === 'object' ? resolve(address.port) : reject(address)));
    });
  });
}
