import { CALIBRATION_PRIOR, type CalibrationPrior, type NoiseSpreads } from './calibration-prior.js';
import { eliminateLots } from './eliminate-lots.js';
import { type FitFrame, fitFrame } from './fit-frame.js';
import { learnedNoise } from './learned-noise.js';
import type { MeasuredString } from './measured-string.js';
import { normalEquations } from './normal-equations.js';
import { type Sample, samplesOf } from './sample.js';
import { type SeatPosterior, seatPosterior } from './seat-posterior.js';
import { UNKNOWNS } from './seat-unknowns.js';
import { tailWeight } from './tail-weight.js';
import { tellingVariance } from './telling-noise.js';
import { type WoundOn, woundOn } from './wound-on.js';

/** What a shop's measured strings teach about how its wrap sits. */
export interface Calibration {
  readonly prior: CalibrationPrior;
  readonly samples: readonly Sample[];
  /** Of each sample, in the same order. */
  readonly judged: readonly Judged[];
  readonly posterior: SeatPosterior;
  readonly noise: NoiseSpreads;
  /** Degrees of freedom by which the noise is known: tails of intervals. */
  readonly noiseDegrees: number;
  /** Deviations of wire lots, in their own standard uncertainties. */
  readonly lots: ReadonlyMap<string, number>;
  /** Which machines wound a family, and how much each had to say of it; of all families together under the empty key. */
  readonly woundOn: WoundOn;
}

/** What remains of a sample unexplained, and how much it counts. */
export interface Judged {
  /** Measured less what seat and wire lots explain. */
  readonly rest: number;
  /** That over its standard deviation. */
  readonly standardised: number;
  /** 1 as others, less the further it lies from what all others say. Never 0: nothing is dropped. */
  readonly weight: number;
}

/** From nothing, the weights of samples settle in so many rounds; from an earlier fit one is enough. */
const ROUNDS = 4;

/**
 * Calibration from measured strings: hierarchical Bayesian regression, linear about the prior's middle, with tails
 * of Student's t. Mean diameter is linear in seat and flattening exactly, unit weight nearly. With no strings the
 * posterior is the prior.
 */
export const calibrate = (
  strings: readonly MeasuredString[],
  prior: CalibrationPrior = CALIBRATION_PRIOR,
): Calibration => fitted({ samples: samplesOf(strings, prior), prior, rounds: ROUNDS });

/**
 * The same with strings measured since, begun from what was known before. Of runs whose strings come again, those
 * given here stand: give all strings of such a run.
 */
export function recalibrated(before: Calibration, strings: readonly MeasuredString[]): Calibration {
  const runs = new Set(strings.map(({ runId }) => runId));
  const kept = before.samples.filter(({ runId }) => !runs.has(runId));
  const samples = [...kept, ...samplesOf(strings, before.prior)];
  return fitted({ samples, prior: before.prior, rounds: 1, before });
}

interface Fitting {
  readonly samples: readonly Sample[];
  readonly prior: CalibrationPrior;
  readonly rounds: number;
  readonly before?: Calibration;
}

function fitted({ samples, prior, rounds, before }: Fitting): Calibration {
  const frame = fitFrame(samples);
  let weights = weightsBefore(samples, before);
  let spreads = before?.posterior.spreads;
  for (let round = 1; ; round++) {
    const { noise, degrees } = learnedNoise(frame, prior, weights);
    const variances = Float64Array.from(samples, (sample) => sampleVariance(sample, noise));
    const precisions = weights.map((weight, at) => weight / variances[at]!);
    const equations = eliminateLots(normalEquations(frame, precisions));
    const posterior = seatPosterior(equations, frame.layout, { prior, start: spreads });
    const lots = equations.lotsAt(posterior.mean);
    const rests = restsOf(frame, posterior.mean, lots);
    weights = rests.map((rest, at) => tailWeight(rest ** 2 / variances[at]!));
    spreads = posterior.spreads;
    if (round < rounds) continue;
    return {
      prior,
      samples,
      judged: samples.map((_, at) => ({
        rest: rests[at]!,
        standardised: rests[at]! / Math.sqrt(variances[at]!),
        weight: weights[at]!,
      })),
      posterior,
      noise,
      noiseDegrees: degrees,
      lots: new Map(frame.lots.map((lot, at) => [lot, lots[at]!])),
      woundOn: woundOn(samples),
    };
  }
}

function weightsBefore(samples: readonly Sample[], before: Calibration | undefined): Float64Array {
  if (!before) return new Float64Array(samples.length).fill(1);
  const known = new Map(before.samples.map((sample, at) => [sample, before.judged[at]!.weight]));
  return Float64Array.from(samples, (sample) => known.get(sample) ?? 1);
}

/** Variance of a sample's mean about what seat and wires explain. */
function sampleVariance({ telling, slopes, effective }: Sample, noise: NoiseSpreads): number {
  const { run, string } = tellingVariance(telling, slopes, noise);
  return run + string / effective;
}

/** What seat and lots leave of each sample. */
const restsOf = ({ samples, places }: FitFrame, seat: Float64Array, lots: Float64Array): Float64Array =>
  Float64Array.from(samples, ({ mean, byUnknown }, at) => {
    let rest = mean;
    const { blocks, ways } = places[at]!;
    for (const block of blocks) for (let k = 0; k < UNKNOWNS; k++) rest -= byUnknown[k]! * seat[block + k]!;
    for (const { lot, way } of ways) rest -= way * lots[lot]!;
    return rest;
  });
