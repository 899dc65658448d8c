import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import {
  type Account,
  type Balance,
  countDifference,
  type Entry,
  type Movement,
  makeStrings,
  moveStrings,
  pickString,
  receiveWire,
  replay,
} from '../../src/core/stock/index.js';
import {
  Overdrawn,
  openStore,
  type Store,
  type StoredMovement,
  type StorePlace,
} from '../../src/store/index.js';
import { deeds, movementOf, overdrawn } from '../fixtures/ledger-history.js';
import { engines } from './harness.js';

const AT = '2026-03-02T08:00:00.000Z';

describe.each(engines())('the ledger on $name', (engine) => {
  let place: StorePlace;
  let store: Store;
  let count = 0;
  beforeAll(async () => {
    place = await engine.place();
    store = await openStore(place);
  });
  afterAll(() => store.close());

  const numbered = (movement: Movement) => ({
    ...movement,
    id: `movement-${++count}`,
    at: AT,
    by: 'console',
  });
  const post = (movement: Movement, on = store) => on.write((tx) => tx.ledger.post(numbered(movement)));
  const balances = (query = {}): Promise<readonly Balance[]> => store.read((tx) => tx.ledger.balances(query));
  const breaches = () => store.read((tx) => tx.ledger.breaches());

  type Query = Omit<
    Parameters<Parameters<Parameters<Store['read']>[0]>[0]['ledger']['movements']>[0],
    'after'
  >;
  async function everyPage(query: Query): Promise<readonly StoredMovement[]> {
    const found: StoredMovement[] = [];
    let after: string | undefined;
    do {
      const from = after === undefined ? {} : { after };
      const page = await store.read((tx) => tx.ledger.movements({ ...query, ...from }));
      expect(page.items.length).toBeLessThanOrEqual(query.limit);
      found.push(...page.items);
      after = page.next;
    } while (after !== undefined);
    return found;
  }

  it('does what the laws say through any history: movements stand or are refused, balances are their replay', async () => {
    await fc.assert(
      fc.asyncProperty(deeds(40), async (plan) => {
        for (const deed of plan) {
          const books = await balances();
          const done = deed.what === 'correct' ? await everyPage({ limit: 500, order: 'oldest' }) : [];
          const movement = movementOf(deed, done, books);
          if (!movement) continue;
          const after = replay([{ ...movement, entries: [...books, ...movement.entries] }]);
          const [short] = overdrawn(after);
          if (!short) await post(movement);
          else await expect(post(movement)).rejects.toBeInstanceOf(Overdrawn);
          expect(await balances()).toEqual(short ? books : after);
        }
        expect(replay(await everyPage({ limit: 200 }))).toEqual(await balances());
        expect(await breaches()).toEqual([]);
      }),
      { numRuns: 15, endOnFailure: true },
    );
  });

  it('lists what touched an account, an item or a lot, newest or oldest first, page by page', async () => {
    const all = await everyPage({ limit: 7, order: 'oldest' });
    expect(all.length).toBeGreaterThan(50);
    expect(await everyPage({ limit: 11 })).toEqual([...all].reverse());
    const entries = fc.constantFrom(...all.flatMap((movement) => movement.entries));
    const asked = fc.record({ account: fc.boolean(), item: fc.boolean(), lot: fc.boolean() });
    await fc.assert(
      fc.asyncProperty(entries, asked, fc.integer({ min: 1, max: 30 }), async (entry, by, limit) => {
        const query = {
          ...(by.account && { account: entry.account }),
          ...(by.item && { item: entry.item }),
          ...(by.lot && { lot: entry.lot }),
        };
        const asWanted = Object.entries(query) as [keyof typeof query, string][];
        const wanted = all.filter((movement) =>
          movement.entries.some((one) => asWanted.every(([field, value]) => one[field] === value)),
        );
        expect(await everyPage({ ...query, limit, order: 'oldest' })).toEqual(wanted);
        expect(await everyPage({ ...query, limit })).toEqual([...wanted].reverse());
      }),
      { numRuns: 25 },
    );
  });

  it('narrows balances by account, the beginning of its name, item and lot', async () => {
    const all = await balances();
    expect(all.length).toBeGreaterThan(5);
    const bins = all.filter(({ account }) => account.startsWith('bin/'));
    expect(await balances({ accountPrefix: 'bin/' })).toEqual(bins);
    for (const { account, item, lot } of all) {
      const accountPrefix = account.slice(0, 5);
      expect(await balances({ accountPrefix })).toEqual(
        all.filter((row) => row.account.startsWith(accountPrefix)),
      );
      expect(await balances({ account })).toEqual(all.filter((row) => row.account === account));
      expect(await balances({ item })).toEqual(all.filter((row) => row.item === item));
      expect(await balances({ lot })).toEqual(all.filter((row) => row.lot === lot));
      expect(await balances({ accountPrefix: 'bin/', item })).toEqual(
        bins.filter((row) => row.item === item),
      );
    }
  });

  it('sums what movements of a kind took from accounts since a moment, and nothing else', async () => {
    const taken = (what: string, at: string, account: Account, quantity: number) => {
      const item = 'wire/outflow';
      const entries: Entry[] = [
        { account, item, lot: 'of', unit: 'mg', quantity: -quantity },
        { account: 'wound-in', item, lot: 'of', unit: 'mg', quantity },
        { account, item, lot: 'of', unit: 'mm', quantity: -quantity },
        { account: 'wound-in', item, lot: 'of', unit: 'mm', quantity },
      ];
      return {
        ...numbered({ what, reason: what === 'count' ? 'weighed' : '', ofKind: 'run', ofId: 'r', entries }),
        at,
      };
    };
    await store.write(async ({ ledger }) => {
      await ledger.post({
        ...numbered(receiveWire({ spoolId: 'of', wireId: 'outflow', mg: 900, unitWeightKgPerM: 0.001 })),
        at: '2026-03-03T08:00:00.000Z',
      });
      await ledger.post(taken('use', '2026-03-03T09:00:00.000Z', 'spool/of', 100));
      await ledger.post(taken('use', '2026-03-04T09:00:00.000Z', 'spool/of', 30));
      await ledger.post(taken('count', '2026-03-04T10:00:00.000Z', 'spool/of', 7));
      await ledger.post(taken('use', '2026-03-04T11:00:00.000Z', 'spool/of', 12));
    });
    const since = (moment: string) =>
      store.read(({ ledger }) => ledger.outflow({ accountPrefix: 'spool/', what: 'use', since: moment }));
    const own = (rows: Awaited<ReturnType<typeof since>>) =>
      rows.filter(({ item, unit }) => item === 'wire/outflow' && unit === 'mg');
    expect(own(await since('2026-03-04T00:00:00.000Z'))).toEqual([
      { item: 'wire/outflow', unit: 'mg', quantity: 42 },
    ]);
    expect(own(await since('2026-03-01T00:00:00.000Z'))).toEqual([
      { item: 'wire/outflow', unit: 'mg', quantity: 142 },
    ]);
    expect(own(await since('2026-03-05T00:00:00.000Z'))).toEqual([]);
  });

  it('tells one balance: of a lot, of all lots, of wire by weight or by length', async () => {
    const lots = ['sum-1', 'sum-2'];
    for (const lotId of lots)
      await post(
        makeStrings({ string: { stringKey: 'sum', lotId }, runId: 'r', binId: 'sum', good: 4, scrap: [] })!,
      );
    await post(receiveWire({ spoolId: 'sum', wireId: 'sum', mg: 2_000_000, unitWeightKgPerM: 0.001 }));
    const told = await store.read(async ({ ledger }) => [
      await ledger.balance('bin/sum', 'string/sum', 'sum-1'),
      await ledger.balance('bin/sum', 'string/sum'),
      await ledger.balance('spool/sum', 'wire/sum'),
      await ledger.balance('spool/sum', 'wire/sum', 'sum', 'mm'),
      await ledger.balance('spool/nowhere', 'wire/sum'),
    ]);
    expect(told).toEqual([4, 8, 2_000_000, 2_000_000, 0]);
  });

  it('refuses to overdraw with what is missing, and leaves nothing of the attempt behind', async () => {
    const string = { stringKey: 'few', lotId: 'few' };
    await post(makeStrings({ string, runId: 'r', binId: 'few', good: 3, scrap: [] })!);
    const before = [await balances(), await everyPage({ limit: 500 })];
    const move = moveStrings({ string, fromBinId: 'few', toBinId: 'a', count: 5 });
    await expect(post(move)).rejects.toMatchObject({
      name: 'Overdrawn',
      account: 'bin/few',
      item: 'string/few',
      lot: 'few',
      missing: 2,
    });
    expect([await balances(), await everyPage({ limit: 500 })]).toEqual(before);
  });

  it('takes nothing that breaks a law', async () => {
    const string = { stringKey: 'few', lotId: 'few' };
    const count = countDifference({ string, binId: 'few', onBook: 3, counted: 2, reason: 'x' })!;
    await expect(post({ ...count, entries: count.entries.slice(1) })).rejects.toThrow(/unbalanced/);
    await expect(post({ ...count, reason: '' })).rejects.toThrow(/without-reason/);
    await expect(post({ ...count, entries: [] })).rejects.toThrow(/nothing-moved/);
  });

  it('never gives away more than there is, with two writers racing', async () => {
    const other = await openStore(place);
    try {
      const string = { stringKey: 'raced', lotId: 'raced' };
      await post(makeStrings({ string, runId: 'r', binId: 'raced', good: 60, scrap: [] })!);
      const pick = pickString({ string, binId: 'raced', orderId: 'raced', packId: 'raced' });
      const tries = Array.from({ length: 100 }, (_, index) => post(pick, index % 2 ? store : other));
      const ends = await Promise.allSettled(tries);
      const refused = ends.flatMap((end) => (end.status === 'rejected' ? [end.reason] : []));
      expect(refused).toHaveLength(40);
      expect(refused.every((reason) => reason instanceof Overdrawn)).toBe(true);
      expect(await balances({ account: 'bin/raced' })).toEqual([]);
      expect(await balances({ account: 'order/raced' })).toMatchObject([{ quantity: 60 }]);
      expect(await breaches()).toEqual([]);
    } finally {
      await other.close();
    }
  });

  it('keeps balances right where two writers move to and fro between the same accounts', async () => {
    const other = await openStore(place);
    try {
      const string = { stringKey: 'swung', lotId: 'swung' };
      for (const binId of ['left', 'right'])
        await post(makeStrings({ string, runId: 'r', binId, good: 20, scrap: [] })!);
      const move = (fromBinId: string, toBinId: string) =>
        moveStrings({ string, fromBinId, toBinId, count: 1 });
      await Promise.all(
        Array.from({ length: 40 }, (_, index) =>
          index % 2 ? post(move('left', 'right')) : post(move('right', 'left'), other),
        ),
      );
      expect(await balances({ item: 'string/swung', accountPrefix: 'bin/' })).toMatchObject([
        { account: 'bin/left', quantity: 20 },
        { account: 'bin/right', quantity: 20 },
      ]);
    } finally {
      await other.close();
    }
  });

  it('sees it when a law was broken behind its back', async () => {
    const broken = await engine.open();
    try {
      const thing = { item: 'string/46', lot: 'of', unit: 'pieces' };
      await broken.write(async ({ tables }) => {
        const row = { at: AT, by: 'console', what: 'move', reason: '', of_kind: 'bin', of_id: 'a' };
        await tables.fill('movements', [
          { ...row, number: 1, id: 'm-1' },
          { ...row, number: 2, id: 'm-2' },
        ]);
        await tables.fill('movement_entries', [
          { movement_number: 1, line: 1, account: 'bin/a', ...thing, quantity: -5 },
          { movement_number: 1, line: 2, account: 'customer', ...thing, quantity: 5 },
          { movement_number: 2, line: 1, account: 'bin/a', ...thing, quantity: 9 },
        ]);
        await tables.fill('balances', [
          { account: 'bin/a', ...thing, quantity: 4 },
          { account: 'customer', ...thing, quantity: 7 },
        ]);
      });
      expect(await broken.read((tx) => tx.ledger.breaches())).toEqual([
        { law: 'unbalanced', movementId: 'm-2', account: '', ...thing, quantity: 9 },
        { law: 'other-balance', movementId: '', account: 'customer', ...thing, quantity: 2 },
        { law: 'below-zero', movementId: 'm-1', account: 'bin/a', ...thing, quantity: -5 },
      ]);
    } finally {
      await broken.close();
    }
  });
});
