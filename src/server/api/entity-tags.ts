import type { FastifyRequest } from 'fastify';
import { workshopProblem } from '../workshop-problem.js';

/** The tag of a record: its version in quotation marks (RFC 9110, 8.8.3). Undefined where there is no version. */
export function etagOf(answer: unknown): string | undefined {
  const { version } = (answer ?? {}) as { readonly version?: unknown };
  return typeof version === 'number' ? `"${version}"` : undefined;
}

/** Whether the asker already has what bears this tag (RFC 9110, 13.1.2: compared weakly, `*` is any). */
export function hasAlready({ headers }: FastifyRequest, etag: string): boolean {
  const tags = headers['if-none-match'];
  return tags?.split(',').some((tag) => ['*', etag, `W/${etag}`].includes(tag.trim())) ?? false;
}

/**
 * Puts the version of an `If-Match` where the use case looks for it, so that a client may give it either way. Two that
 * contradict each other, one that cannot be read, and none where one is needed are problems.
 */
export function expectedVersionFrom(request: FastifyRequest, takes: 'never' | 'may' | 'must'): void {
  const given = request.headers['if-match'];
  const { body } = request;
  // The check of the body tells what is wrong with it.
  if (typeof body !== 'object' || body === null || Array.isArray(body)) return;
  const { expectedVersion: inBody } = body as { readonly expectedVersion?: unknown };
  if (given === undefined) {
    if (inBody === undefined && takes === 'must') throw workshopProblem({ code: 'version.needed' });
    return;
  }
  if (takes === 'never') throw workshopProblem({ code: 'version.not-used' });
  const version = Number(/^"([1-9]\d{0,14})"$/.exec(given)?.[1] ?? Number.NaN);
  if (Number.isNaN(version)) throw workshopProblem({ code: 'version.unreadable', given });
  if (inBody !== undefined && inBody !== version) {
    throw workshopProblem({ code: 'version.contradicts', given, inBody });
  }
  request.body = { ...body, expectedVersion: version };
}
