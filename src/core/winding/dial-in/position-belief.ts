import type { Estimate } from '../../numeric/index.js';
import type { Belief } from './belief.js';

/** One position's part of a belief, as plain numbers: what options are weighed on, many times over. */
export interface PositionBelief {
  readonly reference: number;
  readonly offset: number;
  readonly response: number;
  readonly offsetVariance: number;
  readonly responseVariance: number;
  readonly covariance: number;
}

export function positionBelief(belief: Belief, position: number): PositionBelief {
  const response = belief.referenceSettings.length + position;
  return {
    reference: belief.referenceSettings[position]!,
    offset: belief.mean[position]!,
    response: belief.mean[response]!,
    offsetVariance: belief.covariance[position]![position]!,
    responseVariance: belief.covariance[response]![response]!,
    covariance: belief.covariance[position]![response]!,
  };
}

/** Error of the process at a setting, m. */
export function errorAt(belief: PositionBelief, setting: number): Estimate {
  const travel = setting - belief.reference;
  const variance =
    belief.offsetVariance + 2 * travel * belief.covariance + travel ** 2 * belief.responseVariance;
  return { value: belief.offset + travel * belief.response, u: Math.sqrt(Math.max(0, variance)) };
}

/** The setting at which the error is expected to be nought. */
export const centredSetting = ({ reference, offset, response }: PositionBelief): number =>
  reference - offset / response;

/** After a move that lands so unsurely, m^2. */
export const afterMove = (belief: PositionBelief, varianceM2: number): PositionBelief => ({
  ...belief,
  offsetVariance: belief.offsetVariance + varianceM2,
});

/** What a string at a setting would teach: a belief for each of a few surprises, with its chance. */
export function afterNextString(
  belief: PositionBelief,
  setting: number,
  varianceM2: number,
): readonly { readonly chance: number; readonly belief: PositionBelief }[] {
  const travel = setting - belief.reference;
  const towardsOffset = belief.offsetVariance + travel * belief.covariance;
  const towardsResponse = belief.covariance + travel * belief.responseVariance;
  const spread = Math.sqrt(towardsOffset + travel * towardsResponse + varianceM2);
  const offset = towardsOffset / spread;
  const response = towardsResponse / spread;
  const learned = {
    ...belief,
    offsetVariance: belief.offsetVariance - offset ** 2,
    responseVariance: belief.responseVariance - response ** 2,
    covariance: belief.covariance - offset * response,
  };
  return SURPRISES.map(({ z, chance }) => ({
    chance,
    belief: { ...learned, offset: belief.offset + offset * z, response: belief.response + response * z },
  }));
}

/** Five-point Gauss-Hermite rule for a standard normal: Abramowitz & Stegun (1964), table 25.10. */
const SURPRISES = [
  { z: -2.8569700138728056, chance: 0.0112574113277207 },
  { z: -1.3556261799742659, chance: 0.2220759220056126 },
  { z: 0, chance: 0.5333333333333334 },
  { z: 1.3556261799742659, chance: 0.2220759220056126 },
  { z: 2.8569700138728056, chance: 0.0112574113277207 },
];
