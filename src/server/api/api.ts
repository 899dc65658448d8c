import type { FastifyInstance } from 'fastify';
import { type AnyUseCase, type Store, USE_CASES } from '../../workshop/index.js';
import type { WayIn } from '../asker.js';
import { eventRoute } from '../events/event-route.js';
import { documentRoutes } from './document-routes.js';
import { guard, refuseUnmarkedRoutes } from './guard.js';
import { describedApi } from './openapi.js';
import { readingRoutes } from './reading-routes.js';
import { recordRoutes } from './record-routes.js';
import { checkedInput, checkedOutput } from './schema-checks.js';
import { useCaseRoutes } from './use-case-routes.js';

export interface ApiParts {
  readonly store: Store;
  readonly wayIn: WayIn;
  /** What can be asked; everything where left out. */
  readonly useCases?: readonly AnyUseCase[];
  /** Milliseconds between signs of life to those who listen to events. */
  readonly beatMs?: number;
}

/** Everything under `/api/v1` but the demo: made from the definitions of records and use cases, not by hand. */
export async function shopApi(api: FastifyInstance, parts: ApiParts): Promise<void> {
  const { store, wayIn, useCases = USE_CASES, beatMs } = parts;
  api.setValidatorCompiler(checkedInput);
  api.setSerializerCompiler(checkedOutput);
  api.removeContentTypeParser('text/plain');
  api.decorateRequest('asker', undefined);
  await describedApi(api);
  refuseUnmarkedRoutes(api);
  // First who asks, then whether that person may.
  await wayIn(api);
  guard(api);
  documentRoutes(api);
  recordRoutes(api, store);
  readingRoutes(api, store);
  eventRoute(api, store, beatMs);
  useCaseRoutes(api, store, useCases);
}
