import { fileURLToPath } from 'node:url';
import { demoDay, demoShop, packageRoot } from '../workshop/index.js';
import { createServer } from './create-server.js';
import { type OpenServer, openServer } from './open-server.js';

/** Opens the demo workshop on the wanted port of this machine, or on a free one where that is taken. */
export function startServer({ port }: { readonly port: number }): Promise<OpenServer> {
  const webRoot = fileURLToPath(new URL('dist/web/', packageRoot()));
  return openServer(
    createServer({ dayOf: demoDay, shopOf: demoShop, webRoot, log: { level: 'warn' } }),
    port,
  );
}
