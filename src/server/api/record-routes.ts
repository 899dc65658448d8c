import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify';
import Type from 'typebox';
import {
  id,
  pageAnswer,
  problemDetails,
  RECORD_KINDS,
  type RecordKind,
  type RecordKindDefinition,
  recordOf,
  recordQuery,
  USUAL_PAGE,
  wholeAnswer,
} from '../../contract/index.js';
import type { ListQuery, Store } from '../../workshop/index.js';
import { workshopProblem } from '../workshop-problem.js';
import { etagOf, hasAlready } from './entity-tags.js';

/** For each kind of record: a list, one, and its versions. */
export function recordRoutes(api: FastifyInstance, store: Store): void {
  for (const kind of Object.keys(RECORD_KINDS) as RecordKind[]) {
    listRoute(api, store, kind);
    oneRoute(api, store, kind);
    versionsRoute(api, store, kind);
  }
}

function listRoute(api: FastifyInstance, store: Store, kind: RecordKind): void {
  const { collection } = definitionOf(kind);
  api.get<{ Querystring: ListValues }>(`/${collection}`, {
    ...routeOf(kind, `list-${collection}`, `A page of the ${inWords(collection)}, newest first.`, {
      querystring: recordQuery(kind),
      response: { 200: pageAnswer(recordOf(kind)), default: problemDetails },
    }),
    handler: ({ query }) => store.read(({ records }) => records.list(kind, listQuery(query))),
  });
}

function oneRoute(api: FastifyInstance, store: Store, kind: RecordKind): void {
  const { collection } = definitionOf(kind);
  api.get<{ Params: ById }>(`/${collection}/:id`, {
    ...routeOf(kind, `get-${kind}`, `One of the ${inWords(collection)}, with its version as ETag.`, {
      params: byId,
      response: { 200: recordOf(kind), 304: NOTHING_NEW, default: problemDetails },
    }),
    handler: async (request, reply) => {
      const record = await store.read(({ records }) => records.get(kind, request.params.id));
      return record ? asTagged(record, request, reply) : noSuch(kind, request.params.id);
    },
  });
}

function versionsRoute(api: FastifyInstance, store: Store, kind: RecordKind): void {
  const { collection } = definitionOf(kind);
  const summary = `Every version that one of the ${inWords(collection)} had, the present one last.`;
  api.get<{ Params: ById }>(`/${collection}/:id/versions`, {
    ...routeOf(kind, `list-${kind}-versions`, summary, {
      params: byId,
      response: { 200: wholeAnswer(recordOf(kind)), default: problemDetails },
    }),
    handler: async ({ params }) => {
      const items = await store.read(({ records }) => records.versions(kind, params.id));
      return items.length > 0 ? { items } : noSuch(kind, params.id);
    },
  });
}

interface ById {
  readonly id: string;
}

type ListValues = Readonly<Record<string, string | number>>;

const byId = Type.Object({ id }, { additionalProperties: false });
const NOTHING_NEW = Type.Null({ description: 'You have this version already.' });

function routeOf(kind: RecordKind, operationId: string, summary: string, schema: object) {
  const { collection, readPermission } = definitionOf(kind);
  return {
    config: { permission: readPermission },
    schema: { operationId, summary, tags: [collection], 'x-permission': readPermission, ...schema },
  };
}

/** Paging and search stand by themselves; all else in a query is a key, or the state. */
function listQuery({ after, limit, order, search, ...where }: ListValues): ListQuery {
  return {
    where,
    limit: Number(limit ?? USUAL_PAGE),
    ...(after === undefined ? {} : { after: String(after) }),
    ...(search === undefined ? {} : { search: String(search) }),
    order: order === 'oldest' ? 'oldest' : 'newest',
  };
}

function asTagged(record: { readonly version: number }, request: FastifyRequest, reply: FastifyReply) {
  const etag = etagOf(record)!;
  reply.headers({ etag, 'cache-control': 'private, no-cache' });
  return hasAlready(request, etag) ? reply.status(304).send() : record;
}

function noSuch(kind: RecordKind, wanted: string): never {
  throw workshopProblem({ code: 'record.missing', kind, id: wanted });
}

const definitionOf = (kind: RecordKind): RecordKindDefinition => RECORD_KINDS[kind];

const inWords = (name: string): string => name.replaceAll('-', ' ');
