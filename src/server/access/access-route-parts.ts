import type { FastifyRequest } from 'fastify';
import type { AccessParts, Known } from '../../workshop/index.js';
import type { CookieKeeper } from './cookies.js';
import type { RateLimiter } from './rate-limits.js';

/** What the routes of the way in need of it. */
export interface AccessRouteParts extends AccessParts {
  readonly cookies: CookieKeeper;
  /** Counts whoever comes to a door. */
  readonly limited: RateLimiter;
  /** Who stands behind a request, where anybody does. */
  readonly known: (request: FastifyRequest) => Known | undefined;
}
