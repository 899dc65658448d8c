import Type from 'typebox';
import { describe, expect, it } from 'vitest';
import { defineUseCase, permissionsOf, secretText } from '../../src/contract/index.js';
import { fail, succeed } from '../../src/core/foundation/index.js';
import type { StoredEvent } from '../../src/store/index.js';
import {
  type Clock,
  newId,
  perform,
  performMany,
  receiveSpool,
  shopClock,
  useCase,
  weighSpool,
} from '../../src/workshop/index.js';
import { engines } from '../store/harness.js';
import { SmallShop } from './small-shop.js';

/** Writes a bin and then, where it is told to, fails in one way or another. */
const halfway = useCase(
  defineUseCase({
    name: 'halfway',
    summary: 'Write a bin, then fail',
    permission: 'shop.edit',
    path: '/tests/halfway',
    input: Type.Object({ id: Type.String(), ending: Type.String() }, { additionalProperties: false }),
    output: Type.Object({ id: Type.String() }),
  }),
  async ({ tx, now }, { id, ending }) => {
    await tx.records.insert('bin', { id, body: { name: id, walkOrder: 1, reorderLevel: 0 }, at: now });
    if (ending === 'refuse') return fail({ code: 'test.refused' });
    if (ending === 'throw') throw new Error('the program is wrong');
    if (ending === 'overdraw') {
      const entry = { item: 'string/x', lot: 'l', unit: 'pieces' } as const;
      await tx.ledger.post({
        id,
        at: now,
        by: 'console',
        what: 'move',
        reason: '',
        ofKind: 'bin',
        ofId: id,
        entries: [
          { account: 'bin/a', ...entry, quantity: -1 },
          { account: 'bin/b', ...entry, quantity: 1 },
        ],
      });
    }
    return succeed({ id });
  },
);

const secretive = useCase(
  defineUseCase({
    name: 'secretive',
    summary: 'Take a secret and give one',
    permission: 'shop.edit',
    path: '/tests/secretive',
    input: Type.Object({ name: Type.String(), pin: secretText('a PIN') }),
    output: Type.Object({ token: secretText('shown once') }),
  }),
  async () => succeed({ token: 'tell-nobody' }),
);

