import { isIPv6 } from 'node:net';
import type { FastifyInstance } from 'fastify';

export interface OpenServer {
  readonly url: string;
  /** The port it listens on, which is another than the wanted one where that was taken. */
  readonly port: number;
  /** Lets go of the port and of every open connection. */
  readonly close: () => Promise<void>;
}

export interface Listening {
  /** This machine alone where left out. */
  readonly host?: string;
  readonly secure?: boolean;
  /** Whether any free port will do where the wanted one is taken: yes where left out. Tablets that know a shop by its address would
   * look for it in vain elsewhere. */
  readonly elsewhere?: boolean;
}

/** Only this machine may ask where nothing else is said. */
const LOOPBACK = '127.0.0.1';

/** Lets a server listen on the wanted port, or on any free one where that is taken (0: any free one). */
export async function openServer(
  server: FastifyInstance,
  wantedPort: number,
  { host = LOOPBACK, secure = false, elsewhere = true }: Listening = {},
): Promise<OpenServer> {
  try {
    await server.listen({ host, port: wantedPort });
  } catch (fault) {
    const isTaken = fault instanceof Error && 'code' in fault && fault.code === 'EADDRINUSE';
    if (!isTaken || wantedPort === 0 || !elsewhere) throw fault;
    await server.listen({ host, port: 0 });
  }
  const address = server.server.address();
  const port = typeof address === 'object' && address !== null ? address.port : wantedPort;
  const name = isIPv6(host) ? `[${host}]` : host;
  return {
    url: `${secure ? 'https' : 'http'}://${name}:${port}/`,
    port,
    close: () => server.close(),
  };
}
