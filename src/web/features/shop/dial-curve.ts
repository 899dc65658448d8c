import { leastSquares, monotoneInterpolation } from '../../../core/numeric/index.js';
import { type DialRow, isDialTableUsable } from '../../../core/winding/index.js';

export interface DialCurve {
  /** The curve that settings are read off, from the first row to the last: it goes through every row. */
  readonly points: readonly DialRow[];
  /** How far each row stands off the smooth trend of all: a misread row stands far. None where there are too few to tell. */
  readonly residuals: readonly { readonly dial: number; readonly offM: number }[];
}

const CURVE_POINTS = 120;
/** A parabola has three unknowns: of four rows and more something is left over to tell by. */
const LEAST_ROWS = 4;

/** The curve through a measured dial table as the machine is set by it, and how well the rows agree; undefined where none can be laid. */
export function dialCurve(rows: readonly DialRow[]): DialCurve | undefined {
  if (!isDialTableUsable({ dialTable: rows, dialStep: 1 })) return undefined;
  const first = rows[0]!.dial;
  const span = rows.at(-1)!.dial - first;
  const curve = monotoneInterpolation(
    rows.map(({ dial }) => dial),
    rows.map(({ traversePerTurnM }) => traversePerTurnM),
  );
  const points = Array.from({ length: CURVE_POINTS + 1 }, (_, index) => {
    const dial = first + (span * index) / CURVE_POINTS;
    return { dial, traversePerTurnM: curve(dial) };
  });
  return { points, residuals: offTrend(rows, (dial) => (dial - first) / span) };
}

/** Rows less the parabola that fits them best (least squares). */
function offTrend(rows: readonly DialRow[], scaled: (dial: number) => number): DialCurve['residuals'] {
  if (rows.length < LEAST_ROWS) return [];
  const powers = rows.map(({ dial }) => [1, scaled(dial), scaled(dial) ** 2]);
  const fitted = leastSquares(
    powers,
    rows.map(({ traversePerTurnM }) => traversePerTurnM),
  );
  if (!fitted) return [];
  return rows.map(({ dial, traversePerTurnM }, at) => ({
    dial,
    offM: traversePerTurnM - powers[at]!.reduce((sum, power, index) => sum + power * fitted[index]!, 0),
  }));
}
