import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify';
import { ACCESS_SCHEMAS } from '../../contract/index.js';
import {
  permissionsIn,
  pinSignIn,
  type SignedIn,
  setPassword,
  signIn,
  signOut,
} from '../../workshop/index.js';
import { orProblem } from './access-problem.js';
import type { AccessRouteParts } from './access-route-parts.js';
import { accessRoute } from './access-routes.js';
import { cookieOf } from './cookies.js';

/** The doors: with name and password, with a PIN, by a one-time link, and out again. */
export function signInRoutes(api: FastifyInstance, parts: AccessRouteParts): void {
  accessRoute(api, {
    method: 'POST',
    path: '/sign-in',
    name: 'sign-in',
    summary: 'Signs in with name and password; the session is in the cookie that comes back.',
    whom: 'anyone',
    limited: parts.limited,
    body: ACCESS_SCHEMAS.signIn,
    answer: ACCESS_SCHEMAS.signedIn,
    handler: async ({ request, reply, body }) =>
      begun(parts, request, { reply, signedIn: orProblem(await signIn(parts, body)) }),
  });
  accessRoute(api, {
    method: 'POST',
    path: '/pin-sign-in',
    name: 'pin-sign-in',
    summary: 'Signs in with a PIN, on an enrolled device only.',
    whom: 'anyone',
    limited: parts.limited,
    body: ACCESS_SCHEMAS.pinSignIn,
    answer: ACCESS_SCHEMAS.signedIn,
    handler: async ({ request, reply, body }) => {
      const device = cookieOf(request, 'tautwork-device');
      return begun(parts, request, {
        reply,
        signedIn: orProblem(await pinSignIn(parts, { ...body, device })),
      });
    },
  });
  accessRoute(api, {
    method: 'POST',
    path: '/set-password',
    name: 'set-password',
    summary: 'Sets a password by a one-time link, and signs in.',
    whom: 'anyone',
    limited: parts.limited,
    body: ACCESS_SCHEMAS.setPassword,
    answer: ACCESS_SCHEMAS.signedIn,
    handler: async ({ request, reply, body }) =>
      begun(parts, request, { reply, signedIn: orProblem(await setPassword(parts, body)) }),
  });
  accessRoute(api, {
    method: 'POST',
    path: '/sign-out',
    name: 'sign-out',
    summary: 'Ends the session of the cookie.',
    whom: 'anyone',
    answer: ACCESS_SCHEMAS.done,
    handler: async ({ request, reply }) => {
      await endEarlier(parts, request);
      parts.cookies.clear(reply, 'tautwork-session');
      return { done: true as const };
    },
  });
}

/** Puts the session into the cookie and tells who it is. Whoever was signed in on this browser before is so no more. */
export async function begun(
  parts: AccessRouteParts,
  request: FastifyRequest,
  { reply, signedIn }: { readonly reply: FastifyReply; readonly signedIn: SignedIn },
) {
  const { person, session, key } = signedIn;
  await endEarlier(parts, request);
  parts.cookies.set(reply, 'tautwork-session', key);
  return {
    person: { id: person.id, name: person.body.name, roles: person.body.roles },
    permissions: [...permissionsIn(session.via, person)],
    session: { id: session.id, via: session.via, expiresAt: session.expiresAt },
  };
}

async function endEarlier(parts: AccessRouteParts, request: FastifyRequest): Promise<void> {
  const earlier = parts.known(request)?.session;
  if (earlier) await signOut(parts, earlier.id);
}
