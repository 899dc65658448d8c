import fastify, { type FastifyError, type FastifyInstance } from 'fastify';
import { type ApiParts, shopApi } from './api/api.js';
import { closesGently } from './closing.js';
import { GUARDS } from './guards.js';
import { healthRoutes } from './health.js';
import { answerFault } from './problem-details.js';
import { type Log, logOptions, logRequests } from './request-log.js';
import { servePage } from './serve-page.js';

export interface ServerParts {
  /** The folder of the built page. */
  readonly webRoot: string;
  /** The shop's records and the way in to them. */
  readonly shop: ApiParts;
  /** Left out, nothing is logged. */
  readonly log?: Log;
  /** Certificate and key in PEM, for https. */
  readonly tls?: { readonly cert: string; readonly key: string; readonly minVersion?: 'TLSv1.2' };
}

/** The HTTP server, not yet listening: the page, the API of the shop's records, and signs of life. It hands on what the workshop says and decides nothing itself. */
export function createServer({ webRoot, shop, log, tls }: ServerParts): FastifyInstance {
  const server = fastify({
    ...logOptions(log),
    ...(tls ? { https: tls } : {}),
    // Who sends a request a byte a minute shall not hold a connection for ever.
    requestTimeout: 120_000,
    // A connection that only waits must not keep a server alive that was told to stop.
    forceCloseConnections: 'idle',
    // An address that cannot be read fails before the hooks and handlers below are asked.
    frameworkErrors: (fault, request, reply) => answerFault(fault, request, reply.headers(GUARDS)),
  });
  server.addHook('onRequest', async (_request, reply) => {
    reply.headers(GUARDS);
  });
  server.setErrorHandler<FastifyError>(answerFault);
  logRequests(server);
  closesGently(server);
  healthRoutes(server, shop.store);
  servePage(server, webRoot);
  const register = (api: FastifyInstance, _options: object, done: (fault?: Error) => void) => {
    shopApi(api, shop).then(() => done(), done);
  };
  server.register(register, { prefix: '/api/v1' });
  return server;
}
