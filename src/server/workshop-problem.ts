import { HTTP_FAULTS, workshopFaultWords } from '../contract/index.js';
import type { WorkshopFault } from '../workshop/index.js';
import { Problem } from './problem.js';
import { statusOf } from './statuses.js';

/** A fault, of the workshop or of the way to it, as it is told over HTTP: its own facts, and its words. */
export function workshopProblem(fault: WorkshopFault): Problem {
  const { code, ...facts } = fault;
  const { what, mend } = wordsOf(fault);
  const status = statusOf(code);
  return new Problem({
    status,
    code,
    detail: `${what} ${mend}`,
    facts,
    headers: headersOf(status, fault),
  });
}

function wordsOf(fault: WorkshopFault) {
  const words = HTTP_FAULTS[fault.code];
  if (!words) return workshopFaultWords(fault);
  return typeof words === 'function' ? words(fault) : words;
}

/** A store that is locked or lost is usually back in seconds. */
const USUAL_RETRY_S = 5;

function headersOf(status: number, { lockedUntil }: WorkshopFault): Readonly<Record<string, string>> {
  if (status === 401) return { 'www-authenticate': 'Bearer realm="tautwork"' };
  if (status === 503) return { 'retry-after': String(USUAL_RETRY_S) };
  if (status === 429 && typeof lockedUntil === 'string') return { 'retry-after': secondsUntil(lockedUntil) };
  return {};
}

const secondsUntil = (moment: string): string =>
  String(Math.max(1, Math.ceil((Date.parse(moment) - Date.now()) / 1000)));
