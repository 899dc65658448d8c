import { fileURLToPath } from 'node:url';
import { demoDay } from '../workshop/index.js';
import { createServer } from './create-server.js';
import { type OpenServer, openServer } from './open-server.js';

/** The same folder whether this file runs compiled (dist/src/server) or as it is (src/server). */
const WEB_ROOT = fileURLToPath(
  new URL(import.meta.url.includes('/dist/src/') ? '../../web/' : '../../dist/web/', import.meta.url),
);

/** Opens the demo workshop on the wanted port of this machine, or on a free one where that is taken. */
export const startServer = ({ port }: { readonly port: number }): Promise<OpenServer> =>
  openServer(createServer({ dayOf: demoDay, webRoot: WEB_ROOT, log: true }), port);