describe.each(engines())('a use case on $name', (engine) => {
  const open = () => SmallShop.open(engine);

  const binsNamed = (shop: SmallShop, id: string) => shop.store.read(({ records }) => records.get('bin', id));

  const spoolInput = (shop: SmallShop) => ({
    id: newId(),
    wireId: shop.wires.core,
    name: `C-${newId()}`,
    lot: 'H1',
    grossKg: 2.5,
    tareKg: 0.5,
  });

  it('needs its permission, before anything else is looked at', async () => {
    const shop = await open();
    const actor = { by: 'person/x', permissions: permissionsOf(['packer']) };
    expect(await shop.refused(receiveSpool, { nonsense: true } as never, { actor })).toEqual({
      code: 'permission.missing',
      permission: 'wire.receive',
    });
  });

  it('is told everything that is wrong with its input, each with its place', async () => {
    const shop = await open();
    const { lot: _, ...input } = { ...spoolInput(shop), grossKg: null, colour: 'red' };
    const fault = await shop.refused(receiveSpool, input as never);
    expect(fault).toMatchObject({ code: 'input.invalid' });
    const problems = fault.problems as readonly { path: string; message: string }[];
    expect(problems.map(({ path }) => path).sort()).toEqual(['/', '/colour', '/grossKg']);
    expect(problems).toContainEqual({ path: '/', message: 'lacks lot' });
  });

  it.each(['refuse', 'throw', 'overdraw'])(
    'leaves nothing half done where it ends in: %s',
    async (ending) => {
      const shop = await open();
      const id = newId();
      const before = await shop.everything();
      const asked = shop.ask(halfway, { id, ending });
      if (ending === 'throw') await expect(asked).rejects.toThrow('the program is wrong');
      else expect((await asked).ok).toBe(false);
      expect(await binsNamed(shop, id)).toBeUndefined();
      expect(await shop.everything()).toBe(before);
    },
  );

  it('turns what the store throws into faults', async () => {
    const shop = await open();
    const id = newId();
    expect(await shop.refused(halfway, { id, ending: 'overdraw' })).toEqual({
      code: 'stock.overdrawn',
      account: 'bin/a',
      item: 'string/x',
      lot: 'l',
      missing: 1,
    });
    await shop.done(halfway, { id, ending: '' });
    expect(await shop.refused(halfway, { id, ending: '' })).toMatchObject({ code: 'taken', kind: 'bin' });
  });

  it('stands in the journal with who, when, what was asked and what it touched', async () => {
    const shop = await open();
    const input = spoolInput(shop);
    await shop.done(receiveSpool, input);
    const { items } = await shop.store.read(({ journal }) => journal.list({ recordId: input.id, limit: 10 }));
    expect(items).toMatchObject([{ useCase: 'receive-spool', by: `person/${shop.winder}`, input }]);
    expect(items[0]!.touched).toEqual([
      { kind: 'spool', id: input.id, version: 1 },
      { kind: 'movement', id: expect.any(String), version: 1 },
    ]);
  });

  it('tells other screens of every record that it touched, once it is done', async () => {
    const shop = await open();
    const told: StoredEvent[] = [];
    // Those of the furnishing may still be on their way.
    const isOurs = (event: StoredEvent) => event.useCase !== 'save-recipe';
    const stop = shop.store.onEvents((events) => void told.push(...events.filter(isOurs)));
    const { id } = await shop.done(receiveSpool, spoolInput(shop));
    await shop.refused(halfway, { id: newId(), ending: 'refuse' });
    await shop.done(weighSpool, { spoolId: id, expectedVersion: 1, grossKg: 2.4 });
    await expect.poll(() => told.length, { timeout: 20_000 }).toBe(4);
    stop();
    expect(told.map(({ topic, version }) => [topic, version])).toEqual([
      ['spool', 1],
      ['movement', 1],
      ['movement', 1],
      ['spool', 2],
    ]);
  });

  it('keeps a secret out of the journal and out of what is kept for a repeat', async () => {
    const shop = await open();
    const requestId = newId();
    const input = { name: 'tablet', pin: '246813' };
    expect(await shop.ask(secretive, input, { requestId })).toEqual(succeed({ token: 'tell-nobody' }));
    const { items } = await shop.store.read(({ journal }) => journal.list({ limit: 1 }));
    expect(items).toMatchObject([{ useCase: 'secretive', input: { name: 'tablet', pin: '(left out)' } }]);
    const kept = await shop.store.write(({ repeats }) => repeats.find(requestId));
    expect(JSON.stringify(kept)).not.toMatch(/tell-nobody|246813/);
    const again = await shop.ask(secretive, input, { requestId });
    expect(again).toMatchObject({ ok: false, fault: { code: 'repeat.shown-once' } });
  });

  describe('that is asked again with the same request id', () => {
    it('gives the same answer, and changes nothing', async () => {
      const shop = await open();
      const input = spoolInput(shop);
      const requestId = newId();
      const first = await shop.ask(receiveSpool, input, { requestId });
      await shop.done(weighSpool, { spoolId: input.id, expectedVersion: 1, grossKg: 2.4 });
      const before = await shop.everything();
      // Written in another order, it is the same question.
      const reversed = Object.fromEntries(Object.entries(input).reverse()) as typeof input;
      expect(await shop.ask(receiveSpool, reversed, { requestId })).toEqual(first);
      expect(await shop.everything()).toBe(before);
    });

    it('is refused where it asks for something else', async () => {
      const shop = await open();
      const input = spoolInput(shop);
      const requestId = newId();
      await shop.ask(receiveSpool, input, { requestId });
      const other = await shop.ask(receiveSpool, { ...input, grossKg: 2.6 }, { requestId });
      expect(other).toMatchObject({
        ok: false,
        fault: { code: 'repeat.different', useCase: 'receive-spool' },
      });
      const otherCase = await shop.ask(halfway, { id: newId(), ending: '' }, { requestId });
      expect(otherCase).toMatchObject({ ok: false, fault: { code: 'repeat.different' } });
    });

    it('is done once where both come at the same moment', async () => {
      const shop = await open();
      const spoolId = await shop.spool(shop.wires.core, 2);
      const weigh = { spoolId, expectedVersion: 1, grossKg: 2.4 };
      const requestId = newId();
      const both = await Promise.all([1, 2, 3].map(() => shop.ask(weighSpool, weigh, { requestId })));
      expect(both[0]).toMatchObject({ ok: true, value: { differenceMg: -100_000 } });
      expect(both[1]).toEqual(both[0]);
      expect(both[2]).toEqual(both[0]);
    });

    it('may be done after it was refused: a refusal is no answer to keep', async () => {
      const shop = await open();
      const input = spoolInput(shop);
      const requestId = newId();
      const actor = shop.as('packer');
      expect((await shop.ask(receiveSpool, input, { requestId, actor })).ok).toBe(false);
      expect((await shop.ask(receiveSpool, { ...input, tareKg: 2.5 }, { requestId })).ok).toBe(false);
      expect((await shop.ask(receiveSpool, input, { requestId })).ok).toBe(true);
    });
  });

  describe('among many in one transaction', () => {
    it('is done with all of them, each with its journal entry', async () => {
      const shop = await open();
      const performer = { actor: shop.as('owner'), clock: shop.clock, newId };
      const result = await performMany(shop.store, performer, async (ask) => {
        const spool = await ask(receiveSpool, spoolInput(shop));
        return ask(weighSpool, { spoolId: spool.id, expectedVersion: spool.version, grossKg: 2.4 });
      });
      expect(result).toMatchObject({ ok: true, value: { differenceMg: -100_000 } });
      const { items } = await shop.store.read(({ journal }) => journal.list({ limit: 2 }));
      expect(items.map((entry) => entry.useCase)).toEqual(['weigh-spool', 'receive-spool']);
    });

    it('is undone with all of them where one is refused', async () => {
      const shop = await open();
      const performer = { actor: shop.as('owner'), clock: shop.clock, newId };
      const before = await shop.everything();
      const result = await performMany(shop.store, performer, async (ask) => {
        const spool = await ask(receiveSpool, spoolInput(shop));
        return ask(weighSpool, { spoolId: spool.id, expectedVersion: 7, grossKg: 2.4 });
      });
      expect(result).toMatchObject({ ok: false, fault: { code: 'stale-version', expectedVersion: 7 } });
      expect(await shop.everything()).toBe(before);
    });
  });

  describe('and the clock', () => {
    const stopped = (now: string): Clock => ({ now: () => now });

    it('never writes a moment earlier than what is written, and says how far the computer is behind', async () => {
      const shop = await open();
      const { createdAt: lastWritten } = await shop.done(receiveSpool, spoolInput(shop));
      const wrong = stopped('2020-01-01T00:00:00.000Z');
      const clock = await shopClock(shop.store, wrong);
      expect(clock.now()).toBe(lastWritten);
      expect(clock.setBack()).toEqual({
        computerSays: '2020-01-01T00:00:00.000Z',
        lastWritten,
        behindMs: Date.parse(lastWritten) - Date.parse('2020-01-01T00:00:00.000Z'),
      });
      // Even a clock that knows nothing of what others wrote cannot write earlier.
      const asked = { actor: shop.as('owner'), clock: wrong, newId, input: spoolInput(shop) };
      const result = await perform(shop.store, receiveSpool, asked);
      expect(result).toMatchObject({ ok: true, value: { createdAt: lastWritten } });
    });

    it('follows the computer while that is ahead', async () => {
      const shop = await open();
      const clock = await shopClock(shop.store, stopped('2030-01-01T00:00:00.000Z'));
      expect(clock.now()).toBe('2030-01-01T00:00:00.000Z');
      expect(clock.setBack()).toBeUndefined();
    });
  });
});
