export {
  choleskyFactor,
  choleskyInverse,
  choleskySolve,
  forwardSolve,
  type SquareMatrix,
} from './cholesky.js';
export { compensatedSum } from './compensated-sum.js';
export { type Estimate, estimate } from './estimate.js';
export { findRoot, type RootSearch } from './find-root.js';
export { gaussNewton, type LeastSquaresFit, type LeastSquaresProblem } from './gauss-newton.js';
export { gaussLegendre, integrate } from './integrate.js';
export { isotonicFit } from './isotonic-fit.js';
export { leastSquares } from './least-squares.js';
export { linearInterpolation } from './linear-interpolation.js';
export { type Matrix, solveLinear } from './linear-system.js';
export { median } from './median.js';
export { type MonotoneCurve, monotoneInterpolation } from './monotone-interpolation.js';
export { propagate } from './propagate.js';
