import type { FastifyInstance } from 'fastify';

/** How long requests in hand may still take once the server is told to stop. */
const PATIENCE_MS = 10_000;

/**
 * Lets a server stop gently: what is in hand is answered, each connection is let go with its answer, and only who
 * takes longer than patience lasts is cut off.
 */
export function closesGently(server: FastifyInstance): void {
  let closing = false;
  server.addHook('preClose', async () => {
    closing = true;
    setTimeout(() => server.server.closeAllConnections(), PATIENCE_MS).unref();
  });
  server.addHook('onSend', async (_request, reply) => {
    if (closing) reply.header('connection', 'close');
  });
}
