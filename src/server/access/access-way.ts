import fastifyCookie from '@fastify/cookie';
import type { FastifyRequest } from 'fastify';
import { type AccessParts, authenticate, type Known, recognise } from '../../workshop/index.js';
import type { WayIn } from '../asker.js';
import { orProblem } from './access-problem.js';
import type { AccessRouteParts } from './access-route-parts.js';
import { authorityRoute } from './authority-route.js';
import { cookieKeeper } from './cookies.js';
import { credentialsOf } from './credentials.js';
import { deviceRoutes } from './device-routes.js';
import { listRoutes } from './list-routes.js';
import { refuseForeignName, refuseForeignPage } from './own-page.js';
import { ownRoutes } from './own-routes.js';
import { type RateLimits, rateLimiters, USUAL_RATE_LIMITS } from './rate-limits.js';
import { signInRoutes } from './sign-in-routes.js';

export interface AccessWayParts extends AccessParts {
  /** Whether browsers reach the server over https: by its own certificate, or that of a proxy before it. */
  readonly secure: boolean;
  /** Names and addresses that the server goes by; left out, any. */
  readonly names?: readonly string[];
  /** The local authority's certificate, PEM, for devices to fetch and install. */
  readonly authority?: string;
  readonly rateLimits?: RateLimits;
}

/**
 * The way in to the API: makes sure who asks (a token, or the cookie of a session), from which page, and how often; adds the
 * routes for signing in and for what belongs to it.
 */
export const accessWay =
  ({ secure, names, authority, rateLimits = USUAL_RATE_LIMITS, ...parts }: AccessWayParts): WayIn =>
  async (api) => {
    const askers = new WeakMap<FastifyRequest, Known>();
    await api.register(fastifyCookie);
    const limited = await rateLimiters(api, rateLimits);
    // First of all, so that whoever is refused is counted too.
    api.addHook('onRequest', limited.all);
    api.addHook('onRequest', async (request, reply) => {
      reply.header('cache-control', 'no-store');
      refuseForeignName(request, names);
      const known = await knownOf(parts, request);
      if (known) askers.set(request, known);
    });
    const routeParts: AccessRouteParts = {
      ...parts,
      limited: limited.signIn,
      cookies: cookieKeeper({ secure }),
      known: (request) => askers.get(request),
    };
    signInRoutes(api, routeParts);
    ownRoutes(api, routeParts);
    deviceRoutes(api, routeParts);
    listRoutes(api, routeParts);
    if (authority !== undefined) authorityRoute(api, authority);
  };

/** Sets `request.asker`. Where a route is open to anyone, a key that no longer fits is no hindrance. */
async function knownOf(parts: AccessParts, request: FastifyRequest): Promise<Known | undefined> {
  const isOpen = request.routeOptions.config.open === true;
  const credentials = credentialsOf(request);
  refuseForeignPage(request, { byCookie: !isOpen && credentials !== undefined && 'session' in credentials });
  const known = credentials && (await authenticate(parts, credentials));
  if (!known || (!known.ok && (isOpen || request.is404))) return undefined;
  const { actor } = orProblem(known);
  const again = async () => {
    const now = await recognise(parts, credentials!);
    return now.ok ? now.value.actor : undefined;
  };
  request.asker = { actor, again };
  return known.ok ? known.value : undefined;
}
