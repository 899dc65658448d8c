import type { Shop } from '../../../core/day/index.js';
import { fail, type Result, succeed } from '../../../core/foundation/index.js';
import {
  type AnswerFigures,
  answerFigures,
  keysOf,
  type OrderFault,
  type OrderWarning,
  type PlayerRequest,
  type RequestAnswer,
  type RequestAnswerer,
  requestFault,
  requestWarnings,
} from '../../../core/orders/index.js';
import type { ChosenSet } from '../../../core/sets/index.js';
import { readRequestLine } from './read-request-line.js';
import { cellsOf, type RequestForm } from './request-form.js';

/** How many sets stand side by side. */
export const SETS_SHOWN = 3;

export interface FormAnswer {
  readonly request: PlayerRequest;
  readonly quantity: number;
  readonly answer: RequestAnswer;
  readonly sets: readonly OfferedSet[];
  /** Nobody said on which scale the liked set is liked. */
  readonly isLikedScaleAssumed: boolean;
}

export interface OfferedSet {
  readonly set: ChosenSet;
  /** What names the set among the answers, for the server. */
  readonly keys: readonly string[];
  readonly figures: readonly AnswerFigures[];
  readonly warnings: readonly OrderWarning[];
}

/** The best sets for what the form says, or what must be mended in it. */
export function answerForm(
  form: RequestForm,
  shop: Shop,
  answerer: RequestAnswerer,
): Result<FormAnswer, readonly OrderFault[]> {
  const read = readRequestLine(cellsOf(form), shop);
  if (!read.ok) return read;
  const request = read.value;
  // The cell was read as a whole number of sets, or there would be no request.
  const quantity = Number(form.quantity);
  const answered = answerer({ request, quantity, count: SETS_SHOWN });
  if (!answered.ok) return fail([{ line: 1, ...requestFault(answered.fault, request) }]);
  const answer = answered.value;
  const { stressLimit } = shop.rules;
  return succeed({
    request,
    quantity,
    answer,
    isLikedScaleAssumed: request.reference !== undefined && form.likesScale.trim() === '',
    sets: answer.sets.map((set) => ({
      set,
      keys: keysOf(set, answer),
      figures: answerFigures(set, answer, request),
      warnings: requestWarnings({ set, answer, request, stressLimit }),
    })),
  });
}
