import type { Result } from '../../core/foundation/index.js';
import type { WorkshopFault } from '../../workshop/index.js';
import { workshopProblem } from '../workshop-problem.js';

/** The value of an outcome; a fault is thrown as the problem that it is over HTTP. */
export function orProblem<T>(outcome: Result<T, WorkshopFault>): T {
  if (outcome.ok) return outcome.value;
  throw workshopProblem(outcome.fault);
}
