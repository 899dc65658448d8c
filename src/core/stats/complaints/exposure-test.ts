import { type Chance, fail, type Result, succeed } from '../../foundation/index.js';
import { binomial } from '../distributions/binomial.js';
import { type StatsFault, tooFew } from '../stats-fault.js';
import { holm } from '../stories/many-questions.js';

/** Complaints about what came from one machine, lot, gauge or month, and how many strings did. */
export interface Source {
  readonly name: string;
  readonly count: number;
  readonly exposure: number;
}

export interface SourceFinding {
  readonly name: string;
  /** Its share of the complaints over its share of the strings: 1 where nothing is amiss. */
  readonly times: number;
  /** Chance of as many or more here if all sources were alike, made good for looking at all of them (Holm). */
  readonly p: number;
}

export interface ExposureTest {
  /** Chance of a split over the sources as unlikely as this or more, if all were alike. */
  readonly p: number;
  /** Reckoned over every split, or drawn where there are too many. */
  readonly isExact: boolean;
  readonly sources: readonly SourceFinding[];
}

/** Splits beyond this many are drawn instead, so many times. */
const MOST_SPLITS = 200_000;
const DRAWS = 20_000;

/**
 * Whether complaints fall on some sources more than what each sent out would have it: exact multinomial test, adding up
 * all splits no likelier than the one seen (N. Johnson, S. Kotz & N. Balakrishnan, Discrete multivariate distributions,
 * 1997, 35), or 20,000 drawn ones where there are too many (then p = (1 + as unlikely)/(1 + drawn)). For each source by
 * itself the binomial tail P(count or more | all, its share), adjusted by Holm.
 */
export function exposureTest(sources: readonly Source[], chance: Chance): Result<ExposureTest, StatsFault> {
  const total = sources.reduce((sum, { count }) => sum + count, 0);
  const exposed = sources.reduce((sum, { exposure }) => sum + exposure, 0);
  if (sources.length < 2) return fail(tooFew(sources.length, 2));
  if (total < 1) return fail(tooFew(total, 1));
  if (sources.some(({ count, exposure }) => !(exposure > 0) || count < 0))
    return fail({ code: 'stats.count-impossible' });
  const shares = sources.map(({ exposure }) => exposure / exposed);
  const counts = sources.map(({ count }) => count);
  const isExact = splitsOf(total, sources.length) <= MOST_SPLITS;
  const ps = holm(counts.map((count, at) => binomial(total, shares[at]!).from(count)));
  return succeed({
    p: isExact ? exactP(counts, shares) : drawnP(counts, shares, chance),
    isExact,
    sources: sources.map(({ name, count }, at) => ({
      name,
      times: count / (total * shares[at]!),
      p: ps[at]!,
    })),
  });
}

/** C(total + k - 1, k - 1): ways to share out the complaints. */
function splitsOf(total: number, k: number): number {
  let ways = 1;
  for (let i = 1; i < k && ways <= MOST_SPLITS; i++) ways *= (total + i) / i;
  return ways;
}

/** What the chance of a split depends on: SUM n ln share - ln n!; the rest is the same for all. */
function weightOf(
  counts: readonly number[],
  logShares: readonly number[],
  factorials: readonly number[],
): number {
  return counts.reduce((sum, count, at) => sum + count * logShares[at]! - factorials[count]!, 0);
}

/** Splits whose chances differ by less are equally likely: rounding. */
const ROUNDING = 1e-9;

function exactP(counts: readonly number[], shares: readonly number[]): number {
  const total = counts.reduce((sum, count) => sum + count, 0);
  const factorials = logFactorials(total);
  const logShares = shares.map(Math.log);
  const seen = weightOf(counts, logShares, factorials) + ROUNDING;
  const last = shares.length - 1;
  let p = 0;
  const visit = (at: number, left: number, weight: number): void => {
    if (at === last) {
      const whole = weight + left * logShares[at]! - factorials[left]!;
      if (whole <= seen) p += Math.exp(whole + factorials[total]!);
      return;
    }
    for (let count = 0; count <= left; count++)
      visit(at + 1, left - count, weight + count * logShares[at]! - factorials[count]!);
  };
  visit(0, total, 0);
  return Math.min(1, p);
}

function drawnP(counts: readonly number[], shares: readonly number[], chance: Chance): number {
  const total = counts.reduce((sum, count) => sum + count, 0);
  const factorials = logFactorials(total);
  const logShares = shares.map(Math.log);
  const seen = weightOf(counts, logShares, factorials) + ROUNDING;
  let asUnlikely = 0;
  for (let draw = 0; draw < DRAWS; draw++) {
    const split = shares.map(() => 0);
    for (let one = 0; one < total; one++) {
      const at = drawnPlace(shares, chance.next());
      split[at] = split[at]! + 1;
    }
    if (weightOf(split, logShares, factorials) <= seen) asUnlikely += 1;
  }
  return (1 + asUnlikely) / (1 + DRAWS);
}

function drawnPlace(shares: readonly number[], uniform: number): number {
  let sum = 0;
  for (let at = 0; at < shares.length - 1; at++) {
    sum += shares[at]!;
    if (uniform < sum) return at;
  }
  return shares.length - 1;
}

function logFactorials(most: number): readonly number[] {
  const table = [0];
  for (let n = 1; n <= most; n++) table.push(table[n - 1]! + Math.log(n));
  return table;
}
