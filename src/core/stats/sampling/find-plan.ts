import { fail, type Result, succeed } from '../../foundation/index.js';
import type { StatsFault } from '../stats-fault.js';
import { acceptance, type SampledFrom, type SinglePlan } from './single-plan.js';

/** What a plan shall do: accept good lots mostly, and poor ones hardly ever. */
export interface PlanWanted {
  /** Share of bad strings that is good enough, and how often a lot like that may be refused. */
  readonly good: { readonly share: number; readonly refusedAtMost: number };
  /** Share that is not to be borne, and how often a lot like that may be accepted. */
  readonly poor: { readonly share: number; readonly acceptedAtMost: number };
  readonly from: SampledFrom;
  /** Largest sample that is worth a thought; for a lot no more than the lot. */
  readonly largestSize?: number;
}

const LARGEST = 5000;

/**
 * The smallest sample that meets both risks: for each acceptance number the least n at which poor lots are refused often
 * enough, the first of which still accepts good ones (W. Guenther, J. Quality Technology 1 (1969) 105). In a lot shares
 * are rounded to whole strings against the plan: good ones down, poor ones up.
 */
export function findPlan(wanted: PlanWanted): Result<SinglePlan, StatsFault> {
  const { good, poor, from } = wanted;
  if (!(good.share >= 0 && good.share < poor.share && poor.share <= 1))
    return fail({ code: 'stats.limits-unusable' });
  const lot = typeof from === 'object' ? from.lot : Number.POSITIVE_INFINITY;
  const largest = Math.min(wanted.largestSize ?? LARGEST, lot);
  const goodShare = inLot(good.share, from, Math.floor);
  const poorShare = inLot(poor.share, from, Math.ceil);
  let size = 1;
  for (let acceptUpTo = 0; acceptUpTo < largest; acceptUpTo++) {
    size = Math.max(size, acceptUpTo + 1);
    while (acceptance({ size, acceptUpTo }, poorShare, from) > poor.acceptedAtMost) {
      size += 1;
      if (size > largest) return fail({ code: 'stats.no-plan', largestSize: largest });
    }
    if (acceptance({ size, acceptUpTo }, goodShare, from) >= 1 - good.refusedAtMost)
      return succeed({ size, acceptUpTo });
  }
  return fail({ code: 'stats.no-plan', largestSize: largest });
}

/** A hair is taken off before rounding, so that 0.07 of 100 is 7. */
function inLot(share: number, from: SampledFrom, rounded: (bad: number) => number): number {
  if (typeof from !== 'object') return share;
  const hair = rounded === Math.floor ? 1e-9 : -1e-9;
  return rounded(share * from.lot + hair) / from.lot;
}
