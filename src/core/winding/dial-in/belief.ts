import type { Estimate, Matrix } from '../../numeric/index.js';

/**
 * What is believed of the process at every position: its offset at a reference setting (m) and its response
 * (m per unit of setting), jointly normal. Error at setting u = offset + response (u - reference).
 * Order of `mean` and `covariance`: the offsets of all positions, then their responses.
 */
export interface Belief {
  readonly referenceSettings: readonly number[];
  readonly mean: readonly number[];
  readonly covariance: Matrix;
}

/** A string's measured mean error at a setting, m, with the variance of such a mean about the process. */
export interface Observation {
  readonly position: number;
  readonly setting: number;
  readonly errorM: number;
  readonly varianceM2: number;
}

/** Error of the process at a setting, m. */
export function processError(belief: Belief, position: number, setting: number): Estimate {
  const { offset, response, travel } = placeOf(belief, position, setting);
  const { mean, covariance } = belief;
  const variance =
    covariance[offset]![offset]! +
    2 * travel * covariance[offset]![response]! +
    travel ** 2 * covariance[response]![response]!;
  return { value: mean[offset]! + travel * mean[response]!, u: Math.sqrt(Math.max(0, variance)) };
}

/** Diameter gained by one unit of setting, m. */
export function processResponse(belief: Belief, position: number): Estimate {
  const response = belief.referenceSettings.length + position;
  return {
    value: belief.mean[response]!,
    u: Math.sqrt(Math.max(0, belief.covariance[response]![response]!)),
  };
}

/** What to believe after a string: R. E. Kalman, J. Basic Eng. 82 (1960) 35, one reading at a time. */
export function learn(belief: Belief, seen: Observation): Belief {
  const { offset, response, travel } = placeOf(belief, seen.position, seen.setting);
  const towards = belief.covariance.map((row) => row[offset]! + travel * row[response]!);
  const expected = belief.mean[offset]! + travel * belief.mean[response]!;
  const variance = towards[offset]! + travel * towards[response]! + seen.varianceM2;
  const surprise = seen.errorM - expected;
  return {
    ...belief,
    mean: belief.mean.map((value, row) => value + (towards[row]! / variance) * surprise),
    covariance: belief.covariance.map((entries, row) =>
      entries.map((entry, column) => entry - (towards[row]! * towards[column]!) / variance),
    ),
  };
}

/** The same belief, its offset at a position less sure by this variance, m^2: the process moved unseen. */
export const unsettle = (belief: Belief, position: number, varianceM2: number): Belief => ({
  ...belief,
  covariance: belief.covariance.map((entries, row) =>
    row === position
      ? entries.map((entry, column) => (column === position ? entry + varianceM2 : entry))
      : entries,
  ),
});

const placeOf = (belief: Belief, position: number, setting: number) => ({
  offset: position,
  response: belief.referenceSettings.length + position,
  travel: setting - belief.referenceSettings[position]!,
});
