import { mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import type { AddressInfo } from 'node:net';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, afterEach, describe, expect, it } from 'vitest';
import { endServing, serve as serveIn } from './serving.js';

const folder = mkdtempSync(join(tmpdir(), 'tautwork-serve-'));
afterEach(endServing);
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const serve = (...words: readonly string[]) => serveIn(folder, ...words);

describe('tautwork serve', () => {
  it('opens a new shop, tells the owner how to get in, and again until that was done', async () => {
    const first = serve('--db', 'new.db', '--log');
    const [, url] = await first.seen(/The shop is open at (http:\S+) /);
    const [, link] = await first.seen(/first-sign-in#(\S+)/);
    expect((await fetch(`${url}readyz`)).status).toBe(200);
    const answer = await fetch(`${url}api/v1/set-password`, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify({ link, password: 'a crooked brass pitch' }),
    });
    expect(answer.status).toBe(200);
    first.child.kill('SIGINT');
    expect(await first.ended).toBe(0);
    expect(first.said()).toContain('"path":"/api/v1/set-password"');
    expect(first.said()).not.toContain(link);

    const again = serve('--db', 'new.db', '--backups', 'kept');
    await again.seen(/The shop is open/);
    again.child.kill('SIGTERM');
    expect(await again.ended).toBe(0);
    expect(again.out()).not.toContain('first-sign-in');
    expect(readdirSync(join(folder, 'kept'))).toHaveLength(1);
  });

  it('refuses a network without a certificate', async () => {
    const refused = serve('--db', 'open.db', '--host', '0.0.0.0');
    expect(await refused.ended).toBe(2);
    expect(refused.said()).toMatch(/certificate/);
  });

  it('refuses a taken port, since tablets know the shop by its address', async () => {
    const holder = createServer();
    await new Promise<void>((resolve) => holder.listen(0, '127.0.0.1', resolve));
    const { port } = holder.address() as AddressInfo;
    const refused = serve('--db', 'other.db', '--port', String(port));
    expect(await refused.ended).toBe(2);
    expect(refused.said()).toContain(`Port ${port} is taken.`);
    holder.close();
  });

  it('refuses a file that holds no shop', async () => {
    writeFileSync(join(folder, 'letter.db'), 'Dear shop, '.repeat(1000));
    const refused = serve('--db', 'letter.db');
    expect(await refused.ended).toBe(2);
    expect(refused.said()).toMatch(/damaged|database/);
  });
});
