import { findRoot } from '../../numeric/index.js';
import { binomial } from '../distributions/binomial.js';
import { hypergeometric } from '../distributions/hypergeometric.js';
import { poisson } from '../distributions/poisson.js';

/** Take so many; accept the lot if no more than so many are bad. */
export interface SinglePlan {
  readonly size: number;
  readonly acceptUpTo: number;
}

/**
 * What a share of bad strings is a share of: a process that goes on (binomial), a lot of so many (hypergeometric: the
 * right one for a gross), or faults by the string of which there can be several (Poisson).
 */
export type SampledFrom = 'process' | 'faults' | { readonly lot: number };

/**
 * Chance that a lot with this share of bad strings is accepted, exactly: P(bad in sample <= c) (NIST/SEMATECH e-Handbook
 * 6.2.3.2). In a lot the share is rounded to whole strings.
 */
export function acceptance({ size, acceptUpTo }: SinglePlan, share: number, from: SampledFrom): number {
  if (from === 'process') return binomial(size, share).upTo(acceptUpTo);
  if (from === 'faults') return poisson(size * share).upTo(acceptUpTo);
  const drawn = Math.min(size, from.lot);
  return hypergeometric({ lot: from.lot, bad: Math.round(share * from.lot), drawn }).upTo(acceptUpTo);
}

/**
 * Share of bad strings that passes where refused lots are sorted through: P_a p (N - n)/N (NIST/SEMATECH e-Handbook 6.2.2);
 * without a lot size that of lots without end.
 */
export const outgoing = (plan: SinglePlan, share: number, lot?: number): number =>
  acceptance(plan, share, 'process') * share * (lot === undefined ? 1 : (lot - plan.size) / lot);

/** Strings looked at per lot where refused lots are sorted through: n + (1 - P_a)(N - n) (e-Handbook 6.2.2). */
export const lookedAt = (plan: SinglePlan, share: number, lot: number): number =>
  plan.size + (1 - acceptance(plan, share, 'process')) * (lot - plan.size);

/** The worst that passes on average, whatever comes in, and the incoming share at which it does. */
export function worstOutgoing(
  plan: SinglePlan,
  lot?: number,
): { readonly outgoing: number; readonly incoming: number } {
  const { size, acceptUpTo } = plan;
  // The slope of p P_a. It has one zero, at fewer than c + 2 bad ones to a sample; beyond it soon dies away.
  const slope = (p: number): number =>
    acceptance(plan, p, 'process') - size * p * binomial(size - 1, p).at(acceptUpTo);
  const high = Math.min(1 - 1e-9, (acceptUpTo + 2) / size);
  const incoming = acceptUpTo >= size ? 1 : findRoot({ f: slope, low: 1e-12, high, tolerance: 1e-14 })!;
  return { outgoing: outgoing(plan, incoming, lot), incoming };
}
