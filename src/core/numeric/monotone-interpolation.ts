import { invariant } from '../foundation/index.js';
import { findRoot } from './find-root.js';
import { tableOf } from './table.js';

/** A smooth curve through the rows of a table that rises and falls only where the rows do. */
export interface MonotoneCurve {
  /** y at x. Outside the table it throws: whoever calls knows the table's ends. */
  (x: number): number;
  /** Ends of the table. */
  readonly leastX: number;
  readonly mostX: number;
  /** The x at which the curve reaches y; undefined where it never does. Only for ys that rise, or fall, throughout. */
  inverse(y: number): number | undefined;
}

/**
 * Monotone piecewise cubic through (xs, ys), xs ascending (F. N. Fritsch & R. E. Carlson, SIAM J. Numer. Anal. 17
 * (1980) 238) with slopes at the rows by the weighted harmonic mean of the neighbouring secants (F. N. Fritsch & J.
 * Butland, SIAM J. Sci. Stat. Comput. 5 (1984) 300), three-point slopes at the ends. A straight table stays straight.
 */
export function monotoneInterpolation(xs: readonly number[], ys: readonly number[]): MonotoneCurve {
  const table = tableOf(xs, ys);
  const slopes = monotoneSlopes(xs, ys);
  const at = (x: number): number => {
    const left = table.intervalAt(x);
    const width = xs[left + 1]! - xs[left]!;
    return hermite({
      t: (x - xs[left]!) / width,
      from: ys[left]!,
      to: ys[left + 1]!,
      riseFrom: slopes[left]! * width,
      riseTo: slopes[left + 1]! * width,
    });
  };
  return Object.assign(at, {
    leastX: table.least,
    mostX: table.most,
    inverse: (y: number) => xWhere(at, xs, ys, y),
  });
}

function monotoneSlopes(xs: readonly number[], ys: readonly number[]): number[] {
  const widths = xs.slice(1).map((x, index) => x - xs[index]!);
  const secants = widths.map((width, index) => (ys[index + 1]! - ys[index]!) / width);
  if (secants.length === 1) return [secants[0]!, secants[0]!];
  const inner = secants
    .slice(1)
    .map((secant, index) =>
      innerSlope({ secant: secants[index]!, width: widths[index]! }, { secant, width: widths[index + 1]! }),
    );
  const intervals = secants.map((secant, index) => ({ secant, width: widths[index]! }));
  return [endSlope(intervals[0]!, intervals[1]!), ...inner, endSlope(intervals.at(-1)!, intervals.at(-2)!)];
}

interface Interval {
  readonly secant: number;
  readonly width: number;
}

/** Flat where the table turns; else the harmonic mean, which keeps within three times either secant. */
function innerSlope(left: Interval, right: Interval): number {
  if (left.secant * right.secant <= 0) return 0;
  const leftWeight = left.width + 2 * right.width;
  const rightWeight = 2 * left.width + right.width;
  return (leftWeight + rightWeight) / (leftWeight / left.secant + rightWeight / right.secant);
}

/** Slope of the parabola through the last three rows, held back so that the end interval stays monotone. */
function endSlope(end: Interval, next: Interval): number {
  const parabola =
    ((2 * end.width + next.width) * end.secant - end.width * next.secant) / (end.width + next.width);
  if (parabola * end.secant <= 0) return 0;
  const turns = end.secant * next.secant <= 0;
  return turns && Math.abs(parabola) > 3 * Math.abs(end.secant) ? 3 * end.secant : parabola;
}

interface CubicPiece {
  /** 0 at the left row, 1 at the right one. */
  readonly t: number;
  readonly from: number;
  readonly to: number;
  /** Slopes times the interval's width. */
  readonly riseFrom: number;
  readonly riseTo: number;
}

/** Each piece is monotone, so it stays between its rows; rounding would let it step past them by a last bit. */
function hermite({ t, from, to, riseFrom, riseTo }: CubicPiece): number {
  const s = 1 - t;
  const y = s * s * ((1 + 2 * t) * from + t * riseFrom) + t * t * ((1 + 2 * s) * to - s * riseTo);
  return Math.min(Math.max(y, Math.min(from, to)), Math.max(from, to));
}

function xWhere(
  at: (x: number) => number,
  xs: readonly number[],
  ys: readonly number[],
  y: number,
): number | undefined {
  const rising = ys.at(-1)! > ys[0]!;
  const past = (value: number): boolean => (rising ? value >= y : value <= y);
  invariant(
    ys.every((value, index) => index === 0 || (rising ? value > ys[index - 1]! : value < ys[index - 1]!)),
    'a table that does not rise or fall throughout has no inverse',
  );
  const right = ys.findIndex(past);
  if (right === -1 || Number.isNaN(y)) return undefined;
  if (ys[right] === y) return xs[right];
  if (right === 0) return undefined;
  return findRoot({ f: (x) => at(x) - y, low: xs[right - 1]!, high: xs[right]!, tolerance: 0 });
}
