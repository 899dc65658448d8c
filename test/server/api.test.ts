import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { TOKEN_SCOPES } from '../../src/contract/index.js';
import { newId } from '../../src/workshop/index.js';
import { type ShopServer, shopServer } from './shop-server.js';

let shop: ShopServer;
let token: string;

beforeAll(async () => {
  shop = await shopServer();
  token = await shop.tokenOf(['owner'], TOKEN_SCOPES);
});
afterAll(() => shop.close());

type Headers = Readonly<Record<string, string>>;

const get = (url: string, headers: Headers = {}) =>
  shop.server.inject({ url: `/api/v1${url}`, headers: { authorization: `Bearer ${token}`, ...headers } });

/** A header given as empty is left out. */
const post = (url: string, payload: object | string, headers: Headers = {}) => {
  const usual = {
    authorization: `Bearer ${token}`,
    'idempotency-key': newId(),
    'content-type': 'application/json',
  };
  const sent = Object.entries({ ...usual, ...headers }).filter(([, value]) => value !== '');
  return shop.server.inject({
    method: 'POST',
    url: `/api/v1${url}`,
    payload,
    headers: Object.fromEntries(sent),
  });
};

const binBody = (name: string, walkOrder = 1) => ({ name, walkOrder, reorderLevel: 0 });

async function newBin(name: string): Promise<string> {
  const id = newId();
  const answer = await post('/bins/save', { id, body: binBody(name) });
  expect(answer.statusCode, answer.body).toBe(200);
  return id;
}

describe('a record', () => {
  it('comes with its version as ETag, and not again to who has it', async () => {
    const id = await newBin('tagged');
    const first = await get(`/bins/${id}`);
    expect(first.headers.etag).toBe('"1"');
    expect(first.json()).toMatchObject({ id, version: 1, state: '', body: binBody('tagged') });
    for (const tags of ['"1"', '"7", W/"1"', '*']) {
      const again = await get(`/bins/${id}`, { 'if-none-match': tags });
      expect([again.statusCode, again.body]).toEqual([304, '']);
    }
    expect((await get(`/bins/${id}`, { 'if-none-match': '"2"' })).statusCode).toBe(200);
  });

  it('tells all its versions, the present one last', async () => {
    const id = await newBin('before');
    await post('/bins/save', { id, expectedVersion: 1, body: binBody('after') });
    const { items } = (await get(`/bins/${id}/versions`)).json();
    expect(
      items.map((one: { version: number; body: { name: string } }) => [one.version, one.body.name]),
    ).toEqual([
      [1, 'before'],
      [2, 'after'],
    ]);
  });

  it('is not found where there is none, and not looked for where the id is none', async () => {
    const answer = await get(`/bins/${newId()}`);
    expect(answer.statusCode).toBe(404);
    expect(answer.json()).toMatchObject({ code: 'record.missing', kind: 'bin' });
    expect((await get('/bins/mine')).json()).toMatchObject({ status: 400, code: 'input.invalid' });
  });

  it('of a person holds no secret', async () => {
    const { id } = await shop.invite('packer');
    const { body } = (await get(`/people/${id}`)).json();
    // A token never keeps people, so the list is not for it.
    expect(body).toBeUndefined();
    const stored = await shop.store.read(({ records }) => records.get('person', id));
    expect(Object.keys(stored!.body).sort()).toEqual(['active', 'name', 'roles']);
  });
});

