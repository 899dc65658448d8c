import type { CalibrationPrior, NoiseSpreads } from './calibration-prior.js';
import type { FitFrame } from './fit-frame.js';
import type { Sample } from './sample.js';
import { tellingVariance } from './telling-noise.js';

/** Noise as it was learned, and by how many degrees of freedom the least known of it is known. */
export interface LearnedNoise {
  readonly noise: NoiseSpreads;
  readonly degrees: number;
}

/** A sum of squares and the degrees of freedom that it has. */
interface Squares {
  readonly sum: number;
  readonly degrees: number;
}

/**
 * Noise from replicates alone, whatever the seat: string to string within samples, run to run between samples of the
 * same recipe, machine and lots of wire. Analysis of variance, mean squares equated to what is expected of them
 * (S. R. Searle, G. Casella & C. E. McCulloch, Variance Components, 1992, ch. 3), each drawn towards the stated
 * value by the stated degrees of freedom. `weights`: how much each sample counts, from its tail.
 */
export function learnedNoise(
  { samples, diameters, weights: weighed }: FitFrame,
  { noise, noiseDegrees }: Pick<CalibrationPrior, 'noise' | 'noiseDegrees'>,
  weights: Float64Array,
): LearnedNoise {
  const drawn = (stated: number, seen: Squares): number =>
    Math.sqrt((noiseDegrees * stated ** 2 + Math.max(0, seen.sum)) / (noiseDegrees + seen.degrees));
  const within = (groups: FitFrame['diameters']): Squares => {
    let sum = 0;
    let degrees = 0;
    for (const group of groups)
      for (const at of group) {
        sum += samples[at]!.squares;
        degrees += samples[at]!.strings.length - 1;
      }
    return { sum, degrees };
  };
  const ofStrings = {
    ...noise,
    stringM: drawn(noise.stringM, within(diameters)),
    stringWeight: drawn(noise.stringWeight, within(weighed)),
  };
  const between = (groups: FitFrame['diameters']) =>
    pooled(groups.map((group) => betweenRuns(samples, group, { noise: ofStrings, weights })));
  const runs = between(diameters);
  const runWeights = between(weighed);
  return {
    noise: {
      ...ofStrings,
      runM: drawn(noise.runM, runs),
      runWeight: drawn(noise.runWeight, runWeights),
    },
    degrees: noiseDegrees + Math.min(runs.degrees, runWeights.degrees),
  };
}

/** Squares between the means of replicate samples, less what the scatter of their strings makes of them. */
function betweenRuns(
  samples: readonly Sample[],
  group: readonly number[],
  { noise, weights }: { readonly noise: NoiseSpreads; readonly weights: Float64Array },
): Squares {
  if (group.length < 2) return NONE;
  let total = 0;
  let towards = 0;
  let ofStrings = 0;
  for (const at of group) {
    const { telling, slopes, mean, effective } = samples[at]!;
    total += weights[at]!;
    towards += weights[at]! * mean;
    ofStrings += tellingVariance(telling, slopes, noise).string / effective;
  }
  const middle = towards / total;
  let squares = 0;
  for (const at of group) squares += weights[at]! * (samples[at]!.mean - middle) ** 2;
  const degrees = group.length - 1;
  return { sum: squares - (degrees / group.length) * ofStrings, degrees };
}

const NONE: Squares = { sum: 0, degrees: 0 };

const pooled = (parts: readonly Squares[]): Squares => {
  let sum = 0;
  let degrees = 0;
  for (const part of parts) {
    sum += part.sum;
    degrees += part.degrees;
  }
  return { sum, degrees };
};
