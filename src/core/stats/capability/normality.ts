import { fail, type Result, succeed } from '../../foundation/index.js';
import { normalBelow } from '../distributions/normal.js';
import { meanOf, spreadOf } from '../moments.js';
import { type StatsFault, tooFew } from '../stats-fault.js';

export interface NormalityTest {
  /** A^2, corrected for the number of readings. */
  readonly statistic: number;
  /** Chance of as much or more from a normal distribution; small: the readings are not normal. */
  readonly p: number;
}

const LEAST = 8;

/**
 * Anderson and Darling's test with mean and spread taken from the readings themselves:
 * A^2 = -n - (1/n) SUM (2i-1)[ln F(z_i) + ln(1 - F(z_(n+1-i)))], times 1 + 0.75/n + 2.25/n^2; p by the formulas of R.
 * D'Agostino & M. Stephens, Goodness-of-fit techniques (1986), table 4.9. Eight readings or more. Readings rounded as
 * coarsely as their spread look not normal to it, though the strings may be.
 */
export function normalityTest(values: readonly number[]): Result<NormalityTest, StatsFault> {
  const n = values.length;
  if (n < LEAST) return fail(tooFew(n, LEAST));
  const spread = spreadOf(values);
  if (!(spread > 0)) return fail({ code: 'stats.no-spread' });
  const mean = meanOf(values);
  const z = values.map((value) => (value - mean) / spread).sort((a, b) => a - b);
  const sum = z.reduce(
    (total, at, i) =>
      total + (2 * i + 1) * (Math.log(normalBelow(at)) + Math.log(normalBelow(-z[n - 1 - i]!))),
    0,
  );
  const statistic = (-n - sum / n) * (1 + 0.75 / n + 2.25 / n ** 2);
  return succeed({ statistic, p: chanceOf(statistic) });
}

function chanceOf(a: number): number {
  if (a < 0.2) return 1 - Math.exp(-13.436 + 101.14 * a - 223.73 * a * a);
  if (a < 0.34) return 1 - Math.exp(-8.318 + 42.796 * a - 59.938 * a * a);
  if (a < 0.6) return Math.exp(0.9177 - 4.279 * a - 1.38 * a * a);
  // Beyond 10 the parabola turns up again; there is nothing left by then.
  return a < 10 ? Math.exp(1.2937 - 5.709 * a + 0.0186 * a * a) : 0;
}
