import { get, type IncomingMessage, request } from 'node:http';
import type { AddressInfo } from 'node:net';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { TOKEN_SCOPES } from '../../src/contract/index.js';
import { StoreUnavailable } from '../../src/store/index.js';
import { newId } from '../../src/workshop/index.js';
import { type ShopServer, shopServer } from './shop-server.js';

let shop: ShopServer;
let token: string;
let lines: string[];

beforeEach(async () => {
  lines = [];
  shop = await shopServer({ log: { level: 'info', stream: { write: (line) => void lines.push(line) } } });
  token = await shop.tokenOf(['owner'], TOKEN_SCOPES);
});
afterEach(() => shop.close());

const ask = (url: string, headers: Readonly<Record<string, string>> = {}) =>
  shop.server.inject({ url, headers: { authorization: `Bearer ${token}`, ...headers } });

/** A store whose reads fail so, in place of the real one's. */
function break_(thrown: Error): void {
  Object.assign(shop.store, {
    read: () => Promise.reject(thrown),
    write: () => Promise.reject(thrown),
  });
}

describe('a server in trouble', () => {
  it('is alive and ready while the store answers', async () => {
    expect((await shop.server.inject('/healthz')).json()).toEqual({ status: 'ok' });
    expect((await shop.server.inject('/readyz')).json()).toEqual({ status: 'ready' });
  });

  it('is alive but not ready where the store does not answer, and says which part it is', async () => {
    break_(new StoreUnavailable('store.lost', 'connection to db.internal refused'));
    expect((await shop.server.inject('/healthz')).statusCode).toBe(200);
    const ready = await shop.server.inject('/readyz');
    expect([ready.statusCode, ready.json()]).toEqual([
      503,
      { status: 'not-ready', parts: [{ part: 'store', trouble: 'store.lost' }] },
    ]);
  });

  it('tells that the store is out, and when to come back, but not where it stands', async () => {
    break_(new StoreUnavailable('store.disk-full', '/var/lib/shop.db'));
    const answer = await ask('/api/v1/bins');
    expect(answer.statusCode).toBe(503);
    expect(answer.headers['retry-after']).toBe('5');
    expect(answer.json()).toMatchObject({
      code: 'store.disk-full',
      detail: expect.stringMatching(/disk is full/),
    });
    expect(answer.body).not.toContain('/var/lib');
    expect(lines.join('')).toContain('/var/lib/shop.db');
  });

  it('keeps its own faults to its log', async () => {
    break_(new Error('no such column: orders.playr'));
    const answer = await ask('/api/v1/bins');
    expect(answer.json()).toMatchObject({ status: 500, code: 'http.our-fault' });
    expect(answer.body).not.toMatch(/playr|\.ts:/);
    const told = lines.map((line) => JSON.parse(line)).find(({ level }) => level >= 50);
    expect(told).toMatchObject({
      reqId: answer.json().requestId,
      err: { message: expect.stringContaining('playr') },
    });
  });
});

describe('the log', () => {
  it('has a line for each request: what, how it ended, how long, and who', async () => {
    const answer = await ask('/api/v1/bins?search=Jorla');
    const line = lines.map((text) => JSON.parse(text)).at(-1);
    expect(line).toMatchObject({
      msg: 'answered',
      reqId: answer.headers['x-request-id'],
      req: { method: 'GET', path: '/api/v1/bins' },
      status: 200,
      ms: expect.any(Number),
      by: expect.stringMatching(/^token\//),
    });
  });

  it('has no secret in it, and nothing that was sent', async () => {
    const { link } = await shop.invite('winder');
    const password = 'a crooked brass pitch';
    const send = (url: string, payload: object, headers: Readonly<Record<string, string>> = {}) =>
      shop.server.inject({ method: 'POST', url: `/api/v1${url}`, payload, headers });
    const signedIn = await send('/set-password', { link, password });
    const cookie = String(signedIn.headers['set-cookie']).split(';')[0]!;
    await send('/set-pin', { password, pin: '483920' }, { cookie, origin: 'http://localhost:80' });
    await send('/sign-in', { name: 'Nobody at all', password: 'wrong as can be' });
    await send(`/sign-in?password=${encodeURIComponent(password)}`, { name: 1, password });
    await ask('/api/v1/me', { authorization: 'Bearer twk_not.a-token' });
    await ask('/api/v1/bins');
    const text = lines.join('');
    for (const secret of [link, password, encodeURIComponent(password), '483920', 'wrong as can be', token])
      expect(text).not.toContain(secret);
    expect(text).not.toContain(cookie.split('=')[1]);
    expect(text).not.toContain('twk_not');
    expect(text).not.toContain('Nobody at all');
  });
});

describe('a server that is told to stop', () => {
  const listening = async () => {
    await shop.server.listen({ host: '127.0.0.1', port: 0 });
    return (shop.server.server.address() as AddressInfo).port;
  };

  it('finishes what is in hand, and lets the connection go with the answer', async () => {
    const port = await listening();
    let letGo = () => {};
    const held = new Promise<void>((resolve) => {
      letGo = resolve;
    });
    const { write } = shop.store;
    const begun = new Promise<void>((resolve) => {
      Object.assign(shop.store, {
        write: async (work: never) => {
          resolve();
          await held;
          return write(work);
        },
      });
    });
    const id = newId();
    const answered = new Promise<IncomingMessage>((resolve, reject) => {
      const headers = {
        authorization: `Bearer ${token}`,
        'content-type': 'application/json',
        'idempotency-key': newId(),
      };
      const asking = request({ port, method: 'POST', path: '/api/v1/bins/save', headers }, resolve);
      asking.on('error', reject);
      asking.end(JSON.stringify({ id, body: { name: 'in hand', walkOrder: 1, reorderLevel: 0 } }));
    });
    await begun;
    const closed = shop.server.close();
    letGo();
    const answer = await answered;
    answer.resume();
    await closed;
    expect(answer.statusCode).toBe(200);
    expect(answer.headers.connection).toBe('close');
    const kept = await shop.store.read(({ records }) => records.get('bin', id));
    expect(kept?.body.name).toBe('in hand');
  });

  it('is not kept from it by a connection that only waits', async () => {
    const port = await listening();
    const answer = await new Promise<IncomingMessage>((resolve, reject) => {
      get({ port, path: '/healthz', headers: { connection: 'keep-alive' } }, resolve).on('error', reject);
    });
    answer.resume();
    await new Promise((resolve) => answer.on('end', resolve));
    await shop.server.close();
    expect(shop.server.server.listening).toBe(false);
  });
});
