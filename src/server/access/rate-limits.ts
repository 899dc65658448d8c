import fastifyRateLimit from '@fastify/rate-limit';
import type { FastifyInstance, FastifyRequest } from 'fastify';
import { Problem } from '../problem.js';
import { workshopProblem } from '../workshop-problem.js';

/** So many requests from one address in so long a time. */
export interface RateLimit {
  readonly most: number;
  readonly inMs: number;
}

export interface RateLimits {
  /** Everything below the API. */
  readonly all: RateLimit;
  /** Everything that takes a password, a PIN or a link. */
  readonly signIn: RateLimit;
}

const MINUTE_MS = 60_000;

/** A hundred tablets behind one address, each sending once a second, stay within it. At the door a person who mistypes stays
 * within it; the counts of wrong attempts, which are kept in the database, stop whoever goes slower. */
export const USUAL_RATE_LIMITS: RateLimits = {
  all: { most: 6000, inMs: MINUTE_MS },
  signIn: { most: 30, inMs: MINUTE_MS },
};

/** Counts a request of an address, and refuses it where it is one too many. */
export type RateLimiter = (request: FastifyRequest) => Promise<void>;

/** A count for everything, and one for all doors together: else each door would have its own. */
export async function rateLimiters(
  api: FastifyInstance,
  { all, signIn }: RateLimits,
): Promise<{ readonly all: RateLimiter; readonly signIn: RateLimiter }> {
  await api.register(fastifyRateLimit, { global: false });
  const limiter = ({ most, inMs }: RateLimit): RateLimiter => {
    const count = api.createRateLimit({ max: most, timeWindow: inMs });
    return async (request) => {
      const counted = await count(request);
      if (!counted.isAllowed && counted.isExceeded) throw tooMany(counted.ttlInSeconds);
    };
  };
  return { all: limiter(all), signIn: limiter(signIn) };
}

const tooMany = (seconds: number): Problem =>
  new Problem({
    ...workshopProblem({ code: 'http.too-many' }),
    headers: { 'retry-after': String(Math.max(1, seconds)) },
  });
