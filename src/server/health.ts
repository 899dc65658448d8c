import type { FastifyInstance } from 'fastify';
import { type Store, thrownFault } from '../workshop/index.js';

/** Signs of life for whoever watches over the server: `/healthz` that the process runs, `/readyz` that it can work. */
export function healthRoutes(server: FastifyInstance, store: Store): void {
  server.get('/healthz', () => ({ status: 'ok' }));
  server.get('/readyz', async (_request, reply) => {
    const trouble = await storeTrouble(store);
    if (trouble === undefined) return { status: 'ready' };
    return reply.status(503).send({ status: 'not-ready', parts: [{ part: 'store', trouble }] });
  });
}

/** A store that keeps one waiting longer is no help to anyone. */
const PATIENCE_MS = 2_000;

/** Code of what is wrong with the store; undefined where it answers. */
async function storeTrouble(store: Store): Promise<string | undefined> {
  let timer: NodeJS.Timeout | undefined;
  const tooLong = new Promise<string>((resolve) => {
    timer = setTimeout(resolve, PATIENCE_MS, 'store.silent');
  });
  const answer = store
    .read(({ events }) => events.last())
    .then(
      () => undefined,
      (thrown: unknown) => thrownFault(thrown)?.code ?? 'store.fault',
    );
  try {
    return await Promise.race([answer, tooLong]);
  } finally {
    clearTimeout(timer);
  }
}
