import { fail, type Result, succeed } from '../../foundation/index.js';
import { findRoot } from '../../numeric/index.js';
import { normalQuantile } from '../distributions/normal.js';
import { logGamma } from '../special/stirling-error.js';
import type { StatsFault } from '../stats-fault.js';

/** Bad strings that two checks in a row caught, the second among those that the first had passed. */
export interface TwoChecks {
  readonly first: number;
  readonly second: number;
}

export interface RemovalEstimate {
  /** How many bad strings there were, and how many passed both checks. */
  readonly all: number;
  readonly escaped: number;
  /** Standard error of either. */
  readonly u: number;
  /** Share that one check catches. */
  readonly detection: number;
}

/**
 * N = n1^2/(n1 - n2), escaped = n2^2/(n1 - n2), u = n1 n2 sqrt(n1 + n2)/(n1 - n2)^2, detection (n1 - n2)/n1 (G. Seber &
 * E. Le Cren, J. Animal Ecology 36 (1967) 631; Seber, The estimation of animal abundance, 7.2). Both checks are taken to
 * see equally well: faults that are hard to see for both make the estimate too low. A fault where the second caught as
 * many as the first or more; `escapesBetween` then still says what can be said. A second check of a part only is first
 * scaled up to the whole.
 */
export function removalEstimate({ first, second }: TwoChecks): Result<RemovalEstimate, StatsFault> {
  if (!(first >= 0 && second >= 0)) return fail({ code: 'stats.count-impossible' });
  if (second >= first) return fail({ code: 'stats.second-caught-more', first, second });
  const less = first - second;
  return succeed({
    all: first ** 2 / less,
    escaped: second ** 2 / less,
    u: (first * second * Math.sqrt(first + second)) / less ** 2,
    detection: less / first,
  });
}

/** The same with less bias where counts are small: (n1^2 - n2)/(n1 - n2) (D. Robson & H. Regier, in Ricker 1968). */
export function robsonRegier({ first, second }: TwoChecks): Result<number, StatsFault> {
  if (second >= first) return fail({ code: 'stats.second-caught-more', first, second });
  return succeed((first ** 2 - second) / (first - second));
}

/** `to` is left out where any number of escapes could have been. */
export interface EscapesBetween {
  readonly from: number;
  readonly to?: number;
}

/**
 * Between what the number of escapes lies: all N whose best detection explains the two counts nearly as well as the best
 * N does (profile likelihood; S. Wilks, Ann. Math. Statist. 9 (1938) 60). Good for small counts too, and where the second
 * check caught more: then only a least number is known.
 */
export function escapesBetween(
  { first, second }: TwoChecks,
  confidence = 0.95,
): Result<EscapesBetween, StatsFault> {
  const caught = first + second;
  if (!(first >= 0 && second >= 0)) return fail({ code: 'stats.count-impossible' });
  if (caught === 0) return fail({ code: 'stats.too-few', given: 0, needed: 1 });
  const likelihood = (escaped: number): number => logLikelihood(escaped, first, caught);
  const best = bestOf(likelihood, { first, second });
  const drop = normalQuantile((1 + confidence) / 2) ** 2 / 2;
  const lacks = (escaped: number): number => best.likelihood - drop - likelihood(escaped);
  const beyond = (start: number, isThere: (escaped: number) => boolean): number => {
    let escaped = start;
    while (!isThere(escaped)) escaped *= 2;
    return escaped;
  };
  const near = best.escaped ?? beyond(caught, (escaped) => lacks(escaped) < 0);
  const from = lacks(0) <= 0 ? 0 : findRoot({ f: lacks, low: 0, high: near, tolerance: 1e-9 })!;
  if (best.likelihood - withoutEnd(caught) <= drop) return succeed({ from });
  const high = beyond(Math.max(1, near), (escaped) => lacks(escaped) > 0);
  return succeed({ from, to: findRoot({ f: lacks, low: near, high, tolerance: 1e-9 })! });
}

/** ln of N!/(N-T)! p^T (1-p)^(2N - n1 - T) at the best p = T/(2N - n1); N = caught + escaped, T = caught. */
function logLikelihood(escaped: number, first: number, caught: number): number {
  const all = caught + escaped;
  const looks = 2 * all - first;
  const missed = looks - caught;
  const ways = logGamma(all + 1) - logGamma(escaped + 1);
  return ways + caught * Math.log(caught / looks) + (missed > 0 ? missed * Math.log(missed / looks) : 0);
}

/** What the likelihood comes to as N goes beyond all bounds. */
const withoutEnd = (caught: number): number => caught * Math.log(caught / 2) - caught;

/** The number of escapes that explains the counts best; where the second check caught more, none is too many. */
function bestOf(
  likelihood: (escaped: number) => number,
  { first, second }: TwoChecks,
): { readonly escaped?: number; readonly likelihood: number } {
  if (second >= first) return { likelihood: withoutEnd(first + second) };
  let low = 0;
  let high = (2 * second ** 2) / (first - second) + 1;
  for (let round = 0; round < NARROWINGS; round++) {
    const [left, right] = [high - GOLDEN * (high - low), low + GOLDEN * (high - low)];
    if (likelihood(left) < likelihood(right)) low = left;
    else high = right;
  }
  const escaped = likelihood(0) >= likelihood((low + high) / 2) ? 0 : (low + high) / 2;
  return { escaped, likelihood: likelihood(escaped) };
}

const GOLDEN = (Math.sqrt(5) - 1) / 2;
const NARROWINGS = 60;
