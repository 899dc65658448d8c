import { foreignAnswer, isProblem, noAnswer } from '../../contract/index.js';
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
    throw new Refused(noAnswer({ instance: path, thrown, detail: ASK_AGAIN }));
  });
  const told = (await answer.json().catch(() => undefined)) as unknown;
  if (answer.ok) return told as T;
  throw new Refused(isProblem(told) ? told : foreignAnswer(answer.status, path));
}

const ASK_AGAIN = 'The server does not answer. Check the network, and ask again.';
