import { fileURLToPath } from 'node:url';
import { fail, type Result, succeed } from '../core/foundation/index.js';
import {
  type Clock,
  type ConsoleLink,
  firstOwner,
  newId,
  openStore,
  packageRoot,
  type SetBack,
  type Store,
  type StorePlace,
  shopClock,
  slowHash,
  thrownFault,
  type WorkshopFault,
} from '../workshop/index.js';
import { accessWay } from './access/access-way.js';
import { type ServerOptions, serverOptions } from './access/server-options.js';
import { createServer } from './create-server.js';
import { type OpenServer, openServer } from './open-server.js';
import type { Log } from './request-log.js';

export interface ShopToServe {
  readonly place: StorePlace;
  readonly port: number;
  /** This machine alone where left out; elsewhere only with a certificate. */
  readonly host?: string;
  readonly certificateFolder?: string;
  /** Whether any free port will do where the wanted one is taken: no where left out, as tablets know the shop by its address. */
  readonly elsewhere?: boolean;
  readonly log?: Log;
  /** The folder of the built page; this package's own where left out. */
  readonly webRoot?: string;
  /** What else works with the open records while the server does, such as backups; gives how to stop it. */
  readonly beside?: (store: Store, clock: Clock) => () => Promise<void>;
}

export interface OpenShop extends OpenServer {
  /** The one-time link of the first owner, where no owner can sign in yet. */
  readonly firstLink?: ConsoleLink;
  /** Where the computer's clock stands behind what is written already. */
  readonly clockSetBack?: SetBack;
  readonly renewSoon?: ServerOptions['renewSoon'];
}

/** Opens a shop's records and serves them: the page, the API, live events. A shop that cannot be opened, and a network that may
 * not be served, are faults. */
export async function serveShop(wanted: ShopToServe): Promise<Result<OpenShop, WorkshopFault>> {
  const options = await serverOptions({
    now: new Date(),
    ...(wanted.host === undefined ? {} : { host: wanted.host }),
    ...(wanted.certificateFolder === undefined ? {} : { certificateFolder: wanted.certificateFolder }),
  });
  if (!options.ok) return options;
  const opened = await openedStore(wanted.place);
  if (!opened.ok) return opened;
  const store = opened.value;
  try {
    return succeed(await serveStore(store, wanted, options.value));
  } catch (thrown) {
    await store.close();
    throw thrown;
  }
}

async function openedStore(place: StorePlace): Promise<Result<Store, WorkshopFault>> {
  try {
    return succeed(await openStore(place));
  } catch (thrown) {
    const fault = thrownFault(thrown);
    if (!fault) throw thrown;
    return fail(fault);
  }
}

async function serveStore(
  store: Store,
  { port, log, beside, webRoot, elsewhere = false }: ShopToServe,
  { host, names, secure, tls, authority, renewSoon }: ServerOptions,
): Promise<OpenShop> {
  const clock = await shopClock(store);
  const parts = { store, clock, newId };
  const firstLink = await firstOwner(parts);
  const wayIn = accessWay({
    ...parts,
    slowHash: slowHash(),
    secure,
    names,
    ...(authority === undefined ? {} : { authority }),
  });
  const server = createServer({
    webRoot: webRoot ?? fileURLToPath(new URL('dist/web/', packageRoot())),
    shop: { store, wayIn, clock },
    ...(log ? { log } : {}),
    ...(tls ? { tls } : {}),
  });
  const stopBeside = beside?.(store, clock);
  const open = await openServer(server, port, { host, secure, elsewhere });
  const clockSetBack = clock.setBack();
  return {
    ...open,
    // `0.0.0.0` is no place to go to: the first name of the certificate is what browsers trust.
    ...(secure ? { url: `https://${names[0]}:${open.port}/` } : {}),
    close: async () => {
      await open.close();
      await stopBeside?.();
      await store.close();
    },
    ...(firstLink ? { firstLink } : {}),
    ...(clockSetBack ? { clockSetBack } : {}),
    ...(renewSoon ? { renewSoon } : {}),
  };
}
