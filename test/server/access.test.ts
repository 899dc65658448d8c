import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { FastifyInstance } from 'fastify';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { type AccessWayParts, accessWay, createServer } from '../../src/server/index.js';
import { openStore } from '../../src/store/index.js';
import { computerClock, firstOwner, newId, type Store, slowHash } from '../../src/workshop/index.js';

const PASSWORD = 'seven copper kettles';
const PIN = '8264';
const OWN_PAGE = { 'sec-fetch-site': 'same-origin', origin: 'http://localhost' };
const QUICK = slowHash({ N: 2, r: 1, p: 1 });

let folder: string;
let store: Store;
let server: FastifyInstance;
let logged: string[];

beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'tautwork-access-'));
  await start();
});

afterEach(async () => {
  await stop();
  rmSync(folder, { recursive: true, force: true });
});

async function start(parts: Partial<AccessWayParts> = {}): Promise<void> {
  store = await openStore({ file: join(folder, 'shop.db') });
  logged = [];
  const wayIn = accessWay({ store, clock: computerClock, newId, slowHash: QUICK, secure: false, ...parts });
  server = createServer({
    webRoot: join(folder, 'no-page'),
    shop: { store, wayIn },
    log: { level: 'info', stream: { write: (line) => logged.push(line) } },
  });
  await server.ready();
}

async function stop(): Promise<void> {
  await server.close();
  await store.close();
}

async function startAnew(parts: Partial<AccessWayParts> = {}): Promise<void> {
  await stop();
  await start(parts);
}

type Headers = Readonly<Record<string, string>>;

/** A browser on our own page: it keeps the cookies, and says where its requests come from. */
function browser(more: Headers = {}) {
  const jar = new Map<string, string>();
  const send = async (
    method: 'GET' | 'POST',
    path: string,
    payload?: object,
    headers: Headers = OWN_PAGE,
  ) => {
    const answer = await server.inject({
      method,
      url: `/api/v1${path}`,
      ...(payload ? { payload } : {}),
      headers: {
        cookie: [...jar].map(([name, value]) => `${name}=${value}`).join('; '),
        'idempotency-key': newId(),
        ...headers,
        ...more,
      },
    });
    for (const { name, value } of answer.cookies) jar.set(name, value);
    return answer;
  };
  return {
    jar,
    get: (path: string, headers?: Headers) => send('GET', path, undefined, headers),
    post: (path: string, payload: object, headers?: Headers) => send('POST', path, payload, headers),
  };
}
type Browser = ReturnType<typeof browser>;

/** A browser in which the owner is signed in. */
async function ownersBrowser(): Promise<Browser> {
  const owner = browser();
  const link = (await firstOwner({ store, clock: computerClock, newId }))!.secret;
  expect((await owner.post('/set-password', { link, password: PASSWORD })).statusCode).toBe(200);
  return owner;
}

/** Takes a person in; gives a browser in which that person is signed in. */
async function personsBrowser(owner: Browser, name: string, roles: readonly string[]) {
  const id = newId();
  const invited = (await owner.post('/people/invite', { id, name, roles })).json();
  const person = browser();
  await person.post('/set-password', { link: invited.link.secret, password: PASSWORD });
  return { id, person };
}

const codeOf = ({ statusCode, json }: { statusCode: number; json: () => { code?: string } }) => [
  statusCode,
  json().code,
];

describe('without signing in', () => {
  it('nothing is open but the doors', async () => {
    for (const path of [
      '/me',
      '/wires',
      '/people',
      '/journal',
      '/devices',
      '/tokens',
      '/sessions',
      '/events',
    ]) {
      expect(codeOf(await browser().get(path)), path).toEqual([401, 'sign-in.needed']);
    }
    expect(codeOf(await browser().post('/people/invite', {}))).toEqual([401, 'sign-in.needed']);
    expect(codeOf(await browser().post('/devices/enrol', {}))).toEqual([401, 'sign-in.needed']);
  });
});

