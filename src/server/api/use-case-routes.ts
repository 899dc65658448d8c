import type { FastifyInstance, FastifyRequest } from 'fastify';
import { problemDetails, withoutSecrets } from '../../contract/index.js';
import { type AnyUseCase, type Clock, newId, perform, type Store } from '../../workshop/index.js';
import { workshopProblem } from '../workshop-problem.js';
import { etagOf, expectedVersionFrom } from './entity-tags.js';
import { signedIn } from './guard.js';
import { requestIdOf } from './request-id.js';

/** A route for each use case: what it is called, takes, gives and asks for stands in its definition. */
export function useCaseRoutes(api: FastifyInstance, parts: Parts, useCases: readonly AnyUseCase[]): void {
  for (const useCase of useCases) useCaseRoute(api, parts, useCase);
}

interface Parts {
  readonly store: Store;
  readonly clock: Clock;
}

function useCaseRoute(api: FastifyInstance, { store, clock }: Parts, useCase: AnyUseCase): void {
  const { name, summary, path, permission, input, output } = useCase.definition;
  const takesVersion = takesExpectedVersion(useCase);
  api.route({
    method: 'POST',
    url: path,
    config: { permission },
    bodyLimit: LARGE_BODIES[name] ?? USUAL_BODY,
    schema: {
      operationId: name,
      summary,
      tags: [path.split('/')[1] ?? path],
      body: input,
      headers: headersOf(takesVersion),
      response: { 200: output, default: problemDetails },
      'x-permission': permission,
    },
    preValidation: async (request) => {
      requestIdOf(request);
      expectedVersionFrom(request, takesVersion);
    },
    handler: async (request, reply) => {
      const answer = await perform(store, useCase, {
        actor: signedIn(request),
        clock,
        newId,
        input: request.body,
        requestId: requestIdOf(request),
      });
      if (!answer.ok) throw refusal(useCase, answer.fault, request);
      const etag = etagOf(answer.value);
      if (etag !== undefined) reply.header('etag', etag);
      return answer.value;
    },
  });
}

/** A stale write is answered with both versions: the record as it stands, and what would have been written over it. */
function refusal({ definition }: AnyUseCase, fault: { readonly code: string }, { body }: FastifyRequest) {
  if (fault.code !== 'stale-version') return workshopProblem(fault);
  return workshopProblem({ ...fault, yours: withoutSecrets(definition.input, body) });
}

function takesExpectedVersion({ definition }: AnyUseCase): 'never' | 'may' | 'must' {
  const { properties = {}, required = [] } = definition.input as {
    readonly properties?: Readonly<Record<string, unknown>>;
    readonly required?: readonly string[];
  };
  if (!('expectedVersion' in properties)) return 'never';
  return required.includes('expectedVersion') ? 'must' : 'may';
}

function headersOf(takesVersion: 'never' | 'may' | 'must') {
  const key = {
    type: 'string',
    format: 'uuid',
    description:
      'A UUID that you make for this request. Sent again, it gets the same answer and does nothing twice.',
  };
  const match = {
    type: 'string',
    description:
      'The version that you saw, in quotation marks; may stand here instead of `expectedVersion` in the body.',
  };
  return {
    type: 'object',
    properties: { 'Idempotency-Key': key, ...(takesVersion === 'never' ? {} : { 'If-Match': match }) },
    required: ['Idempotency-Key'],
  };
}

const USUAL_BODY = 1024 * 1024;
/** Files come inside the body of these. */
const LARGE_BODIES: Readonly<Record<string, number>> = {
  'import-orders': 16 * USUAL_BODY,
  'import-dry-room': 16 * USUAL_BODY,
};
