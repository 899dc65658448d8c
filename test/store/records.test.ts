import { randomUUID } from 'node:crypto';
import { beforeAll, describe, expect, it } from 'vitest';
import { StaleVersion, type Store, Taken, UnreadableCursor } from '../../src/store/index.js';
import { ask, engines } from './harness.js';
import { at, binBody, insertRun, orderBody, personBody } from './samples.js';

describe.each(engines())('records on $name', (engine) => {
  let store: Store;
  beforeAll(async () => {
    store = await engine.open();
  });

  const insertBin = (name: string, minute = 0) =>
    store.write((tx) => tx.records.insert('bin', { id: randomUUID(), body: binBody(name), at: at(minute) }));
  const caught = (deed: Promise<unknown>) =>
    deed.then(
      () => undefined,
      (thrown: unknown) => thrown,
    );

  it('come back as they were put in', async () => {
    const id = randomUUID();
    const body = { ...binBody('A-1 ½ "ø"'), stringKey: 'w26', walkOrder: 0.1 + 0.2 };
    const put = await store.write((tx) => tx.records.insert('bin', { id, body, at: at(0) }));
    expect(put).toEqual({ id, version: 1, state: '', createdAt: at(0), updatedAt: at(0), body });
    expect(await store.read((tx) => tx.records.get('bin', id))).toEqual(put);
    expect(await store.read((tx) => tx.records.find('bin', { name: body.name }))).toEqual(put);
    expect(await store.read((tx) => tx.records.get('bin', randomUUID()))).toBeUndefined();
    expect(await store.read((tx) => tx.records.find('bin', { name: 'nowhere' }))).toBeUndefined();
  });

  it('are found between two ends of a key, both among them, in its order; or the last of them', async () => {
    const days = ['2026-05-03', '2026-05-01', '2026-05-04', '2026-05-02'];
    await store.write(async (tx) => {
      for (const [minute, date] of days.entries())
        await tx.records.insert('plan', {
          id: randomUUID(),
          body: { date, runs: [], note: '' },
          at: at(minute),
        });
    });
    const between = (ends: { from?: string; to?: string; last?: number }) =>
      store.read(async ({ records }) =>
        (await records.between('plan', 'date', ends)).map(({ body }) => body.date.slice(8)),
      );
    expect(await between({})).toEqual(['01', '02', '03', '04']);
    expect(await between({ from: '2026-05-02', to: '2026-05-03' })).toEqual(['02', '03']);
    expect(await between({ last: 2 })).toEqual(['03', '04']);
    expect(await between({ to: '2026-05-02', last: 1 })).toEqual(['02']);
    expect(await between({ from: '2026-06-01' })).toEqual([]);
  });

  it('are put in by the thousand, or none of them where one is taken', async () => {
    const bins = (count: number, name: string) =>
      Array.from({ length: count }, (_, number) => ({
        id: randomUUID(),
        body: binBody(`${name} ${number}`),
        at: at(0),
      }));
    const many = bins(1203, 'many');
    await store.write((tx) => tx.records.insertAll('bin', many));
    expect(await store.read((tx) => tx.records.get('bin', many[1202]!.id))).toMatchObject({
      version: 1,
      body: { name: 'many 1202' },
    });
    const more = bins(3, 'more');
    const again = store.write((tx) => tx.records.insertAll('bin', [...more, many[7]!]));
    await expect(again).rejects.toBeInstanceOf(Taken);
    expect(await store.read((tx) => tx.records.get('bin', more[0]!.id))).toBeUndefined();
    await store.write((tx) => tx.records.insertAll('bin', []));
  });

  it('keep every version that was', async () => {
    const first = await insertBin('versions');
    const bodies = ['versions 2', 'versions 3'].map(binBody);
    for (const [index, body] of bodies.entries())
      await store.write((tx) =>
        tx.records.update('bin', {
          id: first.id,
          expectedVersion: index + 1,
          state: index === 0 ? 'moved' : undefined!,
          body,
          at: at(index + 1),
        }),
      );
    const versions = await store.read((tx) => tx.records.versions('bin', first.id));
    expect(
      versions.map(({ version, state, body, createdAt, updatedAt }) => [
        version,
        state,
        body.name,
        createdAt,
        updatedAt,
      ]),
    ).toEqual([
      [1, '', 'versions', at(0), at(0)],
      [2, 'moved', 'versions 2', at(0), at(1)],
      [3, 'moved', 'versions 3', at(0), at(2)],
    ]);
    expect(await store.read((tx) => tx.records.get('bin', first.id))).toEqual(versions.at(-1));
  });

  it('refuse a write over a newer version, and show that one', async () => {
    const first = await insertBin('stale');
    const change = { id: first.id, expectedVersion: 1, body: binBody('stale, by one'), at: at(1) };
    const newer = await store.write((tx) => tx.records.update('bin', change));
    const late = { ...change, body: binBody('stale, by another') };
    const thrown = await caught(store.write((tx) => tx.records.update('bin', late)));
    expect(thrown).toBeInstanceOf(StaleVersion);
    expect(thrown).toMatchObject({ kind: 'bin', id: first.id, expectedVersion: 1, current: newer });
    expect(await store.read((tx) => tx.records.versions('bin', first.id))).toHaveLength(2);
    const unknown = await caught(
      store.write((tx) => tx.records.update('bin', { ...change, id: randomUUID() })),
    );
    expect(unknown).toMatchObject({ name: 'StaleVersion', current: undefined });
  });

  it('let exactly one of many writers over the same version through', async () => {
    const first = await insertBin('raced');
    const deeds = Array.from({ length: 12 }, (_, index) =>
      caught(
        store.write((tx) =>
          tx.records.update('bin', {
            id: first.id,
            expectedVersion: 1,
            body: binBody(`raced ${index}`),
            at: at(1),
          }),
        ),
      ),
    );
    const thrown = await Promise.all(deeds);
    expect(thrown.filter((one) => one === undefined)).toHaveLength(1);
    expect(thrown.filter((one) => one instanceof StaleVersion)).toHaveLength(11);
  });

  it('refuse an id or a name that another has', async () => {
    const one = await insertBin('own name');
    const other = await insertBin('other name');
    expect(await caught(insertBin('own name'))).toEqual(new Taken('bin', 'name', 'own name'));
    const sameId = store.write((tx) =>
      tx.records.insert('bin', { id: one.id, body: binBody('yet another'), at: at(0) }),
    );
    expect(await caught(sameId)).toMatchObject({ name: 'Taken', key: 'id', value: one.id });
    const renamed = store.write((tx) =>
      tx.records.update('bin', { id: other.id, expectedVersion: 1, body: binBody('own name'), at: at(1) }),
    );
    expect(await caught(renamed)).toMatchObject({ name: 'Taken', key: 'name', value: 'own name' });
    const order = (id: string) =>
      store.write((tx) => tx.records.insert('order', { id, body: orderBody('2031-7'), at: at(0) }));
    await order(randomUUID());
    expect(await caught(order(randomUUID()))).toEqual(new Taken('order', 'number', '2031-7'));
  });

  it('may share names where people do not call them by name alone', async () => {
    const runs = await store.write(async (tx) => [await insertRun(tx), await insertRun(tx)]);
    const named = await store.read((tx) => tx.records.all('run', { name: 'R-1' }));
    expect(named.map(({ id }) => id).sort()).toEqual(runs.sort());
  });

  it('refuse a body that is not of their kind, by the path of what is wrong', async () => {
    const wrong = { ...binBody('wrong'), walkOrder: null as never };
    const put = store.write((tx) => tx.records.insert('bin', { id: randomUUID(), body: wrong, at: at(0) }));
    await expect(put).rejects.toThrow('/walkOrder');
    const more = { ...binBody('wrong'), colour: 'red' };
    const putMore = store.write((tx) =>
      tx.records.insert('bin', { id: randomUUID(), body: more, at: at(0) }),
    );
    await expect(putMore).rejects.toThrow(/additional/);
    expect(await store.read((tx) => tx.records.find('bin', { name: 'wrong' }))).toBeUndefined();
  });

  it('refuse what refers to nothing', async () => {
    const body = { name: 'S', wireId: randomUUID(), lot: 'l', tareKg: 0, receivedAt: at(0) };
    const put = store.write((tx) => tx.records.insert('spool', { id: randomUUID(), body, at: at(0) }));
    await expect(put).rejects.toThrow(/foreign key/i);
  });

  describe('in lists', () => {
    const players = ['Ösen Lindqvår', 'Mara Theil', 'Åke 100% Brand', 'mara_t'];
    const numbers = (page: { items: readonly { body: { number: string } }[] }) =>
      page.items.map(({ body }) => body.number);
    let lists: Store;

    beforeAll(async () => {
      lists = await engine.open();
      await lists.write(async (tx) => {
        for (let index = 0; index < 40; index++)
          await tx.records.insert('order', {
            // Against the order of time, so that the two cannot be mistaken.
            id: `${String(99 - index).padStart(8, '0')}-0000-7000-8000-000000000000`,
            state: index % 4 === 0 ? 'shipped' : 'received',
            body: orderBody(`O-${String(index).padStart(2, '0')}`, players[index % 4]!),
            // Three of the same moment each: the id decides.
            at: at(Math.floor(index / 3)),
          });
      });
    });

    const walk = async (query: {
      where?: Record<string, string>;
      search?: string;
      order?: 'newest' | 'oldest';
    }) => {
      const seen: string[] = [];
      let after: string | undefined;
      do {
        const page = await lists.read((tx) =>
          tx.records.list('order', { ...query, limit: 7, ...(after === undefined ? {} : { after }) }),
        );
        expect(page.items.length).toBeLessThanOrEqual(7);
        seen.push(...numbers(page));
        after = page.next;
      } while (after !== undefined);
      return seen;
    };

    it('stand newest first, each once, over all pages', async () => {
      const newest = await walk({});
      expect(new Set(newest).size).toBe(40);
      expect(newest[0]).toBe('O-39');
      // 36, 37 and 38 came in the same moment; their ids count down.
      expect(newest.slice(1, 4)).toEqual(['O-36', 'O-37', 'O-38']);
      expect(await walk({ order: 'oldest' })).toEqual([...newest].reverse());
    });

    it('are narrowed by state and keys together', async () => {
      expect(await walk({ where: { state: 'shipped' } })).toHaveLength(10);
      expect(await walk({ where: { state: 'shipped', player: 'Mara Theil' } })).toEqual([]);
      expect(await walk({ where: { number: 'O-05' } })).toEqual(['O-05']);
    });

    it('are searched for letters of either case, and for signs as they are', async () => {
      expect(await walk({ search: 'ÖSEN' })).toHaveLength(10);
      expect(await walk({ search: 'lindqvÅR' })).toHaveLength(10);
      expect(await walk({ search: '0%' })).toHaveLength(10);
      expect(await walk({ search: 'mara_t' })).toHaveLength(10);
      expect(await walk({ search: 'MARA' })).toHaveLength(20);
      expect(await walk({ search: 'o-3', where: { state: 'shipped' } })).toEqual(['O-36', 'O-32']);
    });

    it('go on behind a record that came meanwhile', async () => {
      const first = await lists.read((tx) => tx.records.list('order', { limit: 5 }));
      await lists.write((tx) =>
        tx.records.insert('order', { id: randomUUID(), body: orderBody('late'), at: at(59) }),
      );
      const second = await lists.read((tx) => tx.records.list('order', { limit: 5, after: first.next! }));
      expect(numbers(second)).not.toContain('late');
      expect(new Set([...numbers(first), ...numbers(second)]).size).toBe(10);
    });

    it('refuse a cursor that is none, or of another list', async () => {
      const journal = Buffer.from(JSON.stringify(['at,id', at(0), 'x'])).toString('base64url');
      for (const after of ['x', '', journal]) {
        const listed = lists.read((tx) => tx.records.list('order', { limit: 5, after }));
        expect(await caught(listed)).toBeInstanceOf(UnreadableCursor);
      }
    });

    it('refuse to be narrowed by what is no key, and to be endless', async () => {
      const byNote = lists.read((tx) => tx.records.list('order', { limit: 5, where: { note: '' } }));
      await expect(byNote).rejects.toThrow('note is no key of a order');
      for (const limit of [0, 501, 1.5])
        await expect(lists.read((tx) => tx.records.list('order', { limit }))).rejects.toThrow(/page of/);
    });
  });

  it('have a version that nobody can change, not even past the store', async () => {
    const place = await engine.place();
    const own = await import('../../src/store/index.js').then(({ openStore }) => openStore(place));
    try {
      const person = await own.write((tx) =>
        tx.records.insert('person', { id: randomUUID(), body: personBody('P'), at: at(0) }),
      );
      await own.write((tx) =>
        tx.records.update('person', { id: person.id, expectedVersion: 1, body: personBody('Q'), at: at(1) }),
      );
      await expect(ask(place, "update record_versions set body = '{}'")).rejects.toThrow('append only');
      await expect(ask(place, 'delete from record_versions')).rejects.toThrow('append only');
    } finally {
      await own.close();
    }
  });
});
