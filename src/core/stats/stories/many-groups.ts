import { fail, type Result, succeed } from '../../foundation/index.js';
import { compensatedSum } from '../../numeric/index.js';
import { chiSquare } from '../distributions/chi-square.js';
import { fRatio } from '../distributions/f-ratio.js';
import { meanOf, squaresAboutMean } from '../moments.js';
import { ranksOf } from '../ranks.js';
import { type StatsFault, tooFew } from '../stats-fault.js';

type Groups = readonly (readonly number[])[];

export interface GroupsTest {
  readonly statistic: number;
  readonly degreesOver: number;
  /** Left out where the statistic goes by chi-square. */
  readonly degreesUnder?: number;
  /** Chance of as much or more where all groups are alike. */
  readonly p: number;
}

export interface OneWay extends GroupsTest {
  readonly degreesUnder: number;
  readonly betweenSquares: number;
  readonly withinSquares: number;
}

/**
 * Whether lots differ in their means, their spread taken to be the same: F = mean square between over mean square within
 * (R. Fisher; NIST/SEMATECH e-Handbook 7.4.3.3).
 */
export function oneWay(groups: Groups): Result<OneWay, StatsFault> {
  const all = groups.flat();
  const degreesUnder = all.length - groups.length;
  if (groups.length < 2) return fail(tooFew(groups.length, 2));
  if (degreesUnder < 1) return fail(tooFew(all.length, groups.length + 1));
  const grand = meanOf(all);
  const betweenSquares = compensatedSum(groups.map((group) => group.length * (meanOf(group) - grand) ** 2));
  const withinSquares = compensatedSum(groups.map(squaresAboutMean));
  if (!(withinSquares > 0)) return fail({ code: 'stats.no-spread' });
  const degreesOver = groups.length - 1;
  const statistic = betweenSquares / degreesOver / (withinSquares / degreesUnder);
  const p = fRatio(degreesOver, degreesUnder).above(statistic);
  return succeed({ statistic, degreesOver, degreesUnder, p, betweenSquares, withinSquares });
}

/** The same with spreads that may differ from lot to lot (B. Welch, Biometrika 38 (1951) 330). Two readings a lot. */
export function welchOneWay(groups: Groups): Result<GroupsTest, StatsFault> {
  const least = Math.min(...groups.map(({ length }) => length));
  if (groups.length < 2 || least < 2) return fail(tooFew(least, 2));
  const weights = groups.map((group) => (group.length * (group.length - 1)) / squaresAboutMean(group));
  if (!weights.every(Number.isFinite)) return fail({ code: 'stats.no-spread' });
  const total = compensatedSum(weights);
  const grand = compensatedSum(groups.map((group, at) => weights[at]! * meanOf(group))) / total;
  const k = groups.length;
  const lack = compensatedSum(groups.map(({ length }, at) => (1 - weights[at]! / total) ** 2 / (length - 1)));
  const between = compensatedSum(groups.map((group, at) => weights[at]! * (meanOf(group) - grand) ** 2));
  const statistic = between / (k - 1) / (1 + (2 * (k - 2) * lack) / (k * k - 1));
  const degreesUnder = (k * k - 1) / (3 * lack);
  return succeed({
    statistic,
    degreesOver: k - 1,
    degreesUnder,
    p: fRatio(k - 1, degreesUnder).above(statistic),
  });
}

/**
 * Whether lots differ in level whatever their distribution, by ranks: H = 12/(N(N+1)) SUM R^2/n - 3(N+1), ties taken out
 * (W. Kruskal & W. A. Wallis, J. Amer. Statist. Assoc. 47 (1952) 583); p by chi-square, good from five readings a lot.
 */
export function rankedGroups(groups: Groups): Result<GroupsTest, StatsFault> {
  if (groups.length < 2 || groups.some(({ length }) => length === 0)) return fail(tooFew(groups.length, 2));
  const all = groups.flat();
  const n = all.length;
  const { rankOf, ties } = ranksOf(all);
  const sums = groups.map((group) => compensatedSum(group.map(rankOf)) ** 2 / group.length);
  const untied = (12 / (n * (n + 1))) * compensatedSum(sums) - 3 * (n + 1);
  const share = 1 - ties / (n ** 3 - n);
  if (!(share > 0)) return fail({ code: 'stats.no-spread' });
  const statistic = untied / share;
  const degreesOver = groups.length - 1;
  return succeed({ statistic, degreesOver, p: chiSquare(degreesOver).above(statistic) });
}