describe('the first sign-in', () => {
  it('goes by the one-time link of the console, and then by name and password', async () => {
    const owner = await ownersBrowser();
    expect((await owner.get('/me')).json()).toMatchObject({
      person: { name: 'Owner', roles: ['owner'] },
      session: { via: 'sign-in-link' },
    });
    const again = browser();
    const answer = await again.post('/sign-in', { name: 'owner', password: PASSWORD });
    expect(answer.json()).toMatchObject({ person: { name: 'Owner' }, session: { via: 'password' } });
    expect((await again.get('/people')).statusCode).toBe(200);
  });

  it('is refused with a link that was used, and words that say what to do', async () => {
    const link = (await firstOwner({ store, clock: computerClock, newId }))!.secret;
    await browser().post('/set-password', { link, password: PASSWORD });
    const answer = await browser().post('/set-password', { link, password: PASSWORD });
    expect(codeOf(answer)).toEqual([401, 'access.link-refused']);
    expect(answer.json().detail).toContain('tautwork sign-in-link');
    expect(answer.headers['content-type']).toMatch(/^application\/problem\+json/);
  });

  it('is refused with a link that has run out', async () => {
    const link = (await firstOwner({ store, clock: computerClock, newId }))!;
    await startAnew({ clock: { now: () => link.expiresAt } });
    expect(codeOf(await browser().post('/set-password', { link: link.secret, password: PASSWORD }))).toEqual([
      401,
      'access.link-refused',
    ]);
  });
});

describe('the cookie of a session', () => {
  const guards = async () => {
    const owner = await ownersBrowser();
    const answer = await owner.post('/sign-in', { name: 'Owner', password: PASSWORD });
    return String(answer.headers['set-cookie']).split('; ').slice(1);
  };

  it('is out of reach of scripts, of other sites, and of what is not the API', async () => {
    expect(await guards()).toEqual(['Max-Age=2592000', 'Path=/api', 'HttpOnly', 'SameSite=Strict']);
  });

  it('is never sent in the clear where the server is reached over https', async () => {
    await startAnew({ secure: true });
    expect(await guards()).toContain('Secure');
  });

  it('is taken back with the sign-out, and worth nothing to whoever kept it', async () => {
    const owner = await ownersBrowser();
    const kept = browser();
    kept.jar.set('tautwork-session', owner.jar.get('tautwork-session')!);
    expect((await kept.get('/me')).statusCode).toBe(200);
    const answer = await owner.post('/sign-out', {});
    expect(String(answer.headers['set-cookie'])).toMatch(
      /^tautwork-session=; Max-Age=0; Path=\/api; HttpOnly/,
    );
    expect(codeOf(await kept.get('/me'))).toEqual([401, 'access.session-over']);
  });

  it('of whoever was signed in before on the same browser is worth nothing after the next sign-in', async () => {
    const owner = await ownersBrowser();
    const before = owner.jar.get('tautwork-session')!;
    await owner.post('/sign-in', { name: 'Owner', password: PASSWORD });
    const kept = browser();
    kept.jar.set('tautwork-session', before);
    expect(codeOf(await kept.get('/me'))).toEqual([401, 'access.session-over']);
  });

  it('that no longer fits does not bar the doors', async () => {
    await ownersBrowser();
    const stale = browser();
    stale.jar.set('tautwork-session', `${newId()}.${'a'.repeat(43)}`);
    expect((await stale.post('/sign-in', { name: 'Owner', password: PASSWORD })).statusCode).toBe(200);
  });
});

