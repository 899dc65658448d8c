import type { FastifyInstance } from 'fastify';

export interface OpenServer {
  readonly url: string;
  /** The port it listens on, which is another than the wanted one where that was taken. */
  readonly port: number;
  /** Lets go of the port and of every open connection. */
  readonly close: () => Promise<void>;
}

/** Only this machine may ask: there is no sign-in yet. */
const LOOPBACK = '127.0.0.1';

/** Lets a server listen on the wanted port, or on any free one where that is taken (0: any free one). */
export async function openServer(server: FastifyInstance, wantedPort: number): Promise<OpenServer> {
  try {
    await server.listen({ host: LOOPBACK, port: wantedPort });
  } catch (fault) {
    const isTaken = fault instanceof Error && 'code' in fault && fault.code === 'EADDRINUSE';
    if (!isTaken || wantedPort === 0) throw fault;
    await server.listen({ host: LOOPBACK, port: 0 });
  }
  const address = server.server.address();
  const port = typeof address === 'object' && address !== null ? address.port : wantedPort;
  return { url: `http://${LOOPBACK}:${port}/`, port, close: () => server.close() };
}
