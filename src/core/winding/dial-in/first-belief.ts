import type { Belief } from './belief.js';
import { type KinModel, kinModel } from './kinship.js';
import { nearestPast } from './past-dial-in.js';
import { pooledSpread } from './pooled-spread.js';
import type { RunToDialIn } from './run-to-dial-in.js';
import { STARTING_SPREADS } from './starting-spreads.js';
import type { StringNoise } from './string-noise.js';

/** What is believed before the first string. */
export interface FirstBelief {
  readonly belief: Belief;
  readonly noise: StringNoise;
  /** Strings that the spread from string to string rests on. */
  readonly noiseStrings: number;
  /** How far off the settings are that winders choose against the advice, m. */
  readonly overrideSpreadM: number;
  /** Past runs leaned on, and how many of them are this machine's of this family. */
  readonly runs: { readonly near: number; readonly same: number };
}

/**
 * What the machine's and the family's past says of a run to come. Offsets and responses of runs are taken as sums
 * of parts shared by family, machine, position and run, so that few runs are trusted a little and many more: the
 * predictive distribution of a normal hierarchical model (A. Gelman et al., Bayesian Data Analysis, 3rd ed. 2013,
 * ch. 5 and 15), with the sizes of the parts and of the noise weighed over a grid by their marginal likelihood.
 */
export function firstBelief(run: RunToDialIn): FirstBelief {
  const past = nearestPast(run.past, run);
  const strings = past.flatMap(({ positions }) => positions.flatMap((each) => each.strings));
  const micrometerM = STARTING_SPREADS.micrometer * run.toleranceM;
  const placeSpreadM = pooledSpread(
    strings.map(({ errorsM }) => errorsM),
    { spread: Math.hypot(STARTING_SPREADS.within * run.toleranceM, micrometerM), weight: 6 },
  );
  const model = kinModel({ ...run, past, placeSpreadM });
  const overrides = past.flatMap(({ positions }) => positions.flatMap((each) => each.overrideErrorsM));
  return {
    belief: beliefOf(run, model),
    noise: {
      betweenM: model.betweenM,
      withinM: Math.sqrt(Math.max(0, placeSpreadM ** 2 - micrometerM ** 2)),
      micrometerM,
      wanderM: STARTING_SPREADS.wander * run.toleranceM,
    },
    noiseStrings: PRIOR_STRINGS + strings.length / 2,
    overrideSpreadM: overrideSpread(overrides, run.toleranceM),
    runs: {
      near: past.length,
      same: past.filter((one) => one.machineId === run.machineId && one.family === run.family).length,
    },
  };
}

const PRIOR_STRINGS = 6;
const PRIOR_OVERRIDES = 3;

function beliefOf(run: RunToDialIn, { mean, covariance }: KinModel): Belief {
  const places = run.reckonedSettings.length;
  return {
    referenceSettings: run.reckonedSettings,
    mean: mean.map((value, row) => (row < places ? value : run.knob.responseMPerUnit + value)),
    covariance,
  };
}

/** Root of the mean square, with a starting value that weighs as three. */
function overrideSpread(errorsM: readonly number[], toleranceM: number): number {
  const squares = errorsM.reduce((sum, errorM) => sum + errorM ** 2, 0);
  const start = PRIOR_OVERRIDES * (STARTING_SPREADS.override * toleranceM) ** 2;
  return Math.sqrt((start + squares) / (PRIOR_OVERRIDES + errorsM.length));
}
