import type { QueryClient } from '@tanstack/react-query';
import { type Answered, createClient, type InputNamed } from '../../contract/index.js';
import { askJson } from '../api/ask-json.js';
import { isNoAnswer, Refused } from '../api/client.js';
import type { Me } from '../api/session.js';
import type { QueuedEntry } from './entry.js';
import type { WhoIsHere } from './sending.js';

/** A network that swallows a request must not hold up all that waits: after so long it counts as unanswered. */
const PATIENCE_MS = 20_000;

const patient = createClient({
  fetch: (url, request) => fetch(url, { ...request, signal: AbortSignal.timeout(PATIENCE_MS) }),
});

export const sendEntry = ({ useCase, input, requestId }: QueuedEntry): Promise<Answered<unknown>> =>
  patient.perform(useCase, input as InputNamed<typeof useCase>, { requestId });

export async function whoIsHere(personId: string): Promise<WhoIsHere> {
  try {
    const me = await askJson<Me>('/me', { signal: AbortSignal.timeout(PATIENCE_MS) });
    return me.person.id === personId ? 'me' : 'someone-else';
  } catch (thrown) {
    return thrown instanceof Refused && thrown.problem.status === 401 ? 'nobody' : 'no-answer';
  }
}

/** Fetches what is on the page anew. Gives false where the network went meanwhile. */
export async function fetchAnew(queries: QueryClient): Promise<boolean> {
  await queries.invalidateQueries();
  return !queries
    .getQueryCache()
    .findAll({ type: 'active' })
    .some(({ state }) => isNoAnswer(state.error));
}
