import { fail, type Result, succeed } from '../../foundation/index.js';
import { normalQuantile } from '../distributions/normal.js';
import type { Interval } from '../intervals/interval.js';
import type { StatsFault } from '../stats-fault.js';

/** Bad strings that two people marked on the same strings without knowing of each other. */
export interface MarkedTwice {
  readonly first: number;
  readonly second: number;
  readonly both: number;
}

export interface RecaptureEstimate {
  /** How many bad strings there were (Chapman), its standard error and interval. */
  readonly all: number;
  readonly u: number;
  readonly interval: Interval;
  readonly missedByBoth: number;
  /** Share of the bad strings that each finds; left out where the other found none to go by. */
  readonly firstFinds?: number;
  readonly secondFinds?: number;
  /** Fewer than seven found by both: only "at least as many as were found" is safe to say. */
  readonly isThin: boolean;
}

/** Below this many found by both the estimate is biased (D. Robson & H. Regier, Trans. Amer. Fish. Soc. 93 (1964) 215). */
const THIN = 7;

/**
 * N = (M+1)(n+1)/(m+1) - 1, variance (M+1)(n+1)(M-m)(n-m)/((m+1)^2 (m+2)) (D. Chapman, Univ. Calif. Publ. Statist. 1
 * (1951) 131; G. Seber, The estimation of animal abundance, 3.1). Strings whose fault is hard to see for both make it too
 * low.
 */
export function recaptureEstimate(
  { first, second, both }: MarkedTwice,
  confidence = 0.95,
): Result<RecaptureEstimate, StatsFault> {
  if (!(both >= 0 && both <= Math.min(first, second))) return fail({ code: 'stats.count-impossible' });
  const all = ((first + 1) * (second + 1)) / (both + 1) - 1;
  const u = Math.sqrt(
    ((first + 1) * (second + 1) * (first - both) * (second - both)) / ((both + 1) ** 2 * (both + 2)),
  );
  const half = normalQuantile((1 + confidence) / 2) * u;
  const found = first + second - both;
  return succeed({
    all,
    u,
    interval: { from: Math.max(found, all - half), to: Math.max(found, all + half) },
    missedByBoth: all - found,
    ...(second > 0 ? { firstFinds: both / second } : {}),
    ...(first > 0 ? { secondFinds: both / first } : {}),
    isThin: both < THIN,
  });
}

/** N = M n/m, the older estimate, biased upward where few were found twice; a fault where none were (C. Petersen 1896). */
export const lincolnPetersen = ({ first, second, both }: MarkedTwice): Result<number, StatsFault> =>
  both > 0 ? succeed((first * second) / both) : fail({ code: 'stats.too-few', given: 0, needed: 1 });
