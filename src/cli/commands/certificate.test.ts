import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { tautwork } from '../main.js';

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'tautwork-certificate-command-'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Runs a command and gives what it printed. */
async function printed(...words: readonly string[]): Promise<string> {
  const lines: string[] = [];
  const progress = { show: () => {}, step: () => {}, end: () => {} } as never;
  const terminal = { print: (text: string) => lines.push(text), remark: () => {}, progress };
  await tautwork(terminal).parseAsync(words, { from: 'user' });
  return lines.join('\n');
}

const certificate = (...words: readonly string[]) => printed('certificate', ...words);

describe('tautwork certificate', () => {
  it('makes a certificate, says where tablets fetch the authority, and what to compare', async () => {
    const kept = join(folder, 'made');
    const picture = join(folder, 'code.png');
    const told = await certificate(
      'make',
      'Shop.local',
      '192.168.1.20',
      '--folder',
      kept,
      '--port',
      '4999',
      '--qr',
      picture,
    );
    expect(told).toMatch(/^Certificate for shop\.local, 192\.168\.1\.20, good until \d{4}-\d\d-\d\d/);
    expect(told).toContain('https://shop.local:4999/api/v1/authority.crt');
    expect(told).toMatch(/([0-9A-F]{2}:){31}[0-9A-F]{2}/);
    expect(told).toContain('█▀');
    expect(readFileSync(picture).subarray(1, 4).toString()).toBe('PNG');
    expect(existsSync(join(kept, 'authority.key'))).toBe(true);

    const fingerprint = (text: string) => /([0-9A-F]{2}:){31}[0-9A-F]{2}/.exec(text)?.[0];
    const key = readFileSync(join(kept, 'server.key'), 'utf8');
    const renewed = await certificate('renew', '--folder', kept);
    expect(fingerprint(renewed)).toBe(fingerprint(told));
    expect(readFileSync(join(kept, 'server.key'), 'utf8')).not.toBe(key);
    expect(await certificate('show', '--folder', kept)).toBe(renewed);
  });

  it('takes a certificate from files, and then speaks of no authority', async () => {
    const [made, taken] = [join(folder, 'elsewhere'), join(folder, 'taken')];
    await certificate('make', 'shop.local', '--folder', made);
    const files = ['--certificate', join(made, 'server.crt'), '--key', join(made, 'server.key')];
    const told = await certificate('use', ...files, '--folder', taken);
    expect(told).toMatch(/^Certificate for shop\.local, good until [\d-]+, in [^\n]+$/);
    const mixed = ['--certificate', join(made, 'server.crt'), '--key', join(made, 'authority.key')];
    await expect(certificate('use', ...mixed, '--folder', taken)).rejects.toThrow(/key does not belong/);
  });

  it.each(['shop local', 'http://shop.local', '-x.local', '192.168.1.20:4870', 'shop_1'])(
    'refuses "%s", which is no name or address',
    async (host) => {
      const asked = certificate('make', '--folder', join(folder, 'refused'), '--', host);
      await expect(asked).rejects.toThrow(/no name or address/);
    },
  );

  it('says what to do where there is none', async () => {
    await expect(certificate('renew', '--folder', join(folder, 'none'))).rejects.toThrow(/certificate make/);
  });
});
