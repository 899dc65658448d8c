import { afterAll, beforeAll, describe, expect, expectTypeOf, it } from 'vitest';
import {
  type BodyOf,
  type Client,
  createClient,
  DEFINITIONS,
  type InputNamed,
  type StoredRecord,
  TOKEN_SCOPES,
} from '../../src/contract/index.js';
import { newId, USE_CASES } from '../../src/workshop/index.js';
import { type ShopServer, shopServer } from './shop-server.js';

let shop: ShopServer;
let client: Client;

beforeAll(async () => {
  shop = await shopServer();
  await shop.server.listen({ host: '127.0.0.1', port: 0 });
  client = createClient({
    fetch,
    origin: shop.server.listeningOrigin,
    token: await shop.tokenOf(['owner'], TOKEN_SCOPES),
  });
});
afterAll(() => shop.close());

const saved = async (name: string) => {
  const answer = await client.perform(
    'save-bin',
    { id: newId(), body: { name, walkOrder: 1, reorderLevel: 0 } },
    { requestId: newId() },
  );
  if (!answer.ok) throw new Error(answer.fault.detail);
  return answer.value;
};

describe('the typed client', () => {
  it('knows every use case of the shop by its name', () => {
    expect(Object.keys(DEFINITIONS).sort()).toEqual(
      USE_CASES.map(({ definition }) => definition.name).sort(),
    );
  });

  it('infers what goes in and what comes out', async () => {
    expectTypeOf<InputNamed<'receive-spool'>['grossKg']>().toEqualTypeOf<number>();
    expectTypeOf<InputNamed<'pause-run'>>().toEqualTypeOf<{ runId: string; expectedVersion: number }>();
    const bin = await saved('typed');
    expectTypeOf(bin.body.walkOrder).toEqualTypeOf<number>();
    const order = await client.get('order', newId());
    if (order.ok) expectTypeOf(order.value).toEqualTypeOf<StoredRecord<BodyOf<'order'>>>();
    expect(order).toMatchObject({ ok: false, fault: { status: 404, code: 'record.missing' } });
  });

  it('does, lists, gets and reads', async () => {
    const bin = await saved('listed & found');
    expect(await client.get('bin', bin.id)).toEqual({ ok: true, value: bin });
    const list = await client.list('bin', { name: 'listed & found', limit: 5, state: undefined });
    expect(list).toEqual({ ok: true, value: { items: [bin] } });
    expect(await client.versions('bin', bin.id)).toEqual({ ok: true, value: { items: [bin] } });
    expect(await client.read('balances', { accountPrefix: 'bin/' })).toEqual({
      ok: true,
      value: { items: [] },
    });
    const journal = await client.read('journal', { recordId: bin.id });
    expect(journal).toMatchObject({ ok: true, value: { items: [{ useCase: 'save-bin' }] } });
  });

  it('gives the same answer to a repeat with the same id', async () => {
    const requestId = newId();
    const input = { id: newId(), body: { name: 'repeated', walkOrder: 1, reorderLevel: 0 } };
    const first = await client.perform('save-bin', input, { requestId });
    expect(first.ok).toBe(true);
    expect(await client.perform('save-bin', input, { requestId })).toEqual(first);
  });

  it('shows two people who change the same record both versions', async () => {
    const { id } = await saved('shared');
    const change = (name: string) =>
      client.perform(
        'save-bin',
        { id, expectedVersion: 1, body: { name, walkOrder: 1, reorderLevel: 0 } },
        { requestId: newId() },
      );
    const [one, other] = await Promise.all([change('mine'), change('yours')]);
    const [won, lost] = one.ok ? [one, other] : [other, one];
    expect(won).toMatchObject({ ok: true, value: { version: 2 } });
    expect(lost).toMatchObject({
      ok: false,
      fault: { status: 412, code: 'stale-version', current: { version: 2 }, yours: { expectedVersion: 1 } },
    });
  });

  it('says so where nobody answers, and where somebody else does', async () => {
    const lost = createClient({ fetch: () => Promise.reject(new TypeError('fetch failed')) });
    expect(await lost.list('bin')).toMatchObject({
      ok: false,
      fault: { status: 0, code: 'network.no-answer' },
    });
    const foreign = createClient({
      fetch: async () => ({ status: 502, text: async () => '<h1>Bad gateway</h1>' }),
    });
    expect(await foreign.list('bin')).toMatchObject({
      ok: false,
      fault: { status: 502, code: 'network.foreign-answer' },
    });
  });
});
