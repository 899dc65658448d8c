import { spawnSync } from 'node:child_process';
import { X509Certificate } from 'node:crypto';
import { existsSync, mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { createServer, request } from 'node:https';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { qrInBlocks, qrPicture } from './address-code.js';
import { keptCertificate, makeCertificate, renewCertificate, takeCertificate } from './keep-certificate.js';
import { isDueForRenewal } from './look-at-certificate.js';
import { type CertifiedKey, makeAuthority, makeServerCertificate } from './make-certificates.js';

const HOSTS = ['shop.local', '192.168.1.20', 'fd00::20', 'localhost', '127.0.0.1'];
const NOW = new Date();
const DAY_MS = 86_400_000;

const has = (program: string, word: string) => spawnSync(program, [word]).error === undefined;

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'tautwork-certificate-'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const fresh = () => mkdtempSync(join(folder, 'kept-'));

describe('a certificate of the local authority', () => {
  let authority: CertifiedKey;
  let server: CertifiedKey;
  beforeAll(async () => {
    authority = await makeAuthority({ hosts: HOSTS, now: NOW });
    server = await makeServerCertificate(authority, { hosts: HOSTS, now: NOW });
  });

  it.each(['localhost', '127.0.0.1'])(
    'is trusted at %s by whoever trusts the authority, and by nobody else',
    async (host) => {
      expect(await answerOf(server, { ca: authority.certificate, host })).toBe('in confidence');
      await expect(answerOf(server, { ca: undefined, host })).rejects.toThrow(/certificate/);
      const other = await makeAuthority({ hosts: HOSTS, now: NOW });
      await expect(answerOf(server, { ca: other.certificate, host })).rejects.toThrow(
        /certificate|signature/,
      );
    },
  );

  it('is not trusted under a name that it is not for', async () => {
    const narrow = await makeServerCertificate(authority, { hosts: ['shop.local'], now: NOW });
    await expect(answerOf(narrow, { ca: authority.certificate, host: 'localhost' })).rejects.toThrow(
      /does not match/,
    );
  });

  it.each(['bank.example', 'shop.local.example', '203.0.113.7', '2001:db8::7'])(
    'is trusted by nobody where a stolen authority signs for %s, of the world outside',
    async (host) => {
      const forged = await makeServerCertificate(authority, { hosts: [host, 'localhost'], now: NOW });
      await expect(answerOf(forged, { ca: authority.certificate, host: 'localhost' })).rejects.toThrow(
        /permitted subtree/,
      );
    },
  );

  it('cannot make further authorities', () => {
    expect(new X509Certificate(server.certificate).ca).toBe(false);
    expect(new X509Certificate(authority.certificate).ca).toBe(true);
  });

  it('is good for no longer than 398 days, more than which browsers refuse', () => {
    const { validFrom, validTo } = new X509Certificate(server.certificate);
    const days = (Date.parse(validTo) - Date.parse(validFrom)) / DAY_MS;
    expect(days).toBeLessThanOrEqual(398);
    expect(days).toBeGreaterThan(390);
  });

  it.skipIf(!has('openssl', 'version'))(
    'is found in order by OpenSSL, in its strict reading of RFC 5280',
    async () => {
      const there = fresh();
      const path = (name: string, text: string) => {
        writeFileSync(join(there, name), text);
        return join(there, name);
      };
      const ca = path('authority.crt', authority.certificate);
      const verify = (certificate: string, ...more: string[]) =>
        spawnSync(
          'openssl',
          ['verify', '-x509_strict', '-purpose', 'sslserver', '-CAfile', ca, ...more, certificate],
          {
            encoding: 'utf8',
          },
        );
      const own = path('server.crt', server.certificate);
      expect(verify(own, '-verify_hostname', 'shop.local').stdout).toMatch(/: OK/);
      expect(verify(own, '-verify_ip', '192.168.1.20').stdout).toMatch(/: OK/);
      expect(verify(own, '-verify_hostname', 'other.local').stderr).toMatch(/hostname mismatch/i);
      const forged = await makeServerCertificate(authority, { hosts: ['bank.example'], now: NOW });
      expect(verify(path('forged.crt', forged.certificate)).stderr).toMatch(/permitted subtree violation/);
    },
  );
});

describe('the folder of the certificate', () => {
  it('holds keys that only the owner of the files can read', async () => {
    const there = fresh();
    valueIn(await makeCertificate(there, HOSTS, NOW));
    for (const name of ['authority.key', 'authority.crt', 'server.key', 'server.crt']) {
      expect(statSync(join(there, name)).mode & 0o777, name).toBe(0o600);
    }
    expect(existsSync(join(there, 'server.key.new'))).toBe(false);
  });

  it('gets a fresh server certificate by renewal, for the same hosts, by the same authority', async () => {
    const there = fresh();
    const made = valueIn(await makeCertificate(there, HOSTS, NOW));
    const [authority, key] = [read(there, 'authority.crt'), read(there, 'server.key')];
    const later = new Date(NOW.getTime() + 380 * DAY_MS);
    expect([isDueForRenewal(made.server, NOW), isDueForRenewal(made.server, later)]).toEqual([false, true]);
    const renewed = valueIn(await renewCertificate(there, later));
    expect(read(there, 'authority.crt')).toBe(authority);
    expect(read(there, 'server.key')).not.toBe(key);
    expect(renewed.server.hosts).toEqual(HOSTS);
    expect(renewed.server.hosts).toEqual(made.server.hosts);
    expect(renewed.server.notAfter.getTime() - made.server.notAfter.getTime()).toBe(380 * DAY_MS);
  });

  it('keeps the authority where the certificate is made anew for other hosts', async () => {
    const there = fresh();
    const made = valueIn(await makeCertificate(there, ['shop.local'], NOW));
    const again = valueIn(await makeCertificate(there, ['shop.local', '10.0.0.5'], NOW));
    expect(again.authority!.fingerprint).toBe(made.authority!.fingerprint);
    expect(again.server.hosts).toEqual(['shop.local', '10.0.0.5']);
  });

  it('is not given a certificate that devices would refuse', async () => {
    const there = fresh();
    expect(faultIn(await makeCertificate(there, ['203.0.113.7'], NOW))).toMatchObject({
      code: 'certificate.public-address',
      hosts: ['203.0.113.7'],
    });
    valueIn(await makeCertificate(there, ['strings.example', 'shop.local'], NOW));
    valueIn(await makeCertificate(there, ['desk.strings.example'], NOW));
    expect(faultIn(await makeCertificate(there, ['other.example'], NOW))).toMatchObject({
      code: 'certificate.beyond-authority',
      hosts: ['other.example'],
    });
  });

  it('takes a certificate from elsewhere where it is whole, matches its key and is good now', async () => {
    const there = fresh();
    const authority = await makeAuthority({ hosts: [], now: NOW });
    const pair = await makeServerCertificate(authority, { hosts: ['shop.local'], now: NOW });
    const other = await makeServerCertificate(authority, { hosts: ['shop.local'], now: NOW });
    const long = new Date(NOW.getTime() + 400 * DAY_MS);
    expect(faultIn(await takeCertificate(there, { ...pair, key: other.key }, NOW)).code).toBe(
      'certificate.other-key',
    );
    expect(faultIn(await takeCertificate(there, { ...pair, key: 'x' }, NOW)).code).toBe(
      'certificate.unreadable',
    );
    expect(faultIn(await takeCertificate(there, pair, long)).code).toBe('certificate.run-out');
    expect(faultIn(await keptCertificate(there, NOW)).code).toBe('certificate.none');
    expect(valueIn(await takeCertificate(there, pair, NOW)).server.hosts).toEqual(['shop.local']);
    const kept = valueIn(await keptCertificate(there, NOW));
    expect([kept.server.hosts, kept.authority]).toEqual([['shop.local'], undefined]);
    expect(faultIn(await renewCertificate(there, NOW)).code).toBe('certificate.none');
  });
});

describe('the QR code of the address', () => {
  const ADDRESS = 'https://shop.local:4870/api/v1/authority.crt';
  const decoded = (file: string) =>
    spawnSync('zbarimg', ['-Sdisable', '-Sqrcode.enable', '-q', '--raw', '--nodbus', file], {
      encoding: 'utf8',
    }).stdout.trim();

  it.skipIf(!has('zbarimg', '--version'))('is read from the picture', async () => {
    const file = join(fresh(), 'code.png');
    writeFileSync(file, await qrPicture(ADDRESS));
    expect(decoded(file)).toBe(ADDRESS);
  });

  it.skipIf(!has('zbarimg', '--version'))('is read from the blocks of a terminal', () => {
    const file = join(fresh(), 'code.pgm');
    writeFileSync(file, photograph(qrInBlocks(ADDRESS)));
    expect(decoded(file)).toBe(ADDRESS);
  });
});

/** What a camera sees of a dark terminal, as a grey picture: light where a block is drawn. */
function photograph(blocks: string): string {
  const upper = { '█': 1, '▀': 1, '▄': 0, ' ': 0 } as Readonly<Record<string, number>>;
  const lower = { '█': 1, '▀': 0, '▄': 1, ' ': 0 } as Readonly<Record<string, number>>;
  const rows = blocks
    .split('\n')
    .flatMap((line) => [[...line].map((sign) => upper[sign]!), [...line].map((sign) => lower[sign]!)]);
  const scale = 6;
  const big = rows.flatMap((row) =>
    Array.from({ length: scale }, () =>
      row.flatMap((light) => new Array<number>(scale).fill(light * 255)).join(' '),
    ),
  );
  return `P2\n${rows[0]!.length * scale} ${big.length}\n255\n${big.join('\n')}\n`;
}

/** What an https server with this certificate answers to a client that trusts only `ca` (or the world's own authorities). */
async function answerOf(
  { certificate, key }: CertifiedKey,
  { ca, host }: { readonly ca: string | undefined; readonly host: string },
): Promise<string> {
  const server = createServer({ cert: certificate, key }, (_request, reply) => reply.end('in confidence'));
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const { port } = server.address() as AddressInfo;
  try {
    return await new Promise<string>((resolve, reject) => {
      const servername = host === 'localhost' ? { servername: 'localhost' } : {};
      const lookedUp = { host: '127.0.0.1', ...servername, headers: { host } };
      const sent = request({ ...lookedUp, port, agent: false, ...(ca ? { ca } : {}) }, (answer) => {
        answer.setEncoding('utf8').on('data', resolve).on('error', reject);
      });
      sent.on('error', reject).end();
    });
  } finally {
    server.closeAllConnections();
    server.close();
  }
}

const read = (there: string, name: string) => readFileSync(join(there, name), 'utf8');

function valueIn<T>(outcome: { readonly ok: boolean; readonly value?: T }): T {
  if (!outcome.ok) throw new Error(`Refused: ${JSON.stringify(outcome)}`);
  return outcome.value as T;
}

function faultIn(outcome: { readonly ok: boolean; readonly fault?: unknown }) {
  expect(outcome.ok).toBe(false);
  return outcome.fault as { readonly code: string };
}
