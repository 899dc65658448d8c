import { scryptSync } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import { slowHash, USUAL_COST } from './slow-hash.js';

const quick = slowHash({ N: 16, r: 1, p: 1 });

describe('the slow hash', () => {
  it('knows its own secret again, and no other', async () => {
    const kept = await quick.hash('seven copper kettles');
    expect(await quick.matches('seven copper kettles', kept)).toEqual({ matches: true, outdated: false });
    expect((await quick.matches('seven copper kettle', kept)).matches).toBe(false);
    expect((await quick.matches('seven copper kettles', undefined)).matches).toBe(false);
  });

  it('is another one each time, so that equal passwords do not show', async () => {
    expect(await quick.hash('same')).not.toBe(await quick.hash('same'));
  });

  it('takes a letter and its accent typed apart for the same letter', async () => {
    const kept = await quick.hash('caf\u00e9 at the weir');
    expect((await quick.matches('cafe\u0301 at the weir', kept)).matches).toBe(true);
  });

  it('says that a hash of another cost is outdated, and still knows it', async () => {
    const kept = await quick.hash('seven copper kettles');
    const dearer = slowHash({ N: 32, r: 1, p: 1 });
    expect(await dearer.matches('seven copper kettles', kept)).toEqual({ matches: true, outdated: true });
  });

  it('is scrypt as RFC 7914, section 12, has it: N 1024, r 8, p 16, "password", "NaCl"', () => {
    const made = scryptSync('password', 'NaCl', 64, { N: 1024, r: 8, p: 16 }).toString('hex');
    expect(made.slice(0, 64)).toBe('fdbabe1c9d3472007856e7190d01e9fe7c6ad7cbc8237830e77376634b373162');
  });

  it('keeps the cost and the salt beside the hash, so that a foreign scrypt comes to the same', async () => {
    const [name, cost, salt, hash] = (await quick.hash('seven copper kettles')).split('$');
    expect([name, cost]).toEqual(['scrypt', '16,1,1']);
    const made = scryptSync('seven copper kettles', Buffer.from(salt!, 'base64url'), 32, {
      N: 16,
      r: 1,
      p: 1,
    });
    expect(made.toString('base64url')).toBe(hash);
  });

  it('works at the usual cost, for which Node needs more room than it takes by itself', async () => {
    expect(USUAL_COST).toEqual({ N: 32_768, r: 8, p: 3 });
    const usual = slowHash();
    const kept = await usual.hash('seven copper kettles');
    expect(kept).toMatch(/^scrypt\$32768,8,3\$/);
    expect((await usual.matches('seven copper kettles', kept)).matches).toBe(true);
  });

  it('does not work on a hash that is none, or that would take all memory', async () => {
    const foul = ['', 'plain', `scrypt$1073741824,8,1$${'a'.repeat(22)}$${'a'.repeat(43)}`];
    for (const kept of foul) expect((await quick.matches('x', kept)).matches).toBe(false);
  });
});
