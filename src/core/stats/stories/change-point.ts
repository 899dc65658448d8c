import { fail, type Result, succeed } from '../../foundation/index.js';
import { median } from '../../numeric/index.js';
import { ranksOf } from '../ranks.js';
import { type StatsFault, tooFew } from '../stats-fault.js';

export interface ChangePoint {
  /** Place, from 0, of the first value after the change. */
  readonly at: number;
  /** Chance that values without a change look as changed as these somewhere. */
  readonly p: number;
  /** Middle value before and from there on, in the values' own unit. */
  readonly before: number;
  readonly after: number;
}

const LEAST = 6;

/**
 * Where values in order changed their level most, and whether chance would do as much: K = max |U_t|, U_t = SUM of
 * sign(x_i - x_j) over i <= t < j, which is 2 SUM rank - t (n + 1), p = 2 exp(-6 K^2/(n^3 + n^2)) (A. Pettitt, Applied Statistics 28 (1979) 126). No
 * distribution is assumed; p is a little high for fewer than some 20 values. It looks for one lasting step: a drift
 * shows too (`trendTest` tells it apart by its shape), two steps there and back may not.
 */
export function changePoint(values: readonly number[]): Result<ChangePoint, StatsFault> {
  const n = values.length;
  if (n < LEAST) return fail(tooFew(n, LEAST));
  let [u, largest, at] = [0, -1, 1];
  const { rankOf } = ranksOf(values);
  for (let t = 1; t < n; t++) {
    u += 2 * rankOf(values[t - 1]!) - (n + 1);
    if (Math.abs(u) > largest) [largest, at] = [Math.abs(u), t];
  }
  if (largest === 0) return fail({ code: 'stats.no-spread' });
  return succeed({
    at,
    p: Math.min(1, 2 * Math.exp((-6 * largest ** 2) / (n ** 3 + n ** 2))),
    before: median(values.slice(0, at)),
    after: median(values.slice(at)),
  });
}
