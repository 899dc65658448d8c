import type { FastifyInstance } from 'fastify';
import {
  type AnyUseCase,
  type Clock,
  computerClock,
  type ShopClock,
  type Store,
  USE_CASES,
} from '../../workshop/index.js';
import type { WayIn } from '../asker.js';
import { eventRoute } from '../events/event-route.js';
import { cardRoute } from './card-route.js';
import { documentRoutes } from './document-routes.js';
import { guard, refuseUnmarkedRoutes } from './guard.js';
import { labelRoutes } from './label-routes.js';
import { describedApi } from './openapi.js';
import { paperRoutes } from './paper-routes.js';
import { readingRoutes } from './reading-routes.js';
import { recordRoutes } from './record-routes.js';
import { checkedInput, checkedOutput } from './schema-checks.js';
import { useCaseRoutes } from './use-case-routes.js';

export interface ApiParts {
  readonly store: Store;
  readonly wayIn: WayIn;
  /** The computer's where left out. */
  readonly clock?: Clock & Partial<ShopClock>;
  /** What can be asked; everything where left out. */
  readonly useCases?: readonly AnyUseCase[];
  /** Milliseconds between signs of life to those who listen to events. */
  readonly beatMs?: number;
}

/** Everything under `/api/v1` but the demo: made from the definitions of records and use cases, not by hand. */
export async function shopApi(api: FastifyInstance, parts: ApiParts): Promise<void> {
  const { store, wayIn, useCases = USE_CASES, clock = computerClock, beatMs } = parts;
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
  labelRoutes(api, store, clock);
  recordRoutes(api, store);
  cardRoute(api, store);
  readingRoutes(api, store, clock);
  paperRoutes(api, store, clock);
  eventRoute(api, store, beatMs);
  useCaseRoutes(api, { store, clock }, useCases);
}
