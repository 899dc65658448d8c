import { afterAll, beforeAll, expect, it } from 'vitest';
import { newId } from '../../src/workshop/index.js';
import { type ShopServer, shopServer } from './shop-server.js';

let shop: ShopServer;
let token: string;
beforeAll(async () => {
  shop = await shopServer();
  token = await shop.tokenOf(['owner'], ['dryroom.enter']);
});
afterAll(() => shop.close());

const send = (path: string, payload: object, key = newId()) =>
  shop.server.inject({
    method: 'POST',
    url: `/api/v1${path}`,
    headers: { authorization: `Bearer ${token}`, 'idempotency-key': key },
    payload,
  });

it('a sensor with a token for the dry room alone sends its readings, again where its line was lost, and they are there once', async () => {
  const reading = { at: '2020-06-01T10:20:00Z', temperatureC: 21.3, relativeHumidity: 0.42 };
  const report = { room: 'dry room', readings: [reading] };
  const key = newId();
  const first = await send('/dry-room/report', report, key);
  expect([first.statusCode, first.json()]).toEqual([200, { taken: 1, known: 0 }]);
  expect((await send('/dry-room/report', report, key)).json()).toEqual({ taken: 1, known: 0 });
  expect((await send('/dry-room/report', report)).json()).toEqual({ taken: 0, known: 1 });
  const kept = await shop.store.read(({ records }) => records.all('dry-room-reading'));
  expect(kept.map(({ body }) => body)).toEqual([
    { ...reading, at: '2020-06-01T10:20:00.000Z', room: 'dry room' },
  ]);
});

it('and may neither read the air nor write anything else', async () => {
  const read = await shop.server.inject({
    url: '/api/v1/dry-room-air',
    headers: { authorization: `Bearer ${token}` },
  });
  expect([read.statusCode, read.json().code]).toEqual([403, 'permission.missing']);
  const complaint = { id: newId(), player: 'Ilonek Copperstead', text: 'dull', faultCode: 'dull' };
  const written = await send('/complaints/register', complaint);
  expect([written.statusCode, written.json().code]).toEqual([403, 'permission.missing']);
});
