import { type FastifyInstance, type FastifyRequest, type FastifyServerOptions, LogController } from 'fastify';
import { newId } from '../workshop/index.js';

/** Where the log goes and how much of it. */
export interface Log {
  readonly level: 'info' | 'warn' | 'error';
  /** Standard output where left out. */
  readonly stream?: { readonly write: (line: string) => void };
}

/**
 * A log of one JSON line a request. What was sent, headers, cookies and queries never come into it: they hold secrets, and
 * names of players. Everything is found by the request's id, which the answer bears too.
 */
export const logOptions = (log: Log | undefined): FastifyServerOptions => ({
  logger: log ? { ...log, serializers: { req: bareRequest, err: bareFault } } : false,
  logController: new LogController({ disableRequestLogging: true }),
  genReqId: () => newId(),
  requestIdHeader: false,
});

/** Writes the line of each request when it is answered: who asked for what, how it ended, how long it took. */
export function logRequests(server: FastifyInstance): void {
  server.addHook('onSend', async (request, reply) => {
    reply.header('x-request-id', request.id);
  });
  server.addHook('onResponse', async (request, reply) => {
    const line = {
      req: request,
      status: reply.statusCode,
      ms: Math.round(reply.elapsedTime),
      by: request.asker?.actor.by,
    };
    request.log.info(line, 'answered');
  });
}

const bareRequest = ({ method, url }: FastifyRequest) => ({ method, path: url.replace(/\?.*$/s, '') });

/** A fault with where it came from, but nothing that hangs on it (statements with their values, say). */
const bareFault = ({ name, message, stack }: Error) => ({ type: name, message, stack: stack ?? '' });
