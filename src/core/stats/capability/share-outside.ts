import type { ProcessBase } from '../charts/process-base.js';
import { normalAbove, normalBelow } from '../distributions/normal.js';
import type { Specification } from './capability.js';

/** Share of a normal process that lies outside of its tolerance, to each side. */
export const shareOutside = (
  { mean, sigma }: ProcessBase,
  { lower, upper }: Specification,
): { readonly below: number; readonly above: number } => ({
  below: lower === undefined ? 0 : normalBelow((lower - mean) / sigma),
  above: upper === undefined ? 0 : normalAbove((upper - mean) / sigma),
});
