import { createClient, type ProblemDetails } from '../../contract/index.js';
import type { Result } from '../../core/foundation/index.js';

/** The shop's server, asked from a page of its own: the cookie says who asks. */
export const client = createClient({ fetch: (url, request) => fetch(url, request) });

/** A refusal of the server on its way through the query library, which knows only thrown errors. */
export class Refused extends Error {
  override readonly name = 'Refused';
  constructor(readonly problem: ProblemDetails) {
    super(problem.detail);
  }
}

export async function orRefused<Value>(answer: Promise<Result<Value, ProblemDetails>>): Promise<Value> {
  const answered = await answer;
  if (answered.ok) return answered.value;
  throw new Refused(answered.fault);
}

/** Whether nothing came back at all: no network, or no server. */
export const isNoAnswer = (thrown: unknown): boolean =>
  thrown instanceof Refused && thrown.problem.status === 0;
