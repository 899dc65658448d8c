import { median } from '../../numeric/index.js';
import { tailWeight } from './tail-weight.js';

const ROUNDS = 5;

export interface RobustMean {
  readonly mean: number;
  /** One for each value, at most 1. */
  readonly weights: readonly number[];
  /** Weighted squares about the mean. */
  readonly squares: number;
}

/**
 * Mean of values whose scatter, of this variance, has the tails of Student's t: begun at the median, each weighed by
 * how far it lies. Of two nobody can say which is wrong: they count alike, and their squares little where they are
 * far apart.
 */
export function robustMean(values: readonly number[], variance: number): RobustMean {
  const [first = 0, second] = values;
  if (second === undefined) return { mean: first, weights: [1], squares: 0 };
  if (values.length === 2) {
    const squares = (first - second) ** 2 / 2;
    return { mean: (first + second) / 2, weights: [1, 1], squares: tailWeight(squares / variance) * squares };
  }
  let mean = median(values);
  let weights: readonly number[] = [];
  for (let round = 0; round < ROUNDS; round++) {
    weights = values.map((value) => tailWeight((value - mean) ** 2 / variance));
    const total = weights.reduce((sum, weight) => sum + weight, 0);
    mean = values.reduce((sum, value, at) => sum + weights[at]! * value, 0) / total;
  }
  const squares = values.reduce((sum, value, at) => sum + weights[at]! * (value - mean) ** 2, 0);
  return { mean, weights, squares };
}
