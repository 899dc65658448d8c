import type { Static } from 'typebox';
import { fail, type Result, succeed } from '../core/foundation/index.js';
import { foreignAnswer, isProblem, noAnswer } from './http/no-answer.js';
import type { ProblemDetails } from './http/problem-details.js';
import type { ReadingAnswer, ReadingName, ReadingQuery } from './http/readings.js';
import { type BodyOf, RECORD_KINDS, type RecordKind, type StoredRecord } from './records/record-kinds.js';
import { DEFINITIONS, type Definitions } from './use-cases/definitions.js';

/** Asks the server, typed by the same definitions that it checks by. A refusal is a value: the problem as it was told, or
 * one of status 0 where no answer came. */
export interface Client {
  /** Does a use case. The request's own id makes a repeat harmless: keep it, and send it again until an answer comes. */
  perform<Name extends UseCaseName>(
    name: Name,
    input: InputNamed<Name>,
    request: { readonly requestId: string },
  ): Promise<Answered<OutputNamed<Name>>>;
  list<Kind extends RecordKind>(kind: Kind, query?: ListValues): Promise<Answered<ListPage<BodyOf<Kind>>>>;
  get<Kind extends RecordKind>(kind: Kind, id: string): Promise<Answered<StoredRecord<BodyOf<Kind>>>>;
  /** Every version that the record had, the present one last. */
  versions<Kind extends RecordKind>(
    kind: Kind,
    id: string,
  ): Promise<Answered<{ readonly items: readonly StoredRecord<BodyOf<Kind>>[] }>>;
  /** Ledger, readings of the floor, journal, lives. */
  read<Name extends ReadingName>(
    name: Name,
    query: ReadingQuery<Name>,
  ): Promise<Answered<ReadingAnswer<Name>>>;
}

export type UseCaseName = keyof Definitions;
export type InputNamed<Name extends UseCaseName> = Static<Definitions[Name]['input']>;
export type OutputNamed<Name extends UseCaseName> = Static<Definitions[Name]['output']>;
export type Answered<Value> = Result<Value, ProblemDetails>;

/** Paging, `search`, `state` and the keys of the kind. */
export type ListValues = Readonly<Record<string, string | number | undefined>>;

export interface ListPage<Body> {
  readonly items: readonly StoredRecord<Body>[];
  readonly next?: string;
}

/** As much of the platform's own `fetch` as is needed here. */
export type Fetch = (
  url: string,
  request: {
    readonly method: 'GET' | 'POST';
    readonly headers: Record<string, string>;
    readonly body?: string;
  },
) => Promise<{ readonly status: number; text(): Promise<string> }>;

export interface ClientParts {
  readonly fetch: Fetch;
  /** `https://shop.example`; left out for a page of the server itself. */
  readonly origin?: string;
  /** Left out where a cookie says who asks. */
  readonly token?: string;
}

export function createClient(parts: ClientParts): Client {
  const getting = <Value>(path: string, query: object = {}) =>
    ask<Value>(parts, { method: 'GET', path: `${path}${queryText(query)}`, headers: {} });
  return {
    perform: (name, input, { requestId }) =>
      ask(parts, {
        method: 'POST',
        path: DEFINITIONS[name].path,
        headers: { 'content-type': 'application/json', 'idempotency-key': requestId },
        body: JSON.stringify(input),
      }),
    list: (kind, query) => getting(`/${RECORD_KINDS[kind].collection}`, query),
    get: (kind, id) => getting(`/${RECORD_KINDS[kind].collection}/${encodeURIComponent(id)}`),
    versions: (kind, id) => getting(`/${RECORD_KINDS[kind].collection}/${encodeURIComponent(id)}/versions`),
    read: (name, query) => getting(`/${name}`, query),
  };
}

interface Question {
  readonly method: 'GET' | 'POST';
  readonly path: string;
  readonly headers: Readonly<Record<string, string>>;
  readonly body?: string;
}

async function ask<Value>(
  { fetch, origin = '', token }: ClientParts,
  { path, headers, ...question }: Question,
): Promise<Answered<Value>> {
  const instance = `/api/v1${path}`;
  const shown = { accept: 'application/json, application/problem+json', ...headers };
  const request = {
    ...question,
    headers: token === undefined ? shown : { ...shown, authorization: `Bearer ${token}` },
  };
  try {
    const answer = await fetch(`${origin}${instance}`, request);
    return readAnswer(answer.status, await answer.text(), instance);
  } catch (thrown) {
    return fail(noAnswer({ instance, thrown, detail: MAYBE_DONE }));
  }
}

const MAYBE_DONE =
  'The server does not answer. What was asked may or may not have been done: ask again with the same id.';

function readAnswer<Value>(status: number, text: string, instance: string): Answered<Value> {
  const value = fromJson(text);
  if (status === 200 && value !== undefined) return succeed(value as Value);
  return fail(isProblem(value) ? value : foreignAnswer(status, instance));
}

function fromJson(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

function queryText(query: object): string {
  const parts = Object.entries(query)
    .filter(([, value]) => value !== undefined)
    .map(([name, value]) => `${encodeURIComponent(name)}=${encodeURIComponent(String(value))}`);
  return parts.length === 0 ? '' : `?${parts.join('&')}`;
}
