import type { FastifyInstance, FastifyRequest } from 'fastify';
import Type from 'typebox';
import { ACCESS_SCHEMAS, id } from '../../contract/index.js';
import { deviceView, openSessions, tokenView } from '../../workshop/index.js';
import { workshopProblem } from '../workshop-problem.js';
import type { AccessRouteParts } from './access-route-parts.js';
import { accessRoute } from './access-routes.js';

/** Which keys there are: devices, tokens, sessions. Never the keys themselves. */
export function listRoutes(api: FastifyInstance, parts: AccessRouteParts): void {
  accessRoute(api, {
    method: 'GET',
    path: '/devices',
    name: 'list-devices',
    summary: 'Every device that is or was enrolled.',
    whom: 'people.manage',
    answer: ACCESS_SCHEMAS.devices,
    handler: () =>
      parts.store.read(async ({ access }) => ({ items: (await access.devices()).map(deviceView) })),
  });
  accessRoute(api, {
    method: 'GET',
    path: '/tokens',
    name: 'list-tokens',
    summary: 'Every token that was made, with its scopes.',
    whom: 'people.manage',
    answer: ACCESS_SCHEMAS.tokens,
    handler: () =>
      parts.store.read(async ({ access }) => ({ items: (await access.tokens()).map(tokenView) })),
  });
  accessRoute(api, {
    method: 'GET',
    path: '/sessions',
    name: 'list-sessions',
    summary: 'Where one is signed in oneself, or where a person is, for whoever keeps the people.',
    whom: 'account.own',
    query: Type.Object({ personId: Type.Optional(id) }, { additionalProperties: false }),
    answer: ACCESS_SCHEMAS.sessions,
    handler: ({ request }) => sessionsFor(parts, request),
  });
}

async function sessionsFor(parts: AccessRouteParts, request: FastifyRequest) {
  const { actor } = request.asker!;
  const { personId = actor.personId } = request.query as { readonly personId?: string };
  const permission = 'people.manage';
  if (personId === undefined || (personId !== actor.personId && !actor.permissions.has(permission))) {
    throw workshopProblem({ code: 'permission.missing', permission });
  }
  const open = await parts.store.read((tx) => openSessions(tx, personId, parts.clock.now()));
  return {
    items: open.map(({ id, personId, via, deviceId, createdAt, expiresAt }) => ({
      id,
      personId,
      via,
      deviceId,
      createdAt,
      expiresAt,
    })),
  };
}
