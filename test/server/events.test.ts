import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { PERMISSIONS, TOKEN_SCOPES } from '../../src/contract/index.js';
import { computerClock, newId, performMany, saveBin } from '../../src/workshop/index.js';
import { listenTo, stopListening } from './listen-to.js';
import { type ShopServer, shopServer } from './shop-server.js';

let shop: ShopServer;
let token: string;

const open = async (beatMs?: number) => {
  shop = await shopServer(beatMs === undefined ? {} : { beatMs });
  token = await shop.tokenOf(['owner'], TOKEN_SCOPES);
  await shop.server.listen({ host: '127.0.0.1', port: 0 });
};
const openAnew = async (beatMs: number) => {
  await shop.close();
  await open(beatMs);
};

beforeEach(() => open());
afterEach(async () => {
  stopListening();
  await shop.close();
});

const listen = (headers: Readonly<Record<string, string>> = { authorization: `Bearer ${token}` }) =>
  listenTo(shop.server, headers);

async function newBin(name: string): Promise<string> {
  const id = newId();
  await shop.prepare('save-bin', { id, body: { name, walkOrder: 1, reorderLevel: 0 } });
  return id;
}

/** In one transaction: a disk that is waited for a thousand times is not what is looked at here. */
async function manyBins(count: number): Promise<readonly string[]> {
  const ids = Array.from({ length: count }, newId);
  const actor = { by: 'console', permissions: new Set(PERMISSIONS) };
  const made = await performMany(shop.store, { actor, clock: computerClock, newId }, async (ask) => {
    for (const [at, id] of ids.entries())
      await ask(saveBin, { id, body: { name: `bin ${at}`, walkOrder: 1, reorderLevel: 0 } });
  });
  expect(made.ok).toBe(true);
  return ids;
}

describe('who listens to events', () => {
  it('first hears where it stands, then of every change, with the number of each as its id', async () => {
    const listener = await listen();
    expect(listener.stream.statusCode).toBe(200);
    expect(listener.stream.headers['content-type']).toBe('text/event-stream; charset=utf-8');
    expect(listener.stream.headers['content-security-policy']).toContain("default-src 'none'");
    const [here] = await listener.until(1);
    expect(here).toMatchObject({ event: 'here', data: '{}' });
    const first = await newBin('A');
    const second = await newBin('B');
    const [, one, two] = await listener.until(3);
    expect(JSON.parse(one!.data!)).toMatchObject({
      topic: 'bin',
      recordId: first,
      version: 1,
      useCase: 'save-bin',
    });
    expect(JSON.parse(two!.data!)).toMatchObject({ recordId: second });
    expect(Number(two!.id)).toBeGreaterThan(Number(one!.id));
    expect(Number(one!.id)).toBeGreaterThan(Number(here!.id));
  });

  it('resumes after the last one that it has: none missed, none twice', async () => {
    const before = await listen();
    const [here] = await before.until(1);
    const ids = [...(await manyBins(1203))];
    const after = await listen({ authorization: `Bearer ${token}`, 'last-event-id': here!.id! });
    ids.push(await newBin('one more while it catches up'));
    const heard = (await after.until(1 + ids.length)).slice(1);
    expect(heard.map(({ data }) => JSON.parse(data!).recordId)).toEqual(ids);
    expect((await before.until(1 + ids.length)).slice(1)).toEqual(heard);
  });

  it('is told to start over where its number was never given', async () => {
    const listener = await listen({ authorization: `Bearer ${token}`, 'last-event-id': '999999' });
    const [first] = await listener.until(1);
    expect(first!.event).toBe('start-over');
    expect(Number(first!.id)).toBeLessThan(999_999);
  });

  it('hears only of what it may read', async () => {
    const packer = await shop.tokenOf(['packer'], ['events.read', 'order.read']);
    const listener = await listen({ authorization: `Bearer ${packer}` });
    await listener.until(1);
    await newBin('for others');
    await shop.prepare('record-dry-room', {
      id: newId(),
      room: 'r',
      temperatureC: 20,
      relativeHumidity: 0.5,
    });
    // What it may read comes after what it may not, so the order shows that the others were left out.
    const orderId = newId();
    await shop.store.write(async (tx) =>
      tx.events.append([
        {
          topic: 'order',
          recordId: orderId,
          version: 1,
          useCase: 'save-order',
          at: '2031-01-01T00:00:00.000Z',
        },
      ]),
    );
    const heard = await listener.until(2);
    expect(heard.slice(1).map(({ data }) => JSON.parse(data!).recordId)).toEqual([orderId]);
  });

  it('gets signs of life', async () => {
    await openAnew(25);
    const listener = await listen();
    await listener.whenever(() => listener.text().includes(': still here'));
  });

  it('is let go when its token is revoked', async () => {
    await openAnew(25);
    const { id: personId } = await shop.invite('winder');
    const made = await shop.prepare('make-token', {
      id: newId(),
      personId,
      name: 'screen',
      scopes: ['events.read'],
    });
    const listener = await listen({ authorization: `Bearer ${made.secret as string}` });
    await listener.until(1);
    await shop.prepare('revoke-token', { id: (made.token as { readonly id: string }).id });
    await listener.ended;
    expect(listener.events().at(-1)).toMatchObject({ event: 'sign-in-ended' });
  });

  it('is let go when its person signs out, at once', async () => {
    await openAnew(3_600_000);
    const cookie = await shop.sessionOf(['coiler']);
    const listener = await listen({ cookie });
    await listener.until(1);
    const out = await shop.server.inject({
      method: 'POST',
      url: '/api/v1/sign-out',
      headers: { cookie, origin: 'http://localhost' },
    });
    expect(out.statusCode).toBe(200);
    await listener.ended;
    expect(listener.events().at(-1)).toMatchObject({ event: 'sign-in-ended' });
  });

  it.each([['-1'], ['1.5'], ['x'], ['99999999999999999999']])('is refused with the id %s', async (id) => {
    const answer = await shop.server.inject({
      url: '/api/v1/events',
      headers: { authorization: `Bearer ${token}`, 'last-event-id': id },
    });
    expect(answer.json()).toMatchObject({ status: 400, code: 'events.unreadable-id' });
  });

  it('is let go when the server stops, which does not wait for it', async () => {
    const listener = await listen();
    await listener.until(1);
    await shop.server.close();
    await listener.ended;
    expect(listener.stream.complete).toBe(true);
  });
});
