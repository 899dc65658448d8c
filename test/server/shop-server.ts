import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { FastifyInstance, RouteOptions } from 'fastify';
import { PERMISSIONS, type Permission, type Role } from '../../src/contract/index.js';
import { accessWay, createServer, type ServerParts, type WayIn } from '../../src/server/index.js';
import { openStore } from '../../src/store/index.js';
import {
  type Actor,
  computerClock,
  newId,
  perform,
  type Store,
  slowHash,
  useCaseNamed,
} from '../../src/workshop/index.js';

/** A server over a new database of its own, with the real way in, not listening. */
export interface ShopServer {
  readonly server: FastifyInstance;
  readonly store: Store;
  readonly file: string;
  /** Does a use case as the console does: to prepare. */
  readonly prepare: (useCase: string, input: object) => Promise<Readonly<Record<string, unknown>>>;
  /** Takes a person in; gives the id and the secret of the one-time link. */
  readonly invite: (...roles: Role[]) => Promise<{ readonly id: string; readonly link: string }>;
  /** The cookie of a new person who signed in with a password. */
  readonly sessionOf: (roles: readonly Role[]) => Promise<string>;
  /** A token of a new person with these roles. */
  readonly tokenOf: (roles: readonly Role[], scopes: readonly Permission[]) => Promise<string>;
  readonly close: () => Promise<void>;
}

const CONSOLE: Actor = { by: 'console', permissions: new Set(PERMISSIONS) };
/** As weak as scrypt can be: these secrets guard nothing. */
const QUICK = slowHash({ N: 2, r: 1, p: 1 });
const NO_LIMIT = { most: 1e9, inMs: 60_000 };

interface Options extends Partial<ServerParts> {
  readonly beatMs?: number;
  /** The shop to serve, which stays open; a new one where left out. */
  readonly store?: Store;
  /** Told of each route below `/api/v1` as it is made. */
  readonly onRoute?: (route: RouteOptions) => void;
}

export async function shopServer(options: Options = {}): Promise<ShopServer> {
  const folder = mkdtempSync(join(tmpdir(), 'tautwork-server-'));
  const file = join(folder, 'shop.db');
  const { beatMs, onRoute, store: given, ...others } = options;
  const store = given ?? (await openStore({ file }));
  const parts = { store, clock: computerClock, newId, slowHash: QUICK };
  const access = accessWay({ ...parts, secure: false, rateLimits: { all: NO_LIMIT, signIn: NO_LIMIT } });
  const wayIn: WayIn = async (api) => {
    if (onRoute) api.addHook('onRoute', onRoute);
    await access(api);
  };
  const server = createServer({
    webRoot: join(folder, 'no-page'),
    shop: { store, wayIn, ...(beatMs === undefined ? {} : { beatMs }) },
    ...others,
  });
  await server.ready();

  const prepare: ShopServer['prepare'] = async (name, input) => {
    const done = await perform(store, useCaseNamed(name)!, {
      actor: CONSOLE,
      clock: computerClock,
      newId,
      input,
    });
    if (!done.ok) throw new Error(`${name}: ${JSON.stringify(done.fault)}`);
    return done.value as Readonly<Record<string, unknown>>;
  };
  const invite: ShopServer['invite'] = async (...roles) => {
    const id = newId();
    const { link } = await prepare('invite-person', { id, name: `Person ${id}`, roles });
    return { id, link: (link as { readonly secret: string }).secret };
  };
  return {
    server,
    store,
    file,
    prepare,
    invite,
    sessionOf: async (roles) => {
      const { link } = await invite(...roles);
      const signedIn = await server.inject({
        method: 'POST',
        url: '/api/v1/set-password',
        payload: { link, password: 'a crooked brass pitch' },
      });
      return String(signedIn.headers['set-cookie']).split(';')[0]!;
    },
    tokenOf: async (roles, scopes) => {
      const { id: personId } = await invite(...roles);
      const made = await prepare('make-token', { id: newId(), personId, name: 'test', scopes });
      return made.secret as string;
    },
    close: async () => {
      await server.close();
      if (!given) await store.close();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}
