import { invariant } from '../foundation/index.js';
import { compensatedSum } from './compensated-sum.js';
import { type Estimate, estimate } from './estimate.js';

/**
 * Carries standard uncertainties through `model` to first order: u(y)^2 = sum of Z_i^2 with
 * Z_i = (f(x_i + u_i) - f(x_i - u_i)) / 2, the sensitivity times u_i by central difference over one standard
 * uncertainty (JCGM 100:2008, 5.1.2 and 5.1.3 note 2). The inputs are taken as independent of one another; one
 * input that reaches an output by several ways is moved once, so what cancels cancels. Exact inputs (u = 0) cost no
 * evaluation. The model gives the same outputs, in the same order, at every call and holds within one u of each
 * input.
 */
export function propagate(
  model: (inputs: readonly number[]) => readonly number[],
  inputs: readonly Estimate[],
): readonly Estimate[] {
  const values = inputs.map(({ value }) => value);
  const outputs = model(values);
  const contributions = inputs.flatMap(({ u }, index) =>
    u === 0 ? [] : [halfDifference(model, values, index, u)],
  );
  return outputs.map((value, output) => {
    const squares = contributions.map((half) => {
      invariant(half.length === outputs.length, 'a model gives now more outputs, now fewer');
      return half[output]! ** 2;
    });
    return estimate(value, Math.sqrt(compensatedSum(squares)));
  });
}

function halfDifference(
  model: (inputs: readonly number[]) => readonly number[],
  values: readonly number[],
  index: number,
  u: number,
): readonly number[] {
  invariant(Number.isFinite(u) && u > 0, `a standard uncertainty is ${u}`);
  const above = model(values.with(index, values[index]! + u));
  const below = model(values.with(index, values[index]! - u));
  return above.map((value, output) => (value - below[output]!) / 2);
}
