import type { Estimate } from '../../numeric/index.js';
import type { Calibration } from './calibrate.js';
import { CALIBRATED_RULE } from './calibrated-rule.js';
import { predictString, type StringAsked } from './predict-string.js';
import { tellingVariance } from './telling-noise.js';

/** What is known of one recipe's strings, and whether it may be called calibrated. */
export interface RecipeStanding {
  readonly recipeId: string;
  /** Measured strings that its present construction made, and in how many runs. */
  readonly strings: number;
  readonly runs: number;
  readonly meanDiameterM: Estimate;
  readonly unitWeightKgPerM: Estimate;
  /** Half of the 90 % interval of mean diameter, m. */
  readonly halfIntervalM: number;
  readonly toleranceM: number;
  /** How far its own strings lie off what the model says of them, in standard deviations of their mean; 0 with none. */
  readonly offStandardised: number;
  /** Which parts of the rule it meets. */
  readonly hasStrings: boolean;
  readonly isNarrow: boolean;
  readonly agrees: boolean;
  readonly mayBeCalibrated: boolean;
  /** Strings more, each from a fresh set-up by the sheet, that would halve the interval. */
  readonly stringsToHalve: number;
}

export interface RecipeAsked extends StringAsked {
  readonly recipeId: string;
}

/** Where each recipe stands by `CALIBRATED_RULE`. */
export function recipeStandings(
  calibration: Calibration,
  recipes: readonly RecipeAsked[],
  toleranceM: number,
): readonly RecipeStanding[] {
  const own = ownEvidence(calibration);
  return recipes.map((recipe) => {
    const { mean, next, ninetyPercent } = predictString(calibration, recipe);
    const evidence = own.get(recipe.recipeId);
    const strings = evidence?.strings.size ?? 0;
    const runs = evidence?.runs.size ?? 0;
    const offStandardised =
      evidence && evidence.precision > 0 ? evidence.towards / Math.sqrt(evidence.precision) : 0;
    const halfIntervalM = ninetyPercent * mean.meanDiameter.u;
    const hasStrings = strings >= CALIBRATED_RULE.strings && runs >= CALIBRATED_RULE.runs;
    const isNarrow = halfIntervalM <= CALIBRATED_RULE.shareOfTolerance * toleranceM;
    const agrees = Math.abs(offStandardised) <= CALIBRATED_RULE.agreesWithin;
    return {
      recipeId: recipe.recipeId,
      strings,
      runs,
      meanDiameterM: mean.meanDiameter,
      unitWeightKgPerM: mean.unitWeight,
      halfIntervalM,
      toleranceM,
      offStandardised,
      hasStrings,
      isNarrow,
      agrees,
      mayBeCalibrated: hasStrings && isNarrow && agrees,
      stringsToHalve: stringsToHalve(mean.meanDiameter.u ** 2, next.meanDiameter.u ** 2),
    };
  });
}

/**
 * From the variance v of the mean to a quarter of it: 1/v + n/V = 4/v, so n = 3 V / v, V being what a string shows
 * beyond its mean (wire, set-up and chance).
 */
function stringsToHalve(meanVariance: number, nextVariance: number): number {
  if (meanVariance === 0) return 0;
  return Math.ceil((3 * (nextVariance - meanVariance)) / meanVariance);
}

interface Evidence {
  readonly strings: Set<string>;
  readonly runs: Set<string>;
  towards: number;
  precision: number;
}

function ownEvidence({ samples, judged, noise }: Calibration): ReadonlyMap<string, Evidence> {
  const own = new Map<string, Evidence>();
  samples.forEach((sample, at) => {
    const evidence = own.get(sample.recipeId) ?? {
      strings: new Set(),
      runs: new Set(),
      towards: 0,
      precision: 0,
    };
    own.set(sample.recipeId, evidence);
    evidence.runs.add(sample.runId);
    for (const { stringId } of sample.strings) evidence.strings.add(stringId);
    if (sample.telling !== 'mean-diameter') return;
    const { rest, weight } = judged[at]!;
    const { run, string } = tellingVariance(sample.telling, sample.slopes, noise);
    const precision = weight / (run + string / sample.effective);
    evidence.towards += precision * rest;
    evidence.precision += precision;
  });
  return own;
}
