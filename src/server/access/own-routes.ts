import type { FastifyInstance, FastifyRequest } from 'fastify';
import { ACCESS_SCHEMAS } from '../../contract/index.js';
import { changePassword, type Known, setPin } from '../../workshop/index.js';
import { workshopProblem } from '../workshop-problem.js';
import { orProblem } from './access-problem.js';
import type { AccessRouteParts } from './access-route-parts.js';
import { accessRoute } from './access-routes.js';
import { begun } from './sign-in-routes.js';

/** What belongs to whoever is signed in: who that is, the password, the PIN. */
export function ownRoutes(api: FastifyInstance, parts: AccessRouteParts): void {
  accessRoute(api, {
    method: 'GET',
    path: '/me',
    name: 'me',
    summary: 'Who asks, and what may be done.',
    whom: 'signed-in',
    answer: ACCESS_SCHEMAS.me,
    handler: async ({ request }) => {
      const known = parts.known(request);
      if (!known) throw workshopProblem({ code: 'access.session-over' });
      return meOf(known);
    },
  });
  accessRoute(api, {
    method: 'POST',
    path: '/change-password',
    name: 'change-password',
    summary: "Changes one's own password and signs out everywhere else.",
    whom: 'account.own',
    limited: parts.limited,
    body: ACCESS_SCHEMAS.changePassword,
    answer: ACCESS_SCHEMAS.signedIn,
    handler: async ({ request, reply, body }) => {
      const signedIn = orProblem(await changePassword(parts, inSession(parts, request), body));
      return begun(parts, request, { reply, signedIn });
    },
  });
  accessRoute(api, {
    method: 'POST',
    path: '/set-pin',
    name: 'set-pin',
    summary: "Sets one's own PIN for enrolled devices.",
    whom: 'account.own',
    limited: parts.limited,
    body: ACCESS_SCHEMAS.setPin,
    answer: ACCESS_SCHEMAS.done,
    handler: async ({ request, body }) => orProblem(await setPin(parts, inSession(parts, request), body)),
  });
}

/** Whoever is signed in by a session; a token is refused. */
export function inSession(parts: AccessRouteParts, request: FastifyRequest): Known {
  const known = parts.known(request);
  if (!known?.session) throw workshopProblem({ code: 'access.session-needed' });
  return known;
}

export function meOf(known: Known) {
  const { actor, person, session } = known;
  return {
    by: actor.by,
    person: { id: person.id, name: person.body.name, roles: person.body.roles },
    permissions: [...actor.permissions],
    ...(person.body.sight ? { sight: person.body.sight } : {}),
    ...(session ? { session: { id: session.id, via: session.via, expiresAt: session.expiresAt } } : {}),
  };
}
