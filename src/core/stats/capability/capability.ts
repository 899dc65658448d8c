import { fail, type Result, succeed } from '../../foundation/index.js';
import type { ProcessBase } from '../charts/process-base.js';
import { chiSquare } from '../distributions/chi-square.js';
import { normalQuantile } from '../distributions/normal.js';
import { type StatsFault, tooFew } from '../stats-fault.js';

/** Between what a reading must lie; one side may be open. */
export interface Specification {
  readonly lower?: number;
  readonly upper?: number;
}

/** A ratio, its interval of `confidence` to both sides, and what it exceeds with that confidence. */
export interface Ratio {
  readonly value: number;
  readonly from: number;
  readonly to: number;
  readonly atLeast: number;
}

export interface Capability {
  /** Width of the tolerance over that of the process; only where both limits are given. */
  readonly spread?: Ratio;
  /** Distance from the mean to the nearer limit over half the width of the process. */
  readonly centred: Ratio;
}

export interface CapabilityAsked {
  readonly specification: Specification;
  /** sigma within groups gives Cp and Cpk, the standard deviation of all readings Pp and Ppk. */
  readonly process: ProcessBase;
  /** How many readings the mean stands on. */
  readonly readings: number;
  /** 0.95 unless told. */
  readonly confidence?: number;
}

/**
 * Cp = (U - L)/6 sigma and Cpk = min(U - m, m - L)/3 sigma (or Pp and Ppk, by the sigma given). Interval of the first by
 * chi-square, Cp sqrt(chi2/v); of the second Cpk -+ z sqrt(1/9n + Cpk^2/2v) (A. Bissell, Applied Statistics 39 (1990)
 * 331; NIST/SEMATECH e-Handbook 6.1.6). Only for readings that are near to normal and from a steady process.
 */
export function capability(asked: CapabilityAsked): Result<Capability, StatsFault> {
  const { specification, process, readings, confidence = 0.95 } = asked;
  const { lower, upper } = specification;
  if (lower === undefined && upper === undefined) return fail({ code: 'stats.limits-unusable' });
  if (lower !== undefined && upper !== undefined && lower >= upper)
    return fail({ code: 'stats.limits-unusable' });
  if (readings < 2) return fail(tooFew(readings, 2));
  if (!(process.sigma > 0)) return fail({ code: 'stats.no-spread' });
  const room = Math.min(
    upper === undefined ? Number.POSITIVE_INFINITY : upper - process.mean,
    lower === undefined ? Number.POSITIVE_INFINITY : process.mean - lower,
  );
  const centred = nearLimit(room / (3 * process.sigma), { process, readings, confidence });
  if (lower === undefined || upper === undefined) return succeed({ centred });
  const value = (upper - lower) / (6 * process.sigma);
  return succeed({ spread: byChiSquare(value, process.degrees, confidence), centred });
}

function byChiSquare(value: number, degrees: number, confidence: number): Ratio {
  const law = chiSquare(degrees);
  const tail = (1 - confidence) / 2;
  const times = (square: number): number => value * Math.sqrt(square / degrees);
  return {
    value,
    from: times(law.quantile(tail)),
    to: times(law.quantileAbove(tail)),
    atLeast: times(law.quantile(1 - confidence)),
  };
}

function nearLimit(
  value: number,
  { process, readings, confidence }: { process: ProcessBase; readings: number; confidence: number },
): Ratio {
  const u = Math.sqrt(1 / (9 * readings) + value ** 2 / (2 * process.degrees));
  const both = normalQuantile((1 + confidence) / 2) * u;
  return {
    value,
    from: value - both,
    to: value + both,
    atLeast: value - normalQuantile(confidence) * u,
  };
}

/**
 * Cpm = (U - L)/6 sqrt(sigma^2 + (mean - target)^2): what is off its target counts as spread (L. Chan, S. Cheng & F.
 * Spiring, J. Quality Technology 20 (1988) 162). The target is the middle of the tolerance unless told.
 */
export function aboutTarget(
  { mean, sigma }: ProcessBase,
  { lower, upper, target = (lower + upper) / 2 }: { lower: number; upper: number; target?: number },
): number {
  return (upper - lower) / (6 * Math.hypot(sigma, mean - target));
}
