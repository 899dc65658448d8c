import type { FastifyRequest } from 'fastify';
import type { Credentials } from '../../workshop/index.js';
import { cookieOf } from './cookies.js';

/** What a request shows of who asks. A token goes before a cookie: whoever writes it means it. */
export function credentialsOf(request: FastifyRequest): Credentials | undefined {
  const { authorization } = request.headers;
  if (authorization !== undefined) return { token: authorization.replace(/^Bearer +/i, '') };
  const session = cookieOf(request, 'tautwork-session');
  return session === undefined || session === '' ? undefined : { session };
}
