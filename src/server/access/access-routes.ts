import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify';
import type { Static, TSchema } from 'typebox';
import { type Permission, problemDetails } from '../../contract/index.js';
import type { RateLimiter } from './rate-limits.js';

/** A password, a PIN, a name: nobody needs more than this to sign in. */
const MOST_BYTES = 16 * 1024;

interface AccessRoute<Body extends TSchema, Answer extends TSchema> {
  readonly method: 'GET' | 'POST';
  readonly path: string;
  readonly name: string;
  readonly summary: string;
  /** Whom it is for: anyone, everyone who is signed in, or whoever has the permission. */
  readonly whom: 'anyone' | 'signed-in' | Permission;
  readonly body?: Body;
  readonly query?: TSchema;
  readonly answer: Answer;
  /** Takes a password, a PIN or a link, and is therefore asked seldom. */
  readonly limited?: RateLimiter;
  readonly handler: (asked: {
    readonly request: FastifyRequest;
    readonly reply: FastifyReply;
    readonly body: Static<Body>;
  }) => Promise<Static<Answer>>;
}

/** Adds a route of the way in. */
export function accessRoute<Body extends TSchema, Answer extends TSchema>(
  api: FastifyInstance,
  route: AccessRoute<Body, Answer>,
): void {
  const { method, path, name, summary, whom, body, query, answer, limited, handler } = route;
  api.route({
    method,
    url: path,
    bodyLimit: MOST_BYTES,
    config: configOf(whom),
    ...(limited ? { onRequest: limited } : {}),
    schema: {
      operationId: name,
      summary,
      tags: ['sign-in'],
      ...(body ? { body } : {}),
      ...(query ? { querystring: query } : {}),
      response: { 200: answer, default: problemDetails },
      ...(whom === 'anyone' || whom === 'signed-in' ? {} : { 'x-permission': whom }),
      ...(whom === 'anyone' ? { security: [] } : {}),
    },
    handler: (request, reply) => handler({ request, reply, body: request.body as Static<Body> }),
  });
}

function configOf(whom: 'anyone' | 'signed-in' | Permission) {
  if (whom === 'anyone') return { open: true };
  return whom === 'signed-in' ? { signedIn: true } : { permission: whom };
}
