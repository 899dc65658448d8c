import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { openStore } from '../../store/index.js';
import { computerClock, newId, setPassword, slowHash } from '../../workshop/index.js';
import { tautwork } from '../main.js';

const PASSWORD = 'seven copper kettles';
let folder: string;
let db: string;

beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'tautwork-link-command-'));
  db = join(folder, 'shop.db');
  await (await openStore({ file: db })).close();
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

async function run(...words: readonly string[]) {
  const [printed, remarks]: [string[], string[]] = [[], []];
  const terminal = {
    print: (text: string) => printed.push(text),
    remark: (text: string) => remarks.push(text),
    progress: {} as never,
  };
  await tautwork(terminal).parseAsync(['sign-in-link', ...words, '--db', db], { from: 'user' });
  return { printed: printed.join('\n'), remarks: remarks.join('\n') };
}

async function usedBy(link: string) {
  const store = await openStore({ file: db });
  try {
    const parts = { store, clock: computerClock, newId, slowHash: slowHash({ N: 2, r: 1, p: 1 }) };
    return await setPassword(parts, { link: link.split('#')[1]!, password: PASSWORD });
  } finally {
    await store.close();
  }
}

describe('tautwork sign-in-link', () => {
  it('makes the owner where there is nobody, and a link that lets in once', async () => {
    const { printed, remarks } = await run('--at', 'https://shop.local:4870/');
    expect(printed).toMatch(/^https:\/\/shop\.local:4870\/first-sign-in#[\w-]{43}$/);
    expect(remarks).toMatch(/^For Owner, once, until \d{4}-/);
    expect(await usedBy(printed)).toMatchObject({
      ok: true,
      value: { person: { body: { roles: ['owner'] } } },
    });
    expect((await usedBy(printed)).ok).toBe(false);
  });

  it('lets an owner in again who has forgotten the password', async () => {
    await usedBy((await run()).printed);
    const { printed } = await run('owner');
    expect((await usedBy(printed)).ok).toBe(true);
  });

  it('names who there is where nobody has the name', async () => {
    await run();
    await expect(run('Merle')).rejects.toThrow(/nobody called "Merle".*Owner/s);
  });
});
