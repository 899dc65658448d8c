import { describe, expect, it } from 'vitest';
import type { ReadTransaction } from '../../workshop/index.js';
import { untilNextEvent } from './until-next-event.js';

describe('an answer that is long in the making', () => {
  it('is made once while nothing changes, and anew after a change', async () => {
    let last = 7;
    let made = 0;
    const tx = { events: { last: async () => last } } as unknown as ReadTransaction;
    const read = untilNextEvent(async () => ++made);
    expect([await read(tx, {}, {}), await read(tx, {}, {})]).toEqual([1, 1]);
    last = 8;
    expect(await read(tx, {}, {})).toBe(2);
  });

  it('is another one for another query, each made once', async () => {
    const tx = { events: { last: async () => 1 } } as unknown as ReadTransaction;
    let made = 0;
    const read = untilNextEvent(async (_tx, query: { readonly of: string }) => `${query.of} ${++made}`);
    const asked = [{ of: 'a' }, { of: 'b' }, { of: 'a' }].map((query) => read(tx, query, {}));
    expect(await Promise.all(asked)).toHaveLength(3);
    expect(await read(tx, { of: 'a' }, {})).toMatch(/^a /);
    expect(await read(tx, { of: 'b' }, {})).toMatch(/^b /);
    const before = made;
    await read(tx, { of: 'a' }, {});
    expect(made).toBe(before);
  });

  it('is not kept where it failed', async () => {
    let asked = 0;
    const tx = { events: { last: async () => 1 } } as unknown as ReadTransaction;
    const read = untilNextEvent(async () => {
      asked++;
      if (asked === 1) throw new Error('the database is away');
      return asked;
    });
    await expect(read(tx, {}, {})).rejects.toThrow('away');
    expect(await read(tx, {}, {})).toBe(2);
  });
});