describe('a request from the page of another place', () => {
  const FOREIGN: readonly Headers[] = [
    { origin: 'https://elsewhere.example' },
    { origin: 'http://localhost:9999' },
    { origin: 'null' },
    { 'sec-fetch-site': 'cross-site' },
    { 'sec-fetch-site': 'same-site', origin: 'http://localhost' },
    { 'sec-fetch-site': 'same-origin', origin: 'https://elsewhere.example' },
  ];

  it.each(FOREIGN)('does nothing, although the cookie is right: %o', async (headers) => {
    const owner = await ownersBrowser();
    const input = { id: newId(), name: 'Intruder', roles: ['owner'] };
    expect(codeOf(await owner.post('/people/invite', input, headers))).toEqual([403, 'access.cross-origin']);
    expect(codeOf(await owner.post('/sign-out', {}, headers))).toEqual([403, 'access.cross-origin']);
    expect((await owner.get('/people')).json().items).toHaveLength(1);
  });

  it('does nothing either where it does not say where it comes from', async () => {
    const owner = await ownersBrowser();
    const input = { id: newId(), name: 'Intruder', roles: ['owner'] };
    expect(codeOf(await owner.post('/people/invite', input, {}))).toEqual([403, 'access.cross-origin']);
  });

  it('signs nobody in', async () => {
    await ownersBrowser();
    const body = { name: 'Owner', password: PASSWORD };
    const answer = await browser().post('/sign-in', body, { origin: 'https://elsewhere.example' });
    expect(codeOf(answer)).toEqual([403, 'access.cross-origin']);
    expect(answer.headers['set-cookie']).toBeUndefined();
  });

  it('under a foreign name that was pointed at this machine is not answered', async () => {
    await startAnew({ names: ['localhost', '127.0.0.1', '::1'] });
    const foreign = browser({ host: 'elsewhere.example' });
    expect(codeOf(await foreign.post('/sign-in', { name: 'x', password: 'y' }, {}))).toEqual([
      421,
      'access.unknown-host',
    ]);
    for (const host of ['localhost:4870', '127.0.0.1:4870', '[::1]:4870', 'LOCALHOST']) {
      expect(codeOf(await browser({ host }).get('/me')), host).toEqual([401, 'sign-in.needed']);
    }
  });
});

describe('wrong passwords', () => {
  it('lock, tell until when, and stay locked over a restart', async () => {
    await ownersBrowser();
    const wrong = { name: 'Owner', password: 'wrong' };
    for (let at = 4; at >= 0; at -= 1) {
      const answer = await browser().post('/sign-in', wrong);
      expect(codeOf(answer)).toEqual([401, 'access.sign-in-refused']);
      expect(answer.json().attemptsLeft).toBe(at);
    }
    await startAnew();
    const locked = await browser().post('/sign-in', { name: 'Owner', password: PASSWORD });
    expect(codeOf(locked)).toEqual([429, 'access.locked']);
    const seconds = Number(locked.headers['retry-after']);
    expect([seconds > 14 * 60, seconds <= 15 * 60]).toEqual([true, true]);
  });
});

describe('a PIN', () => {
  it('lets in on an enrolled tablet, where its people are listed, and nowhere else', async () => {
    const owner = await ownersBrowser();
    const { id: personId, person } = await personsBrowser(owner, 'Wren', ['coiler']);
    expect((await person.post('/set-pin', { password: PASSWORD, pin: PIN })).json()).toEqual({ done: true });

    const tablet = browser();
    expect(codeOf(await tablet.get('/this-device'))).toEqual([403, 'access.device-not-enrolled']);
    expect(codeOf(await tablet.post('/pin-sign-in', { personId, pin: PIN }))).toEqual([
      403,
      'access.device-not-enrolled',
    ]);

    await tablet.post('/sign-in', { name: 'Owner', password: PASSWORD });
    const enrolled = await tablet.post('/devices/enrol', { id: newId(), name: 'Tablet by the coils' });
    expect(enrolled.statusCode).toBe(200);
    expect(enrolled.body).not.toContain(tablet.jar.get('tautwork-device'));
    expect(String(enrolled.headers['set-cookie'])).toMatch(/Path=\/api; HttpOnly; SameSite=Strict$/);
    await tablet.post('/sign-out', {});

    expect((await tablet.get('/this-device')).json()).toMatchObject({
      device: { name: 'Tablet by the coils' },
      people: [{ id: personId, name: 'Wren' }],
    });
    expect((await tablet.post('/pin-sign-in', { personId, pin: PIN })).json()).toMatchObject({
      person: { name: 'Wren' },
      session: { via: 'pin' },
    });
    expect((await tablet.get('/string-lots')).statusCode).toBe(200);

    await owner.post('/devices/revoke', { id: enrolled.json().device.id });
    expect(codeOf(await tablet.get('/string-lots'))).toEqual([401, 'access.session-over']);
    expect(codeOf(await tablet.post('/pin-sign-in', { personId, pin: PIN }))).toEqual([
      403,
      'access.device-not-enrolled',
    ]);
    expect((await owner.get('/devices')).json().items).toMatchObject([{ revokedAt: expect.any(String) }]);
  });

  it('cannot be set, nor a device enrolled, with a token', async () => {
    const owner = await ownersBrowser();
    const personId = (await owner.get('/me')).json().person.id;
    const made = await owner.post('/tokens/make', {
      id: newId(),
      personId,
      name: 't',
      scopes: ['stock.read'],
    });
    const script = browser({ authorization: `Bearer ${made.json().secret}` });
    for (const [path, body] of [
      ['/set-pin', { password: PASSWORD, pin: PIN }],
      ['/change-password', { password: PASSWORD, newPassword: 'eleven grey herons' }],
      ['/devices/enrol', { id: newId(), name: 'x' }],
    ] as const) {
      expect(codeOf(await script.post(path, body)), path).toEqual([403, 'permission.missing']);
    }
  });
});

