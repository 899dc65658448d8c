import { useQueryClient } from '@tanstack/react-query';
import { useCallback, useRef, useState } from 'react';
import type { Answered, InputNamed, OutputNamed, ProblemDetails, UseCaseName } from '../../contract/index.js';
import { client } from './client.js';
import { freshId } from './fresh-id.js';

export interface Doing<Name extends UseCaseName> {
  /** Asks the shop to do it. What comes back is also kept in `problem`. */
  readonly run: (input: InputNamed<Name>) => Promise<Answered<OutputNamed<Name>>>;
  readonly busy: boolean;
  /** Why it was refused the last time; undefined after it was done. */
  readonly problem: ProblemDetails | undefined;
  readonly forget: () => void;
}

/**
 * Does a use case. Asked again with the same input after no answer came, it goes under the same id of the request, so
 * that the shop does it once.
 */
export function useDo<Name extends UseCaseName>(name: Name): Doing<Name> {
  const queries = useQueryClient();
  const [busy, setBusy] = useState(false);
  const [problem, setProblem] = useState<ProblemDetails>();
  const unanswered = useRef<{ readonly input: string; readonly requestId: string }>(undefined);
  const run = useCallback(
    async (input: InputNamed<Name>) => {
      const text = JSON.stringify(input);
      const requestId = unanswered.current?.input === text ? unanswered.current.requestId : freshId();
      unanswered.current = { input: text, requestId };
      setBusy(true);
      const answer = await client.perform(name, input, { requestId });
      if (answer.ok || answer.fault.status !== 0) unanswered.current = undefined;
      setProblem(answer.ok ? undefined : answer.fault);
      // Before the live events say so: whoever did it should see it at once. What was refused may be because all moved on.
      await queries.invalidateQueries();
      setBusy(false);
      return answer;
    },
    [name, queries],
  );
  return { run, busy, problem, forget: () => setProblem(undefined) };
}
