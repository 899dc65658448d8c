import fastify, { type FastifyError, type FastifyInstance } from 'fastify';
import type { Day, Shop } from '../core/day/index.js';
import { GUARDS } from './guards.js';
import { answerFault } from './problem-details.js';
import { servePage } from './serve-page.js';
import { workedOutOnce } from './worked-out-once.js';

export interface ServerParts {
  /** Works out the demo day; asked once, on the first request. */
  readonly dayOf: () => Promise<Day>;
  /** Gives the demo workshop itself; asked once, on the first request. */
  readonly shopOf: () => Promise<Shop>;
  /** The folder of the built page. */
  readonly webRoot: string;
  /** Whether warnings and faults are written to the terminal. */
  readonly log?: boolean;
}

/** The HTTP server, not yet listening: the page, the demo day and its shop as JSON, and a sign of life. It hands on what the
 * workshop says and decides nothing itself. */
export function createServer({ dayOf, shopOf, webRoot, log = false }: ServerParts): FastifyInstance {
  const server = fastify({
    logger: log && { level: 'warn' },
    // An open page must not keep a server alive that was told to stop.
    forceCloseConnections: true,
    // An address that cannot be read fails before the hooks and handlers below are asked.
    frameworkErrors: (fault, request, reply) => answerFault(fault, request, reply.headers(GUARDS)),
  });
  server.addHook('onRequest', async (_request, reply) => {
    reply.headers(GUARDS);
  });
  server.setErrorHandler<FastifyError>(answerFault);
  servePage(server, webRoot);

  const demoDay = workedOutOnce(dayOf);
  server.get('/healthz', () => ({ status: 'ok' }));
  server.get('/api/v1/demo/day', (_request, reply) => {
    reply.header('cache-control', 'no-cache');
    return demoDay();
  });
  const demoShop = workedOutOnce(shopOf);
  server.get('/api/v1/demo/shop', (_request, reply) => {
    reply.header('cache-control', 'no-cache');
    return demoShop();
  });
  return server;
}