describe('a list', () => {
  it('comes in pages that leave nothing out and tell nothing twice', async () => {
    const ids = [];
    for (const number of [1, 2, 3, 4, 5]) ids.push(await newBin(`page ${number}`));
    const seen: string[] = [];
    let next: string | undefined = '';
    while (next !== undefined) {
      const after: string = next === '' ? '' : `&after=${encodeURIComponent(next)}`;
      const page: { items: { id: string }[]; next?: string } = (
        await get(`/bins?search=page&order=oldest&limit=2${after}`)
      ).json();
      expect(page.items.length).toBeLessThanOrEqual(2);
      seen.push(...page.items.map(({ id }) => id));
      next = page.next;
    }
    expect(seen).toEqual(ids);
  });

  it('is narrowed by the keys of its kind', async () => {
    const id = await newBin('the only one');
    const { items } = (await get('/bins?name=the%20only%20one')).json();
    expect(items.map((one: { id: string }) => one.id)).toEqual([id]);
    expect((await get('/recipes?gaugeThou=10.5&state=on-trial')).json()).toEqual({ items: [] });
  });

  it.each([
    ['/bins?limit=0', '/limit'],
    ['/bins?limit=501', '/limit'],
    ['/bins?limit=1e2', '/limit'],
    ['/bins?limit=', '/limit'],
    ['/bins?limit=5&limit=6', '/limit'],
    ['/bins?colour=red', '/colour'],
    ['/runs?state=lost', '/state'],
    ['/trial-strings', '/'],
  ])('refuses %s, naming %s', async (url, path) => {
    const answer = await get(url);
    expect(answer.statusCode).toBe(400);
    expect(answer.json().problems.map((one: { path: string }) => one.path)).toContain(path);
  });

  it('refuses a cursor that it never gave', async () => {
    expect((await get('/bins?after=nonsense')).json()).toMatchObject({
      status: 400,
      code: 'cursor.unreadable',
    });
  });

  it('has the lives of records, and the journal', async () => {
    const { items } = (await get('/lives')).json();
    expect(items.find((life: { of: string }) => life.of === 'run')).toMatchObject({
      initial: 'planned',
      steps: { start: { from: ['planned'], to: 'running' } },
    });
    const id = await newBin('in the journal');
    const journal = (await get(`/journal?recordId=${id}`)).json();
    expect(journal.items).toHaveLength(1);
    expect(journal.items[0]).toMatchObject({
      useCase: 'save-bin',
      by: expect.stringMatching(/^token\//),
      touched: [{ kind: 'bin', id, version: 1 }],
    });
  });
});

describe('a write', () => {
  it('is done once, however often it is sent', async () => {
    const id = newId();
    const key = { 'idempotency-key': newId() };
    const question = { id, body: binBody('once') };
    const first = await post('/bins/save', question, key);
    const again = await post('/bins/save', question, key);
    expect(again.statusCode).toBe(200);
    expect(again.json()).toEqual(first.json());
    const different = await post('/bins/save', { id, body: binBody('twice') }, key);
    expect(different.json()).toMatchObject({ status: 422, code: 'repeat.different' });
  });

  it('needs an Idempotency-Key that is a UUID', async () => {
    const question = { id: newId(), body: binBody('keyless') };
    expect((await post('/bins/save', question, { 'idempotency-key': '' })).json()).toMatchObject({
      status: 400,
      code: 'idempotency-key.missing',
    });
    expect((await post('/bins/save', question, { 'idempotency-key': '12' })).json()).toMatchObject({
      status: 400,
      code: 'idempotency-key.unreadable',
    });
    expect((await get(`/bins/${question.id}`)).statusCode).toBe(404);
  });

  it('over a newer version is refused with both', async () => {
    const id = await newBin('one');
    await post('/bins/save', { id, expectedVersion: 1, body: binBody('two') });
    const stale = await post('/bins/save', { id, expectedVersion: 1, body: binBody('three') });
    expect(stale.statusCode).toBe(412);
    expect(stale.json()).toMatchObject({
      code: 'stale-version',
      expectedVersion: 1,
      yours: { id, expectedVersion: 1, body: binBody('three') },
      current: { id, version: 2, body: binBody('two') },
    });
    expect(stale.json().detail).toContain('version 1, it stands at 2');
  });

  it('takes the version from If-Match as well', async () => {
    const id = await newBin('a');
    const changed = await post('/bins/save', { id, body: binBody('b') }, { 'if-match': '"1"' });
    expect([changed.statusCode, changed.headers.etag]).toEqual([200, '"2"']);
    const stale = await post('/bins/save', { id, body: binBody('c') }, { 'if-match': '"1"' });
    expect(stale.json()).toMatchObject({ status: 412, expectedVersion: 1, current: { version: 2 } });
  });

  it.each([
    ['W/"1"', {}, 'version.unreadable'],
    ['*', {}, 'version.unreadable'],
    ['"1"', { expectedVersion: 2 }, 'version.contradicts'],
  ])('refuses If-Match %s with %j', async (tag, more, code) => {
    const answer = await post(
      '/bins/save',
      { id: newId(), body: binBody('x'), ...more },
      { 'if-match': tag },
    );
    expect(answer.json()).toMatchObject({ status: 400, code });
  });

  it('that changes something must say which version was seen', async () => {
    const answer = await post('/runs/pause', { runId: newId() });
    expect(answer.json()).toMatchObject({ status: 428, code: 'version.needed' });
  });

  it('refuses a version where none is looked at', async () => {
    const climate = { id: newId(), room: 'store', temperatureC: 20, relativeHumidity: 0.4 };
    const answer = await post('/dry-room/readings', climate, { 'if-match': '"1"' });
    expect(answer.json()).toMatchObject({ status: 400, code: 'version.not-used' });
  });

  it('turns nothing into what it is not, drops nothing, and tells everything that is wrong', async () => {
    const answer = await post('/dry-room/readings', {
      id: 'x',
      room: null,
      temperatureC: null,
      relativeHumidity: '0.4',
      colour: 'red',
    });
    expect(answer.statusCode).toBe(400);
    const paths = answer.json().problems.map((one: { path: string }) => one.path);
    expect([...new Set(paths)].sort()).toEqual([
      '/colour',
      '/id',
      '/relativeHumidity',
      '/room',
      '/temperatureC',
    ]);
  });

  it.each([[true], [null], [[3]], ['254'], ['']])('never takes %j for a number', async (temperatureC) => {
    const climate = { id: newId(), room: 'store', temperatureC, relativeHumidity: 0.4 };
    const answer = await post('/dry-room/readings', climate);
    expect(answer.json()).toMatchObject({ status: 400, problems: [{ path: '/temperatureC' }] });
  });

  it('refused by the shop tells its code, its facts, and what to do, in words', async () => {
    const answer = await post('/strings/move', {
      lotId: newId(),
      fromBinId: await newBin('from'),
      toBinId: await newBin('to'),
      count: 1,
    });
    expect(answer.statusCode).toBe(404);
    const problem = answer.json();
    expect(answer.headers['content-type']).toMatch(/^application\/problem\+json/);
    expect(problem).toMatchObject({
      code: 'record.missing',
      type: '/api/v1/#record.missing',
      title: 'Not Found',
    });
    expect(problem.detail).toMatch(/^There is no string lot .+\. .+\.$/);
    expect(problem.requestId).toBe(answer.headers['x-request-id']);
  });

  it('of a name that another has is a conflict', async () => {
    await newBin('taken');
    const answer = await post('/bins/save', { id: newId(), body: binBody('taken') });
    expect(answer.json()).toMatchObject({ status: 409, code: 'taken', kind: 'bin', value: 'taken' });
  });

  it.each([
    ['{"id":', {}, 400, 'http.not-json'],
    ['', {}, 400, 'http.not-json'],
    ['id=1', { 'content-type': 'application/x-www-form-urlencoded' }, 415, 'http.not-json'],
    ['hello', { 'content-type': 'text/plain' }, 415, 'http.not-json'],
    ['{"__proto__":{"roles":["owner"]}}', {}, 400, 'http.not-json'],
    ['[]', {}, 400, 'input.invalid'],
    ['null', {}, 400, 'input.invalid'],
    [`"${'x'.repeat(1024 * 1024)}"`, {}, 413, 'http.too-large'],
  ])('of what is no question is refused: %.20s', async (payload, headers, status, code) => {
    const answer = await post('/bins/save', payload, headers);
    expect(answer.headers['content-type']).toMatch(/^application\/problem\+json/);
    expect(answer.json()).toMatchObject({ status, code });
  });
});

describe('whoever is not known', () => {
  it('is told to sign in, before anything that was sent is looked at', async () => {
    const answer = await post('/bins/save', { nonsense: true }, { authorization: '' });
    expect(answer.statusCode).toBe(401);
    expect(answer.headers['www-authenticate']).toMatch(/^Bearer/);
    expect(answer.json()).toMatchObject({ code: 'sign-in.needed' });
  });

  it('may not, where the role or the scope does not allow it', async () => {
    const winder = await shop.tokenOf(['winder'], ['stock.read']);
    const answer = await post('/bins/save', { nonsense: true }, { authorization: `Bearer ${winder}` });
    expect(answer.json()).toMatchObject({ status: 403, code: 'permission.missing', permission: 'shop.edit' });
  });

  it('hears of an address where nothing stands as anyone does', async () => {
    const answer = await shop.server.inject('/api/v1/wires/and/more');
    expect(answer.json()).toMatchObject({ status: 404, code: 'http.not-found' });
  });
});
