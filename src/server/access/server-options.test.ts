import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { makeCertificate } from './certificate/keep-certificate.js';
import { isLoopback, serverOptions } from './server-options.js';

const NOW = new Date();
let folder: string;
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'tautwork-options-'));
  await makeCertificate(folder, ['shop.local', '192.168.1.20'], NOW);
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe('a server without a certificate', () => {
  it('listens on this machine alone, by its own names alone', async () => {
    expect(await serverOptions({ now: NOW })).toEqual({
      ok: true,
      value: { host: '127.0.0.1', names: ['localhost', '127.0.0.1', '::1'], secure: false },
    });
  });

  it.each(['0.0.0.0', '::', '192.168.1.20', 'shop.local', ''])('does not listen on "%s"', async (host) => {
    expect(await serverOptions({ host, now: NOW })).toEqual({
      ok: false,
      fault: { code: 'access.network-without-tls', host },
    });
  });
});

describe('a server with a certificate', () => {
  it('listens where it is told to, over https, and by the names of the certificate', async () => {
    const options = await serverOptions({ host: '0.0.0.0', certificateFolder: folder, now: NOW });
    expect(options).toMatchObject({
      ok: true,
      value: {
        host: '0.0.0.0',
        names: ['shop.local', '192.168.1.20', 'localhost', '127.0.0.1', '::1'],
        secure: true,
        tls: { cert: expect.stringMatching(/^-----BEGIN CERTIFICATE/), minVersion: 'TLSv1.2' },
        authority: expect.stringMatching(/^-----BEGIN CERTIFICATE/),
      },
    });
    expect(options.ok && options.value.renewSoon).toBe(undefined);
  });

  it('says when it should be renewed, and does not start when it has run out', async () => {
    const inDays = (days: number) => new Date(NOW.getTime() + days * 86_400_000);
    const soon = await serverOptions({ certificateFolder: folder, now: inDays(380) });
    expect(soon).toMatchObject({ ok: true, value: { renewSoon: { hosts: ['shop.local', '192.168.1.20'] } } });
    const late = await serverOptions({ certificateFolder: folder, now: inDays(398) });
    expect(late).toMatchObject({ ok: false, fault: { code: 'certificate.run-out' } });
  });

  it('does not fall back to plain http where the folder is empty', async () => {
    const empty = join(folder, 'none');
    expect(await serverOptions({ certificateFolder: empty, now: NOW })).toEqual({
      ok: false,
      fault: { code: 'certificate.none', folder: empty },
    });
  });
});

describe('an address', () => {
  it.each(['127.0.0.1', '127.8.9.10', '::1', 'localhost', 'LOCALHOST'])(
    '%s is of this machine alone',
    (host) => {
      expect(isLoopback(host)).toBe(true);
    },
  );
});