describe('a token', () => {
  const madeFor = async (owner: Browser, scopes: readonly string[]) => {
    const personId = (await owner.get('/me')).json().person.id;
    const answer = await owner.post('/tokens/make', {
      id: newId(),
      personId,
      name: 'nightly export',
      scopes,
    });
    return answer.json() as { readonly token: { readonly id: string }; readonly secret: string };
  };
  const script = (secret: string) => browser({ authorization: `Bearer ${secret}` });

  it('does what its scopes say and no more, without a cookie and from no page at all', async () => {
    const { secret } = await madeFor(await ownersBrowser(), ['stock.read']);
    const bare = { authorization: `Bearer ${secret}` };
    expect((await server.inject({ url: '/api/v1/spools', headers: bare })).statusCode).toBe(200);
    expect(codeOf(await script(secret).get('/orders', {}))).toEqual([403, 'permission.missing']);
    expect(codeOf(await script(secret).get('/tokens', {}))).toEqual([403, 'permission.missing']);
  });

  it('is shown once: neither a list nor a repeat shows it again', async () => {
    const owner = await ownersBrowser();
    const personId = (await owner.get('/me')).json().person.id;
    const input = { id: newId(), personId, name: 'nightly export', scopes: ['stock.read'] };
    const key = { ...OWN_PAGE, 'idempotency-key': newId() };
    const { secret } = (await owner.post('/tokens/make', input, key)).json();
    expect(secret).toMatch(/^twk_[0-9a-f-]{36}_[\w-]{43}$/);
    const list = await owner.get('/tokens');
    expect(list.json().items).toMatchObject([{ name: 'nightly export', scopes: ['stock.read'] }]);
    expect(list.body).not.toContain(secret.slice(41));
    const again = await owner.post('/tokens/make', input, key);
    expect(codeOf(again)).toEqual([409, 'repeat.shown-once']);
    expect(again.body).not.toContain(secret.slice(41));
  });

  it('is refused once revoked, and where it is none', async () => {
    const owner = await ownersBrowser();
    const { token, secret } = await madeFor(owner, ['stock.read']);
    await owner.post('/tokens/revoke', { id: token.id });
    for (const bad of [secret, 'twk_x', '', 'Basic b3duZXI6eA==']) {
      const answer = await script(bad).get('/spools', {});
      expect(codeOf(answer), bad).toEqual([401, 'access.token-refused']);
      expect(answer.headers['www-authenticate']).toMatch(/^Bearer/);
    }
  });

  it('goes before a cookie that is sent with it', async () => {
    const owner = await ownersBrowser();
    const { token, secret } = await madeFor(owner, ['stock.read']);
    const me = await owner.get('/me', { authorization: `Bearer ${secret}` });
    expect(me.json()).toMatchObject({ by: `token/${token.id}`, permissions: ['stock.read'] });
  });
});

