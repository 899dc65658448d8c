import type { ProblemDetails } from './problem-details.js';

/** Whether what came is a problem as our server tells it. */
export const isProblem = (value: unknown): value is ProblemDetails =>
  typeof value === 'object' && value !== null && 'code' in value && 'detail' in value;

interface Unanswered {
  readonly instance: string;
  readonly thrown: unknown;
  /** What whoever asked may think and do now. */
  readonly detail: string;
}

/** Nothing came back: a problem of status 0, so that whoever asks has one way to hear of trouble. */
export const noAnswer = ({ instance, thrown, detail }: Unanswered): ProblemDetails => ({
  type: 'about:blank',
  title: 'No answer',
  status: 0,
  code: 'network.no-answer',
  detail,
  instance,
  requestId: '',
  because: thrown instanceof Error ? thrown.message : String(thrown),
});

/** Something between here and the server answered in its stead. */
export const foreignAnswer = (status: number, instance: string): ProblemDetails => ({
  type: 'about:blank',
  title: 'Not our answer',
  status,
  code: 'network.foreign-answer',
  detail: 'An answer came that is not from the shop’s server. Check the address, and what stands between.',
  instance,
  requestId: '',
});
