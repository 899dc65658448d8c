import { compensatedSum } from '../../numeric/index.js';
import { normalBelow } from '../../stats/index.js';

/** Readings of which some are only known to be higher than where they stopped. */
export interface CensoredReadings {
  readonly seen: readonly number[];
  readonly higherThan: readonly { readonly reading: number; readonly times: number }[];
}

/** What is thought of a normal distribution before, in its mean and the logarithm of its spread. */
export interface SpreadPrior {
  readonly mean: { readonly value: number; readonly u: number };
  readonly logSpread: { readonly value: number; readonly u: number };
}

/** Mean and its limits: half of what is left over lies on either side. */
export interface CredibleMean {
  readonly middle: number;
  readonly low: number;
  readonly high: number;
  /** The spread that goes best with the readings. */
  readonly spread: number;
}

const POINTS = 61;
/** Standard uncertainties of what was thought before that the first look spans. */
const REACH = 5;
/** What lies so far below the best in the logarithm counts for nothing. */
const FAR_BELOW = 10;
const LOOKS = 3;

/**
 * Mean of a normal distribution by Bayes' rule over a grid of mean and spread: a reading that was seen counts by
 * its density, one that stopped by the chance of lying above. The grid is laid anew, closer, where the weight is.
 * Credible limits hold `share` of what is believed.
 */
export function censoredMean(readings: CensoredReadings, prior: SpreadPrior, share: number): CredibleMean {
  let box: Box = { mean: about(prior.mean), logSpread: about(prior.logSpread) };
  let look = lookOver(readings, prior, box);
  for (let looked = 1; looked < LOOKS; looked++) {
    box = heavyPart(look);
    look = lookOver(readings, prior, box);
  }
  const { means, logSpreads, weights } = look;
  const byMean = weights.map((row) => compensatedSum(row));
  const bySpread = logSpreads.map((_, at) => compensatedSum(weights.map((row) => row[at]!)));
  const side = (1 - share) / 2;
  return {
    middle: quantile(means, byMean, 0.5),
    low: quantile(means, byMean, side),
    high: quantile(means, byMean, 1 - side),
    spread: Math.exp(quantile(logSpreads, bySpread, 0.5)),
  };
}

interface Side {
  readonly from: number;
  readonly to: number;
}

interface Box {
  readonly mean: Side;
  readonly logSpread: Side;
}

interface Look {
  readonly means: readonly number[];
  readonly logSpreads: readonly number[];
  /** By mean, then by spread; the highest is 1. */
  readonly weights: readonly (readonly number[])[];
}

function lookOver(readings: CensoredReadings, prior: SpreadPrior, box: Box): Look {
  const means = pointsOf(box.mean);
  const logSpreads = pointsOf(box.logSpread);
  const logs = means.map((mean) =>
    logSpreads.map(
      (logSpread) =>
        censoredLogLikelihood(readings, { mean, spread: Math.exp(logSpread) }) +
        logPrior(mean, prior.mean) +
        logPrior(logSpread, prior.logSpread),
    ),
  );
  const highest = Math.max(...logs.map((row) => Math.max(...row)));
  return { means, logSpreads, weights: logs.map((row) => row.map((log) => Math.exp(log - highest))) };
}

/** The part of the grid that has any weight, with a step to spare on every side. */
function heavyPart({ means, logSpreads, weights }: Look): Box {
  const counts = (weight: number) => weight > Math.exp(-FAR_BELOW);
  return {
    mean: sideOf(means, (at) => weights[at]!.some(counts)),
    logSpread: sideOf(logSpreads, (at) => weights.some((row) => counts(row[at]!))),
  };
}

function sideOf(points: readonly number[], counts: (at: number) => boolean): Side {
  const heavy = [...points.keys()].filter(counts);
  const step = points[1]! - points[0]!;
  return { from: points[heavy[0]!]! - step, to: points[heavy.at(-1)!]! + step };
}

/** Logarithm of how likely these readings are of a normal distribution, but for a constant. */
export function censoredLogLikelihood(
  { seen, higherThan }: CensoredReadings,
  { mean, spread }: { readonly mean: number; readonly spread: number },
): number {
  const z = (reading: number) => (reading - mean) / spread;
  return (
    compensatedSum(seen.map((reading) => -(z(reading) ** 2) / 2)) -
    seen.length * Math.log(spread) +
    compensatedSum(higherThan.map(({ reading, times }) => times * logAbove(z(reading))))
  );
}

/** Logarithm of the chance of lying above; far out, where the chance itself falls to nought, by its leading term. */
const logAbove = (z: number): number =>
  z < 30 ? Math.log(normalBelow(-z)) : -(z ** 2) / 2 - Math.log(z * Math.sqrt(2 * Math.PI));

const logPrior = (value: number, about: { readonly value: number; readonly u: number }): number =>
  -(((value - about.value) / about.u) ** 2) / 2;

const about = ({ value, u }: { readonly value: number; readonly u: number }): Side => ({
  from: value - u * REACH,
  to: value + u * REACH,
});

const pointsOf = ({ from, to }: Side): number[] =>
  Array.from({ length: POINTS }, (_, at) => from + ((to - from) * at) / (POINTS - 1));

/** Where the running sum of the weights reaches a share of them all, on the line between two points of the grid. */
function quantile(points: readonly number[], weights: readonly number[], share: number): number {
  const wanted = share * compensatedSum(weights);
  let before = 0;
  for (const [at, weight] of weights.entries()) {
    if (before + weight >= wanted) {
      const step = points[1]! - points[0]!;
      return points[at]! + step * ((wanted - before) / weight - 0.5);
    }
    before += weight;
  }
  return points.at(-1)!;
}