describe('a session that its owner or the shop ends', () => {
  it('is over with the next request', async () => {
    const owner = await ownersBrowser();
    const { id: personId, person } = await personsBrowser(owner, 'Wren', ['packer']);
    const [open] = (await owner.get(`/sessions?personId=${personId}`)).json().items;
    expect(open).toMatchObject({ personId, via: 'sign-in-link', deviceId: null });
    expect((await owner.post('/sessions/revoke', { id: open.id })).statusCode).toBe(200);
    expect(codeOf(await person.get('/me'))).toEqual([401, 'access.session-over']);
    expect((await owner.get(`/sessions?personId=${personId}`)).json().items).toEqual([]);
  });

  it('is not listed to others than its person and who keeps the people', async () => {
    const owner = await ownersBrowser();
    const { person } = await personsBrowser(owner, 'Wren', ['packer']);
    const ownerId = (await owner.get('/me')).json().person.id;
    expect((await person.get('/sessions')).json().items).toHaveLength(1);
    expect(codeOf(await person.get(`/sessions?personId=${ownerId}`))).toEqual([403, 'permission.missing']);
  });

  it('is over for whoever is let in no more; the last owner always is let in', async () => {
    const owner = await ownersBrowser();
    const { id, person } = await personsBrowser(owner, 'Wren', ['packer']);
    const changed = await owner.post('/people/change', { id, expectedVersion: 1, active: false });
    expect(changed.json()).toMatchObject({ version: 2, body: { active: false } });
    expect(codeOf(await person.get('/me'))).toEqual([401, 'access.session-over']);
    const me = (await owner.get('/me')).json().person.id;
    expect(codeOf(await owner.post('/people/change', { id: me, expectedVersion: 1, active: false }))).toEqual(
      [422, 'access.last-owner'],
    );
  });

  it('goes on under a new cookie where the password is changed, and is over everywhere else', async () => {
    const owner = await ownersBrowser();
    const elsewhere = browser();
    await elsewhere.post('/sign-in', { name: 'Owner', password: PASSWORD });
    const body = { password: PASSWORD, newPassword: 'eleven grey herons' };
    expect((await owner.post('/change-password', body)).statusCode).toBe(200);
    expect((await owner.get('/me')).statusCode).toBe(200);
    expect(codeOf(await elsewhere.get('/me'))).toEqual([401, 'access.session-over']);
  });
});

describe('too much', () => {
  it('at the doors is refused for a while, all doors together, and leaves the rest of the API open', async () => {
    await startAnew({ rateLimits: { all: { most: 1000, inMs: 60_000 }, signIn: { most: 5, inMs: 60_000 } } });
    const codes: number[] = [];
    for (let at = 0; at < 4; at += 1) {
      codes.push((await browser().post('/sign-in', { name: `Nobody ${at}`, password: 'x' })).statusCode);
      codes.push((await browser().post('/set-password', { link: 'x', password: PASSWORD })).statusCode);
    }
    expect(codes).toEqual([401, 401, 401, 401, 401, 429, 429, 429]);
    const answer = await browser().post('/sign-in', { name: 'Nobody', password: 'x' });
    expect(codeOf(answer)).toEqual([429, 'http.too-many']);
    expect(Number(answer.headers['retry-after'])).toBeGreaterThan(0);
    expect((await browser().get('/me')).statusCode).toBe(401);
  });

  it('of the whole API is refused for a while', async () => {
    await startAnew({ rateLimits: { all: { most: 3, inMs: 60_000 }, signIn: { most: 3, inMs: 60_000 } } });
    const codes: number[] = [];
    for (let at = 0; at < 5; at += 1) codes.push((await browser().get('/me')).statusCode);
    expect(codes).toEqual([401, 401, 401, 429, 429]);
  });

  it('in one request is not read', async () => {
    const answer = await browser().post('/sign-in', { name: 'x', password: 'x'.repeat(20_000) });
    expect(codeOf(answer)).toEqual([413, 'http.too-large']);
  });
});

