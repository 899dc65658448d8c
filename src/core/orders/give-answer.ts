import { fail, invariant, type Result, succeed } from '../foundation/index.js';
import { type ChosenSet, stringKey } from '../sets/index.js';
import { type AnswerFigures, answerFigures } from './answer-figures.js';
import { type RequestAnswer, requestAnswerer } from './answer-request.js';
import type { Catalogue } from './catalogue.js';
import type { PlayerRequest } from './order.js';
import { customName } from './resolve.js';
import { requestFault, requestWarnings, resolvedString } from './resolve-request.js';
import type { OrderFault, OrderWarning, ResolvedString } from './resolved.js';

/** Among so many of the best a set that was taken is looked for: more than a page shows, as the shelf changes while one reads. */
const LOOKED_THROUGH = 12;

/** The answer that a player is given: strings to make or take, and what is told with them. */
export interface GivenAnswer {
  readonly setName: string;
  readonly strings: readonly ResolvedString[];
  readonly figures: readonly AnswerFigures[];
  readonly totalTensionN: number;
  /** Whole pull of the set that is liked, where it is liked. */
  readonly likedTensionN?: number;
  readonly warnings: readonly OrderWarning[];
}

export interface AnswerQuestion {
  readonly request: PlayerRequest;
  readonly quantity: number;
  /** Keys of the strings of the set that was taken, treble first; the best set where left out. */
  readonly chosen?: readonly string[];
}

export type AnswerFault =
  | { readonly kind: 'unanswerable'; readonly fault: OrderFault }
  /** The set that was taken is not among the best any more: the shelf or the recipes have changed. */
  | { readonly kind: 'not-offered' };

/** The set that was taken of those that answer a request, with all that the player should be told. */
export function giveAnswer(
  { request, quantity, chosen }: AnswerQuestion,
  catalogue: Catalogue,
): Result<GivenAnswer, AnswerFault> {
  const count = chosen ? LOOKED_THROUGH : 1;
  const answered = requestAnswerer(catalogue)({ request, quantity, count });
  if (!answered.ok)
    return fail({ kind: 'unanswerable', fault: { line: 1, ...requestFault(answered.fault, request) } });
  const answer = answered.value;
  const set = chosen ? answer.sets.find((each) => isSame(keysOf(each, answer), chosen)) : answer.sets[0];
  if (!set) return fail({ kind: 'not-offered' });
  return succeed(given(set, answer, { request, stressLimit: catalogue.rules.stressLimit }));
}

/** The keys of a set's strings, treble first: what a set of an answer is named by. */
export const keysOf = ({ strings }: ChosenSet, { specOf }: RequestAnswer): readonly string[] =>
  strings.map(({ candidate }) => stringKey(specOf(candidate)));

const isSame = (keys: readonly string[], wanted: readonly string[]): boolean =>
  keys.length === wanted.length && keys.every((key, at) => key === wanted[at]);

function given(
  set: ChosenSet,
  answer: RequestAnswer,
  { request, stressLimit }: { readonly request: PlayerRequest; readonly stressLimit: number },
): GivenAnswer {
  const strings = set.strings.map((string, at) => resolvedString(string, answer, at));
  const { likedTensionN } = answer;
  const figures = answerFigures(set, answer, request);
  invariant(figures.length === strings.length, 'every string of an answer has its figures');
  return {
    setName: customName(strings.map(({ spec }) => spec)),
    strings,
    figures,
    totalTensionN: set.totalTensionN,
    ...(likedTensionN === undefined ? {} : { likedTensionN }),
    warnings: requestWarnings({ set, answer, request, stressLimit }),
  };
}
