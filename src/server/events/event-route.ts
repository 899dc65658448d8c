import type { FastifyContextConfig, FastifyInstance, FastifyRequest } from 'fastify';
import Type from 'typebox';
import { problemDetails } from '../../contract/index.js';
import type { Store } from '../../workshop/index.js';
import { workshopProblem } from '../workshop-problem.js';
import { eventHub } from './event-hub.js';

/** Live news of what changed, as server-sent events: the number of each is its id, and `Last-Event-ID` resumes after it. */
export function eventRoute(api: FastifyInstance, store: Store, beatMs?: number): void {
  const onFault = (fault: unknown) => api.log.warn(fault);
  const hub = eventHub({ store, onFault, ...(beatMs === undefined ? {} : { beatMs }) });
  api.addHook('preClose', async () => hub.close());
  api.addHook('onResponse', async ({ method, routeOptions: { config } }) => {
    if (method === 'POST' && isOfAccess(config)) hub.lookAgain();
  });
  api.get('/events', {
    config: { permission: 'events.read' },
    schema: SCHEMA,
    exposeHeadRoute: false,
    handler: async (request, reply) => {
      hub.refuseWhenFull();
      const after = lastSeen(request);
      reply.hijack();
      const { raw } = reply;
      raw.writeHead(200, { ...(reply.getHeaders() as Record<string, string>), ...HEADERS });
      await hub.open(raw, request.asker!, after).catch((fault: unknown) => {
        onFault(fault);
        raw.destroy();
      });
    },
  });
}

/** Whether people and their sign-ins change by it: signing out is open to anyone. */
const isOfAccess = ({ open, signedIn, permission }: FastifyContextConfig): boolean =>
  open === true || signedIn === true || permission === 'people.manage' || permission === 'account.own';

const HEADERS = {
  'content-type': 'text/event-stream; charset=utf-8',
  'cache-control': 'no-store',
  // For proxies that else collect an answer before they hand it on.
  'x-accel-buffering': 'no',
};

const SCHEMA = {
  operationId: 'listen-events',
  summary:
    'Live news of what changed, as server-sent events. Resumes after the `Last-Event-ID`; without one it begins now.',
  tags: ['events'],
  'x-permission': 'events.read',
  headers: {
    type: 'object',
    properties: { 'Last-Event-ID': { type: 'string', description: 'id of the last event that you have' } },
  },
  querystring: Type.Object(
    {
      after: Type.Optional(
        Type.Integer({ minimum: 0, description: 'the same, where a header cannot be sent' }),
      ),
    },
    { additionalProperties: false },
  ),
  response: {
    200: {
      description:
        'Events `change` with topic, recordId, version, useCase and at; `here` first; `start-over` where the id is unknown: read everything anew; `sign-in-ended` last.',
      content: { 'text/event-stream': { schema: Type.String() } },
    },
    default: problemDetails,
  },
} as const;

function lastSeen({ headers, query }: FastifyRequest): number | undefined {
  const header = headers['last-event-id'];
  if (header === undefined || header === '') return (query as { readonly after?: number }).after;
  if (typeof header === 'string' && /^\d{1,15}$/.test(header)) return Number(header);
  throw workshopProblem({ code: 'events.unreadable-id', given: header });
}
