import { spawnSync } from 'node:child_process';
import { X509Certificate } from 'node:crypto';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { get } from 'node:http';
import { type RequestOptions, request } from 'node:https';
import { networkInterfaces, tmpdir } from 'node:os';
import { join } from 'node:path';
import type { TLSSocket } from 'node:tls';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { endServing, PROGRAM, type Serving, serve } from './serving.js';

/* A shop on its network: the compiled program in a process of its own, with the certificate that it made itself. Tablets reach
 * it by its name, which leads to this machine's address on the network, or to itself where it has none. */

const NAME = 'shop.local';
const addresses = Object.values(networkInterfaces()).flatMap((each) => each ?? []);
const ADDRESS =
  addresses.find(({ internal, family }) => !internal && family === 'IPv4')?.address ?? '127.0.0.1';

const folder = mkdtempSync(join(tmpdir(), 'tautwork-https-'));
let made: string;
let serving: Serving;
let port: number;

beforeAll(async () => {
  made = certificate('make', NAME);
  serving = serve(folder, '--db', 'shop.db', '--host', '0.0.0.0', '--certificate', 'kept');
  const [, told] = await serving.seen(/The shop is open at https:\/\/shop\.local:(\d+)\/ /);
  port = Number(told);
});
afterAll(() => {
  endServing();
  rmSync(folder, { recursive: true, force: true });
});

describe('tautwork serve with a certificate', () => {
  it('answers on the network over https, to whoever trusts the authority', async () => {
    expect((await ask('/readyz')).status).toBe(200);
    const page = await ask('/');
    expect(page.status).toBe(200);
    expect(page.headers['content-type']).toContain('text/html');
  });

  it('is trusted by nobody else, and under no other name', async () => {
    await expect(ask('/readyz', { ca: undefined })).rejects.toThrow(/certificate/);
    await expect(ask('/readyz', { host: 'other.local' })).rejects.toThrow(/does not match/);
    const foreign = await ask('/api/v1/me', { servername: NAME, headers: { host: 'bank.example' } });
    expect(JSON.parse(foreign.body)).toMatchObject({ code: 'access.unknown-host' });
  });

  it('says nothing in the clear', async () => {
    const asked = new Promise((resolve, reject) => {
      get({ host: ADDRESS, port, path: '/readyz' }, resolve).on('error', reject);
    });
    await expect(asked).rejects.toThrow(/socket hang up|ECONNRESET/);
  });

  it('gives tablets the authority whose fingerprint the console showed, before they trust it', async () => {
    const given = await ask('/api/v1/authority.crt', { ca: undefined, rejectUnauthorized: false });
    expect(given.headers['content-type']).toBe('application/x-x509-ca-cert');
    expect(made).toContain(new X509Certificate(given.body).fingerprint256);
    expect(given.body).toBe(authority());
  });

  it('lets the owner in by a cookie that browsers send over https alone', async () => {
    const [, link] = await serving.seen(/https:\/\/shop\.local:\d+\/first-sign-in#(\S+)/);
    const headers = { 'content-type': 'application/json', origin: `https://${NAME}:${port}` };
    const password = 'a crooked brass pitch';
    const entered = await ask('/api/v1/set-password', { method: 'POST', headers }, { link, password });
    expect(entered.status).toBe(200);
    const [cookie = ''] = entered.headers['set-cookie'] ?? [];
    expect(cookie).toMatch(/; Secure(;|$)/);
    const me = await ask('/api/v1/me', { headers: { cookie: cookie.split(';')[0]! } });
    expect(me.status).toBe(200);
  });

  it('is trusted as before after its certificate was renewed', async () => {
    const before = await ask('/readyz');
    serving.child.kill('SIGTERM');
    expect(await serving.ended).toBe(0);
    certificate('renew');
    serving = serve(folder, '--db', 'shop.db', '--host', '0.0.0.0', '--certificate', 'kept');
    port = Number((await serving.seen(/open at https:\/\/shop\.local:(\d+)\//))[1]);
    const after = await ask('/readyz');
    expect(after.status).toBe(200);
    expect(after.fingerprint).not.toBe(before.fingerprint);
  });
});

describe('tautwork serve with a folder that holds no certificate', () => {
  it.each(['0.0.0.0', '127.0.0.1'])('does not fall back to plain http at %s', async (host) => {
    const refused = serve(folder, '--db', 'other.db', '--host', host, '--certificate', 'nowhere');
    expect(await refused.ended).toBe(2);
    expect(refused.said()).toContain('tautwork certificate make');
  });
});

/** Runs `tautwork certificate` and gives what it printed. */
function certificate(...words: readonly string[]): string {
  const asked = [PROGRAM, 'certificate', ...words, '--folder', 'kept'];
  const { status, stdout, stderr } = spawnSync(process.execPath, asked, { cwd: folder, encoding: 'utf8' });
  expect([status, stderr]).toEqual([0, '']);
  return stdout;
}

const authority = (): string => readFileSync(join(folder, 'kept', 'authority.crt'), 'utf8');

interface Answer {
  readonly status: number | undefined;
  readonly headers: Readonly<Record<string, string | readonly string[] | undefined>>;
  readonly body: string;
  /** Of the certificate that the server showed. */
  readonly fingerprint: string;
}

/** Asks as a tablet that trusts the shop's authority, on a connection of its own. */
function ask(path: string, how: RequestOptions = {}, sent?: object): Promise<Answer> {
  const lookup: RequestOptions['lookup'] = (_host, { all }, found) =>
    all ? found(null, [{ address: ADDRESS, family: 4 }]) : found(null, ADDRESS, 4);
  return new Promise((resolve, reject) => {
    const options = { host: NAME, port, path, lookup, ca: authority(), agent: false, ...how };
    const asked = request(options, (answer) => {
      const { fingerprint256 } = (answer.socket as TLSSocket).getPeerCertificate();
      const { statusCode: status, headers } = answer;
      let body = '';
      answer.setEncoding('utf8').on('data', (part: string) => {
        body += part;
      });
      answer.on('end', () => resolve({ status, headers, body, fingerprint: fingerprint256 }));
    });
    asked.on('error', reject);
    asked.end(sent && JSON.stringify(sent));
  });
}
