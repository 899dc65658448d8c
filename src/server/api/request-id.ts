import type { FastifyRequest } from 'fastify';
import { workshopProblem } from '../workshop-problem.js';

/** The client's own id of a write, from its `Idempotency-Key`. */
export function requestIdOf({ headers }: FastifyRequest): string {
  const key = headers['idempotency-key'];
  if (key === undefined || key === '') throw workshopProblem({ code: 'idempotency-key.missing' });
  if (typeof key === 'string' && UUID.test(key)) return key.toLowerCase();
  throw workshopProblem({ code: 'idempotency-key.unreadable', key });
}

const UUID = /^[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}$/i;
