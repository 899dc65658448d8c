import { fail, type Result, succeed } from '../../foundation/index.js';
import type { ProcessBase } from '../charts/process-base.js';
import { meanOf, spreadOf } from '../moments.js';
import { type StatsFault, tooFew } from '../stats-fault.js';

/** All readings taken as one: mean, sample standard deviation, n - 1 degrees. What lies between groups is in it. */
export function overallBase(values: readonly number[]): Result<ProcessBase, StatsFault> {
  if (values.length < 2) return fail(tooFew(values.length, 2));
  const sigma = spreadOf(values);
  return sigma > 0
    ? succeed({ mean: meanOf(values), sigma, degrees: values.length - 1 })
    : fail({ code: 'stats.no-spread' });
}
