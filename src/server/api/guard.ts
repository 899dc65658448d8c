import type { FastifyInstance, FastifyRequest, RouteOptions } from 'fastify';
import type { Permission } from '../../contract/index.js';
import type { Actor } from '../../workshop/index.js';
import { workshopProblem } from '../workshop-problem.js';

/** Lets no route be made from here on that does not say whom it is for. */
export function refuseUnmarkedRoutes(api: FastifyInstance): void {
  api.addHook('onRoute', refuseUnmarked);
}

/** Lets nobody to a route who may not use it, before anything that was sent is looked at. */
export function guard(api: FastifyInstance): void {
  api.addHook('onRequest', async (request) => {
    const { open, permission } = request.routeOptions.config;
    // An address where nothing stands is told as such, to anyone.
    if (open === true || request.is404) return;
    const actor = signedIn(request);
    if (permission !== undefined) mayOrNot(actor, permission);
  });
}

/** Who asks; a problem where nobody has signed in. */
export function signedIn({ asker }: FastifyRequest): Actor {
  if (asker) return asker.actor;
  throw workshopProblem({ code: 'sign-in.needed' });
}

function mayOrNot({ permissions }: Actor, permission: Permission): void {
  if (!permissions.has(permission)) throw workshopProblem({ code: 'permission.missing', permission });
}

function refuseUnmarked({ method, url, config = {} }: RouteOptions): void {
  const { permission, open, signedIn } = config;
  if (permission === undefined && open !== true && signedIn !== true) {
    throw new Error(`${String(method)} ${url} does not say whom it is for (permission, signedIn or open)`);
  }
}
