import type { RouteOptions } from 'fastify';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import {
  ALLOWED,
  PERMISSIONS,
  type Permission,
  permissionsOf,
  READINGS,
  RECORD_KINDS,
  ROLES,
  type Role,
  TOKEN_SCOPES,
} from '../../src/contract/index.js';
import { USE_CASES } from '../../src/workshop/index.js';
import { type ShopServer, shopServer } from './shop-server.js';

/* Every route below /api/v1 asked by every role, by session and by token, and by nobody: each cell of the table. Which routes there
 * are is told by the server as it makes them, so that none can be left out. */

const made: RouteOptions[] = [];
const shop: ShopServer = await shopServer({ onRoute: (route) => void made.push(route) });
const routes = made.filter(({ method }) => method !== 'HEAD');
afterAll(() => shop.close());

interface Asker {
  readonly who: string;
  readonly headers: Readonly<Record<string, string>>;
  /** What the table allows; undefined for nobody. */
  readonly may: ReadonlySet<Permission> | undefined;
}

const askers: Asker[] = [{ who: 'nobody', headers: {}, may: undefined }];

/** The only scope that it lacks, by permission. */
const without = new Map<Permission, string>();
/** The only scope that it has. */
const only = new Map<Permission, string>();

beforeAll(async () => {
  for (const role of ROLES) {
    const all = new Set(PERMISSIONS.filter((permission) => ALLOWED[permission].includes(role)));
    const cookie = await shop.sessionOf([role]);
    askers.push({ who: role, headers: { cookie, origin: 'http://localhost' }, may: all });
    const scopes = TOKEN_SCOPES.filter((scope) => all.has(scope));
    askers.push({
      who: `a token of the ${role}`,
      headers: bearer(await shop.tokenOf([role], scopes)),
      may: new Set(scopes),
    });
  }
  for (const scope of TOKEN_SCOPES) {
    only.set(scope, await shop.tokenOf(['owner'], [scope]));
    without.set(
      scope,
      await shop.tokenOf(
        ['owner'],
        TOKEN_SCOPES.filter((other) => other !== scope),
      ),
    );
  }
});

const bearer = (token: string) => ({ authorization: `Bearer ${token}` });

/** Asks so that nothing can be done: after the gate, what is sent breaks off and the number of an event is none. */
async function outcome(
  { method, url }: RouteOptions,
  headers: Asker['headers'],
): Promise<'in' | 'unknown' | 'barred'> {
  const answer = await shop.server.inject({
    method: method as 'GET' | 'POST',
    url: url.replace(':id', '01980000-0000-7000-8000-000000000000'),
    headers: { host: 'localhost', 'content-type': 'application/json', 'last-event-id': 'none', ...headers },
    ...(method === 'POST' ? { payload: '{' } : {}),
  });
  const { code } = String(answer.headers['content-type']).includes('json') ? answer.json() : {};
  if (code === 'sign-in.needed') return 'unknown';
  return code === 'permission.missing' ? 'barred' : 'in';
}

describe('each route of the API', () => {
  it('says whom it is for, and there are as many as there should be', () => {
    const kinds = Object.keys(RECORD_KINDS).length;
    const readings = Object.keys(READINGS).length;
    expect(routes.length).toBeGreaterThan(3 * kinds + readings + USE_CASES.length);
    for (const { url, config } of routes) {
      const { permission, open, signedIn } = config ?? {};
      expect([permission !== undefined, open === true, signedIn === true].filter(Boolean), url).toHaveLength(
        1,
      );
    }
    const used = new Set(routes.flatMap(({ config }) => config?.permission ?? []));
    for (const { definition } of USE_CASES) expect([...used]).toContain(definition.permission);
  });

  it('is open to anyone only where that is meant', () => {
    const open = routes.filter(({ config }) => config?.open === true);
    expect([...new Set(open.map(({ url }) => url))].sort()).toEqual([
      '/api/v1/',
      '/api/v1/openapi.json',
      '/api/v1/page.css',
      '/api/v1/pin-sign-in',
      '/api/v1/set-password',
      '/api/v1/sign-in',
      '/api/v1/sign-out',
      '/api/v1/this-device',
      '/api/v1/who',
    ]);
  });

  it('asks the same of a HEAD as of its GET', () => {
    const heads = made.filter(({ method }) => method === 'HEAD');
    expect(heads.length).toBeGreaterThan(50);
    for (const { url, config } of heads) {
      const get = routes.find((route) => route.method === 'GET' && bare(route.url) === bare(url));
      expect(get?.config?.permission, url).toBe(config?.permission);
      expect(get?.config?.open, url).toBe(config?.open);
    }
  });

  // The names of the routes are known only once the server is made: above, while this file is read.
  it.each(routes.map((route) => [`${String(route.method)} ${route.url}`, route] as const))(
    'lets in whom the table allows, and no one else: %s',
    async (_name, route) => {
      const { permission, open } = route.config ?? {};
      for (const { who, headers, may } of askers) {
        expect(await outcome(route, headers), who).toBe(expected({ permission, open }, may));
      }
      if (permission === undefined || !TOKEN_SCOPES.includes(permission)) return;
      expect(await outcome(route, bearer(only.get(permission)!)), 'only this scope').toBe('in');
      expect(await outcome(route, bearer(without.get(permission)!)), 'all but this scope').toBe('barred');
    },
  );
});

/** `/api/v1/` and `/api/v1` are one place. */
const bare = (url: string) => url.replace(/\/$/, '');

function expected(
  { permission, open }: { readonly permission: Permission | undefined; readonly open: boolean | undefined },
  may: Asker['may'],
): 'in' | 'unknown' | 'barred' {
  if (open === true) return 'in';
  if (may === undefined) return 'unknown';
  return permission === undefined || may.has(permission) ? 'in' : 'barred';
}

describe('several roles together', () => {
  it.each(ROLES.flatMap((one) => ROLES.map((other): readonly [Role, Role] => [one, other])))(
    'may what %s and %s may, and no more',
    (one, other) => {
      const allowed = PERMISSIONS.filter(
        (permission) => ALLOWED[permission].includes(one) || ALLOWED[permission].includes(other),
      );
      expect([...permissionsOf([one, other])]).toEqual(allowed);
    },
  );
});