describe('what was sent', () => {
  it('is taken as it is: no number becomes a PIN, no unknown field is overlooked', async () => {
    const sent = { personId: newId(), pin: 8264, extra: true };
    const answer = await browser().post('/pin-sign-in', sent);
    expect(codeOf(answer)).toEqual([400, 'input.invalid']);
    expect(
      answer
        .json()
        .problems.map(({ path }: { path: string }) => path)
        .sort(),
    ).toEqual(['/extra', '/pin']);
  });
});

describe('every answer of the way in', () => {
  it('is kept by no cache, and has the strict content policy', async () => {
    const owner = await ownersBrowser();
    for (const answer of [await owner.get('/me'), await browser().get('/me'), await owner.get('/tokens')]) {
      expect(answer.headers['cache-control']).toBe('no-store');
      expect(answer.headers['content-security-policy']).toContain("default-src 'none'");
    }
  });
});

describe('the certificate of the local authority', () => {
  it('is given to any device, and only where there is one', async () => {
    expect((await browser().get('/authority.crt')).statusCode).toBe(404);
    const certificate = '-----BEGIN CERTIFICATE-----\nMA==\n-----END CERTIFICATE-----\n';
    await startAnew({ authority: certificate });
    const answer = await browser().get('/authority.crt');
    expect([answer.statusCode, answer.headers['content-type'], answer.body]).toEqual([
      200,
      'application/x-x509-ca-cert',
      certificate,
    ]);
  });
});

describe('secrets', () => {
  it('are in no line of the log, in no answer twice, and nowhere in the files of the database', async () => {
    const first = (await firstOwner({ store, clock: computerClock, newId }))!;
    const owner = browser();
    await owner.post('/set-password', { link: first.secret, password: PASSWORD });
    const { id: personId, person } = await personsBrowser(owner, 'Wren', ['coiler']);
    await person.post('/set-pin', { password: PASSWORD, pin: '82640197' });
    await owner.post('/devices/enrol', { id: newId(), name: 'Tablet' });
    owner.jar.set('tautwork-session', owner.jar.get('tautwork-session')!);
    const made = await owner.post('/tokens/make', {
      id: newId(),
      personId,
      name: 'export',
      scopes: ['stock.read'],
    });
    const token = made.json().secret as string;
    await browser({ authorization: `Bearer ${token}` }).get('/spools?search=hidden%20word');
    // Wrong ones too: what was mistyped is often nearly right.
    await browser().post('/sign-in', { name: 'Wren', password: 'seven copper kettels' });
    await browser().post('/sign-in', { name: 'Wren', password: 'seven copper kettles', more: 'x' });
    await browser({ authorization: `Bearer ${token}x` }).get('/spools');
    await server.inject({ method: 'POST', url: '/api/v1/sign-in', payload: '{"password": "half a secret' });

    const secretOf = (key: string | undefined) => key!.split('.')[1]!;
    const secrets = {
      link: first.secret,
      password: PASSWORD,
      mistyped: 'seven copper kettels',
      half: 'half a secret',
      pin: '82640197',
      token: token.slice(41),
      session: secretOf(person.jar.get('tautwork-session')),
      device: secretOf(owner.jar.get('tautwork-device')),
      searched: 'hidden',
    };
    const log = logged.join('');
    expect(logged.length).toBeGreaterThan(8);
    expect(log).toContain('/api/v1/sign-in');
    const journal = await owner.get('/journal?limit=500');
    expect(journal.json().items.length).toBeGreaterThan(4);
    await stop();
    const files = readdirSync(folder).map((name) => readFileSync(join(folder, name), 'latin1'));
    expect(files.join('')).toContain('Wren');
    for (const [name, secret] of Object.entries(secrets)) {
      expect(secret.length, name).toBeGreaterThan(5);
      expect(log, `${name} in the log`).not.toContain(secret);
      expect(journal.body, `${name} in the journal`).not.toContain(secret);
      for (const file of files) expect(file.includes(secret), `${name} in the database`).toBe(false);
    }
    await start();
  });
});
