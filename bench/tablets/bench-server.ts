import type { FastifyInstance } from 'fastify';
import { TOKEN_SCOPES } from '../../src/contract/index.js';
import { accessWay, createServer } from '../../src/server/index.js';
import {
  computerClock,
  newId,
  perform,
  type Store,
  slowHash,
  useCaseNamed,
} from '../../src/workshop/index.js';
import { CONSOLE } from './console.js';

/** The server over a store, with the real way in, and a token that may do all that tokens may. */
export interface BenchServer {
  readonly server: FastifyInstance;
  readonly token: string;
  readonly close: () => Promise<void>;
}

export async function benchServer(store: Store): Promise<BenchServer> {
  const parts = { store, clock: computerClock, newId, slowHash: slowHash() };
  const server = createServer({
    webRoot: 'no page is served here',
    shop: { store, wayIn: accessWay({ ...parts, secure: false, rateLimits: NO_LIMIT }) },
  });
  await server.ready();
  return { server, token: await tokenOf(store), close: () => server.close() };
}

/** Everyone asks from this one machine here, which no shop's tablets do. */
const PLENTY = { most: 1e9, inMs: 60_000 };
const NO_LIMIT = { all: PLENTY, signIn: PLENTY };

async function tokenOf(store: Store): Promise<string> {
  const personId = newId();
  await done(store, 'invite-person', { id: personId, name: 'Bench owner', roles: ['owner'] });
  const { secret } = await done(store, 'make-token', {
    id: newId(),
    personId,
    name: 'bench',
    scopes: [...TOKEN_SCOPES],
  });
  return String(secret);
}

async function done(store: Store, name: string, input: object): Promise<Readonly<Record<string, unknown>>> {
  const useCase = useCaseNamed(name);
  if (!useCase) throw new Error(`there is no use case ${name}`);
  const result = await perform(store, useCase, { ...CONSOLE, input });
  if (!result.ok) throw new Error(`${name}: ${JSON.stringify(result.fault)}`);
  return result.value as Readonly<Record<string, unknown>>;
}
