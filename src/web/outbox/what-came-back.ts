import type { ProblemDetails } from '../../contract/index.js';

/** What is to be done about an answer that is no success: send it again by itself; wait until someone signs in; or keep it for a
 * person, since the shop will say the same however often it is asked. */
export type Verdict = 'again' | 'sign-in' | 'refused';

/** Busy, restarting, too many at once, too slow; or no answer at all. */
const PASSING: readonly number[] = [0, 408, 429, 502, 503, 504];

/** An answer that is not from the shop's server says nothing of what the shop thinks. */
export function verdictOn({ status, code }: ProblemDetails): Verdict {
  if (PASSING.includes(status) || code === 'network.foreign-answer') return 'again';
  return status === 401 ? 'sign-in' : 'refused';
}

const FIRST_WAIT_MS = 1000;
const LONGEST_WAIT_MS = 30_000;

/** How long to wait before the next try: twice as long each time, up to half a minute. */
export const waitAfter = (failures: number): number =>
  Math.min(LONGEST_WAIT_MS, FIRST_WAIT_MS * 2 ** Math.max(0, failures - 1));
