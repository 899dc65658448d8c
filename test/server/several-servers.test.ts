import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { TOKEN_SCOPES } from '../../src/contract/index.js';
import { openStore, type Store } from '../../src/store/index.js';
import { newId } from '../../src/workshop/index.js';
import { engines } from '../store/harness.js';
import { listenTo, stopListening } from './listen-to.js';
import { type ShopServer, shopServer } from './shop-server.js';

describe.each(engines())('two servers of one shop on $name', ({ place }) => {
  let stores: Store[];
  let here: ShopServer;
  let there: ShopServer;
  let token: string;

  beforeEach(async () => {
    const where = await place();
    stores = [await openStore(where), await openStore(where)];
    here = await shopServer({ store: stores[0]!, beatMs: 25 });
    there = await shopServer({ store: stores[1]!, beatMs: 25 });
    await there.server.listen({ host: '127.0.0.1', port: 0 });
    token = await here.tokenOf(['owner'], TOKEN_SCOPES);
  });
  afterEach(async () => {
    stopListening();
    await Promise.all([here.close(), there.close()]);
    await Promise.all(stores.map((store) => store.close()));
  });

  const newBin = async (server: ShopServer, name: string) => {
    const id = newId();
    await server.prepare('save-bin', { id, body: { name, walkOrder: 1, reorderLevel: 0 } });
    return id;
  };

  it('tell each other’s listeners what changes, in order, each once', async () => {
    const listener = await listenTo(there.server, { authorization: `Bearer ${token}` });
    const [first] = await listener.until(1);
    const ids = [];
    for (let number = 0; number < 20; number += 1) {
      ids.push(await newBin(number % 3 === 0 ? there : here, `bin ${number}`));
    }
    const heard = (await listener.until(1 + ids.length)).slice(1);
    expect(heard.map(({ data }) => JSON.parse(data!).recordId)).toEqual(ids);

    const resumed = await listenTo(there.server, {
      authorization: `Bearer ${token}`,
      'last-event-id': first!.id!,
    });
    expect((await resumed.until(1 + ids.length)).slice(1)).toEqual(heard);
  });

  it('let go whose token was revoked at the other', async () => {
    const { id: personId } = await here.invite('winder');
    const wish = { id: newId(), personId, name: 'screen', scopes: ['events.read'] };
    const { secret } = await here.prepare('make-token', wish);
    const listener = await listenTo(there.server, { authorization: `Bearer ${secret as string}` });
    await listener.until(1);
    await here.prepare('revoke-token', { id: wish.id });
    await listener.ended;
    expect(listener.events().at(-1)).toMatchObject({ event: 'sign-in-ended' });
  });

  it('do a request once that is sent to both', async () => {
    const question = { id: newId(), body: { name: 'once', walkOrder: 1, reorderLevel: 0 } };
    const headers = { authorization: `Bearer ${token}`, 'idempotency-key': newId() };
    const ask = ({ server }: ShopServer) =>
      server.inject({ method: 'POST', url: '/api/v1/bins/save', payload: question, headers });
    const [one, other] = await Promise.all([ask(here), ask(there)]);
    expect([one.statusCode, other.statusCode]).toEqual([200, 200]);
    expect(one.json()).toEqual(other.json());
  });
});
