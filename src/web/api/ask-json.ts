import type { ProblemDetails } from '../../contract/index.js';
import { Refused } from './client.js';

interface Question {
  readonly method?: 'GET' | 'POST';
  readonly body?: unknown;
  readonly signal?: AbortSignal;
}

/** Asks a route that is none of the records and use cases: sign-in and what belongs to it. A refusal is thrown as `Refused`. */
export async function askJson<T>(path: string, { method = 'GET', body, signal }: Question = {}): Promise<T> {
  const answer = await fetch(`/api/v1${path}`, {
    method,
    headers: {
      accept: 'application/json, application/problem+json',
      ...(body === undefined ? {} : { 'content-type': 'application/json' }),
    },
    ...(body === undefined ? {} : { body: JSON.stringify(body) }),
    ...(signal ? { signal } : {}),
  }).catch((thrown: unknown) => {
    throw new Refused(noAnswer(path, thrown));
  });
  const told = (await answer.json().catch(() => undefined)) as unknown;
  if (answer.ok) return told as T;
  throw new Refused(isProblem(told) ? told : foreign(path, answer.status));
}

const isProblem = (told: unknown): told is ProblemDetails =>
  typeof told === 'object' && told !== null && 'detail' in told && 'code' in told;

const noAnswer = (instance: string, thrown: unknown): ProblemDetails => ({
  type: 'about:blank',
  title: 'No answer',
  status: 0,
  code: 'network.no-answer',
  detail: 'The server does not answer. Check the network, and ask again.',
  instance,
  requestId: '',
  because: String(thrown),
});

const foreign = (instance: string, status: number): ProblemDetails => ({
  type: 'about:blank',
  title: 'Not our answer',
  status,
  code: 'network.foreign-answer',
  detail: 'An answer came that is not from the shop’s server. Check the address, and what stands between.',
  instance,
  requestId: '',
});
