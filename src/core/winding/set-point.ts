import { type LeanedOn, type Leaning, leanOnRuns } from './lean-on-runs.js';
import { dialForPull, type PullRow } from './measure-dial/index.js';
import type { NearFigure } from './near-runs.js';
import type { StrengthBound } from './strength-bound.js';

/**
 * A tension to set, N: what the shop's own near runs give, drawn to a cautious start; or, where none is near, that start
 * alone, said to be a guess, with the bound that strength decides; or not even that. Never a value from elsewhere.
 */
export type SetPoint =
  | (FromRuns & {
      readonly kind: 'from-record';
      readonly value: number;
      /** Beside what the wire bears at least; left out where no strength is in print. */
      readonly bound?: StrengthBound;
      /** `value` as a share of the wire's least breaking load; above 1 the record contradicts the strength table. */
      readonly shareOfBreaking?: number;
    })
  | (FromRuns & {
      readonly kind: 'no-record';
      /** A guess to begin at. */
      readonly start: number;
      readonly upper: number;
      readonly upperWhy: StrengthBound['basis'];
      readonly bound: StrengthBound;
    })
  | { readonly kind: 'unknown' };

interface FromRuns {
  /** Nine times in ten the run is set within these, N. */
  readonly low: number;
  readonly high: number;
  /** Past runs that are near at all. */
  readonly runs: number;
  /** How much of the figure is the cautious start's, as a share. */
  readonly startShare: number;
  readonly leanedOn: readonly LeanedOn[];
  /** The number on the machine's own scale; left out where it has none that reaches there. */
  readonly dial?: number;
}

/** Near runs that are worth less than so much of one run of the same kind leave it a guess. Our own choice. */
const LEAST_WORTH = 0.5;
/**
 * Half of the most that is ever advised: of core the elastic limit, of wrap 65 % of where its softest temper breaks. Our
 * own choice, no source.
 */
const START_SHARE: Readonly<Record<StrengthBound['basis'], number>> = {
  'core-elastic-limit': 0.5,
  'wrap-softest-temper-breaks': 0.325,
};

/** The set-point that near runs and strength give together. */
export function setPoint(
  near: readonly NearFigure[],
  bound: StrengthBound | undefined,
  scale: readonly PullRow[] = [],
): SetPoint {
  const start = bound && START_SHARE[bound.basis] * bound.upperN;
  const leaning = leanOnRuns(near, start);
  if (!leaning) return { kind: 'unknown' };
  const from = fromRuns(leaning, scale);
  const { value } = leaning;
  if (bound && leaning.worthRuns < LEAST_WORTH) {
    // A guess must not seem to allow what the wire does not bear.
    const high = Math.min(from.high, bound.upperN);
    const { upperN: upper, basis: upperWhy } = bound;
    return { kind: 'no-record', start: value, ...from, high, upper, upperWhy, bound };
  }
  return {
    kind: 'from-record',
    value,
    ...from,
    ...(bound && { bound, shareOfBreaking: value / (bound.strengthPa * bound.areaM2) }),
  };
}

function fromRuns(
  { value, low, high, runs, startShare, leanedOn }: Leaning,
  scale: readonly PullRow[],
): FromRuns {
  const dial = dialForPull(scale, value);
  return { low, high, runs, startShare, leanedOn, ...(dial === undefined ? {} : { dial }) };
}
