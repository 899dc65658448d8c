import { compensatedSum } from './compensated-sum.js';
import { leastSquares } from './least-squares.js';
import type { Matrix } from './linear-system.js';

export interface LeastSquaresProblem {
  /** What is to become small; as many numbers at every call, at least as many as parameters. */
  readonly residuals: (parameters: readonly number[]) => readonly number[];
  readonly start: readonly number[];
  /** Size of a notable change of each parameter, for the differences; their size at the start where left out. */
  readonly scales?: readonly number[];
}

export interface LeastSquaresFit {
  readonly parameters: readonly number[];
  readonly sumOfSquares: number;
  readonly iterations: number;
  /** False where the steps ended before they became negligible, or the residuals do not determine the parameters. */
  readonly converged: boolean;
}

const MOST_ITERATIONS = 100;
const MOST_HALVINGS = 30;
/** A step that is a smaller share of the parameters than this is the end. */
const NEGLIGIBLE_STEP = 1e-11;
/**
 * So is a small step that gains next to nothing: with residuals left over, rounding in the derivatives keeps the
 * steps from vanishing altogether.
 */
const SMALL_STEP = 1e-8;
const NEGLIGIBLE_GAIN = 1e-12;

/**
 * Parameters that make the sum of squared residuals least, near `start`: Gauss-Newton steps with derivatives by
 * central differences, each step halved until it improves (J. Nocedal & S. J. Wright, Numerical Optimization, 2nd
 * ed. 2006, sec. 10.3). For a few parameters and smooth residuals.
 */
export function gaussNewton({ residuals, start, scales }: LeastSquaresProblem): LeastSquaresFit {
  const startSizes = start.map((value, index) => scales?.[index] ?? (Math.abs(value) || 1));
  let parameters: readonly number[] = start;
  let now = residuals(parameters);
  let sumOfSquares = squared(now);
  for (let iterations = 1; iterations <= MOST_ITERATIONS; iterations++) {
    const sizes = startSizes.map((size, index) => Math.max(size, Math.abs(parameters[index]!)));
    const step = leastSquares(
      derivatives(residuals, parameters, sizes),
      now.map((residual) => -residual),
    );
    if (!step) return { parameters, sumOfSquares, iterations, converged: false };
    const share = Math.max(...step.map((part, index) => Math.abs(part) / sizes[index]!));
    const better = shortenedUntilBetter({ residuals, parameters, step, sumOfSquares });
    // Nothing better along a small step: the sum is least to within rounding.
    if (!better) return { parameters, sumOfSquares, iterations, converged: share <= SMALL_STEP };
    const gainsNothing = sumOfSquares - better.sumOfSquares <= NEGLIGIBLE_GAIN * sumOfSquares;
    ({ parameters, sumOfSquares, residuals: now } = better);
    if (share <= NEGLIGIBLE_STEP || (gainsNothing && share <= SMALL_STEP)) {
      return { parameters, sumOfSquares, iterations, converged: true };
    }
  }
  return { parameters, sumOfSquares, iterations: MOST_ITERATIONS, converged: false };
}

const squared = (residuals: readonly number[]): number =>
  compensatedSum(residuals.map((residual) => residual ** 2));

/** One row for each residual, one column for each parameter. */
function derivatives(
  residuals: LeastSquaresProblem['residuals'],
  parameters: readonly number[],
  sizes: readonly number[],
): Matrix {
  const columns = parameters.map((value, index) => {
    // Cube root of epsilon balances the error of the difference against that of rounding.
    const h = Math.cbrt(Number.EPSILON) * sizes[index]!;
    const above = residuals(parameters.with(index, value + h));
    const below = residuals(parameters.with(index, value - h));
    return above.map((residual, row) => (residual - below[row]!) / (2 * h));
  });
  return columns[0]!.map((_, row) => columns.map((column) => column[row]!));
}

interface Step {
  readonly residuals: LeastSquaresProblem['residuals'];
  readonly parameters: readonly number[];
  readonly step: readonly number[];
  readonly sumOfSquares: number;
}

function shortenedUntilBetter({ residuals, parameters, step, sumOfSquares }: Step) {
  for (let halvings = 0; halvings <= MOST_HALVINGS; halvings++) {
    const tried = parameters.map((value, index) => value + step[index]! / 2 ** halvings);
    const there = residuals(tried);
    const sum = squared(there);
    if (sum <= sumOfSquares) return { parameters: tried, residuals: there, sumOfSquares: sum };
  }
  return undefined;
}
