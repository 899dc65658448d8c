import { fail, type Result, succeed } from '../foundation/index.js';
import { compensatedSum } from '../numeric/index.js';
import { studentT } from './distributions/student-t.js';
import { meanOf, squaresAboutMean } from './moments.js';
import { type StatsFault, tooFew } from './stats-fault.js';

/** y = intercept + slope x by least squares, with what is needed to say how sure anything read off it is. */
export interface StraightLine {
  readonly intercept: number;
  readonly slope: number;
  readonly interceptU: number;
  readonly slopeU: number;
  /** Standard deviation of y about the line. */
  readonly residual: number;
  readonly squaresLeft: number;
  /** Share of the squares of y that the line explains. */
  readonly explained: number;
  readonly f: number;
  readonly count: number;
  readonly meanX: number;
  readonly squaresX: number;
}

/**
 * The line through points (x, y): slope Sxy/Sxx on centred sums, u(slope) = s/sqrt Sxx, u(intercept) = s sqrt(1/n +
 * xbar^2/Sxx), s^2 = SSE/(n-2) (NIST/SEMATECH e-Handbook 4.1.4.1). Three points at two places at least.
 */
export function straightLine(
  points: readonly { readonly x: number; readonly y: number }[],
): Result<StraightLine, StatsFault> {
  const count = points.length;
  if (count < 3) return fail(tooFew(count, 3));
  const xs = points.map(({ x }) => x);
  const ys = points.map(({ y }) => y);
  const [meanX, meanY] = [meanOf(xs), meanOf(ys)];
  const squaresX = squaresAboutMean(xs);
  if (!(squaresX > 0)) return fail({ code: 'stats.no-spread' });
  const slope = compensatedSum(points.map(({ x, y }) => (x - meanX) * (y - meanY))) / squaresX;
  const intercept = meanY - slope * meanX;
  const squaresLeft = compensatedSum(points.map(({ x, y }) => (y - meanY - slope * (x - meanX)) ** 2));
  const residual = Math.sqrt(squaresLeft / (count - 2));
  const squaresY = squaresAboutMean(ys);
  return succeed({
    intercept,
    slope,
    interceptU: residual * Math.sqrt(1 / count + meanX ** 2 / squaresX),
    slopeU: residual / Math.sqrt(squaresX),
    residual,
    squaresLeft,
    explained: 1 - squaresLeft / squaresY,
    f: (slope ** 2 * squaresX) / residual ** 2,
    count,
    meanX,
    squaresX,
  });
}

/** y of one more point at x, and between what it will lie: -+ t s sqrt(1 + 1/n + (x - xbar)^2/Sxx). */
export function predictOnLine(
  line: StraightLine,
  x: number,
  confidence = 0.95,
): { readonly value: number; readonly from: number; readonly to: number } {
  const value = line.intercept + line.slope * x;
  const half = studentT(line.count - 2).quantile((1 + confidence) / 2) * line.residual * oneMore(line, x);
  return { value, from: value - half, to: value + half };
}

/** The x that gave a reading y, and its standard uncertainty s/slope sqrt(1 + 1/n + (x - xbar)^2/Sxx). */
export function readBack(line: StraightLine, y: number): { readonly value: number; readonly u: number } {
  const value = (y - line.intercept) / line.slope;
  return { value, u: (line.residual / Math.abs(line.slope)) * oneMore(line, value) };
}

const oneMore = ({ count, meanX, squaresX }: StraightLine, x: number): number =>
  Math.sqrt(1 + 1 / count + (x - meanX) ** 2 / squaresX);
