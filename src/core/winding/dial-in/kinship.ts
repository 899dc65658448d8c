import { invariant } from '../../foundation/index.js';
import { choleskyFactor, forwardSolve, type Matrix, type SquareMatrix } from '../../numeric/index.js';
import {
  offsetShared,
  type PartSizes,
  type PastSeen,
  pastSeen,
  responseShared,
  type SeenParts,
  seenParts,
  type Unknown,
} from './kin-parts.js';
import type { RunToDialIn } from './run-to-dial-in.js';
import { STARTING_SPREADS } from './starting-spreads.js';

/** Offsets (m) and what the responses are beyond the reckoned one (m per unit), of a run to come. */
export interface KinModel {
  readonly mean: readonly number[];
  readonly covariance: Matrix;
  readonly betweenM: number;
}

type MeasuredRun = RunToDialIn & { readonly placeSpreadM: number };

/** The past strings as one multivariate normal, conditioned on; averaged over the sizes of its parts. */
export function kinModel(run: MeasuredRun): KinModel {
  const seen = pastSeen(run.past);
  const parts = seenParts(seen, run.toleranceM);
  const record: Record = { run, seen, parts, weights: kinWeights({ run, seen, parts, weights: [] }) };
  const wanted = run.reckonedSettings.map((_, position) => ({ ...run, run: -1, position }));
  return averaged(
    GRID.map((sizes) => conditioned(record, wanted, sizes)),
    STARTING_SPREADS.between * run.toleranceM,
  );
}

const TYPICAL: PartSizes = { lasting: 1, passing: 1, noise: 1 };
const GRID: readonly PartSizes[] = [0.5, 1, 2].flatMap((lasting) =>
  [0.3, 0.55, 1, 1.8].flatMap((passing) =>
    [0.5, 0.63, 0.8, 1, 1.25, 1.6, 2].map((noise) => ({ lasting, passing, noise })),
  ),
);
/**
 * Before anything is seen, a part may well be half or twice its starting value; winders differ less in how far their
 * strings differ from each other. Our own choice.
 */
const SIZE_LOG_SPREAD = Math.log(2);
const NOISE_LOG_SPREAD = Math.log(1.5);

interface Record {
  readonly run: MeasuredRun;
  readonly seen: readonly PastSeen[];
  readonly parts: SeenParts;
  /** Of each string; 1 where none is given. */
  readonly weights: readonly number[];
}

/** A past string that lies further than this many standard deviations from what its kin foretell is drawn in to it. */
const FAR_FROM_KIN = 2.5;

/**
 * Strings that the others would not have foretold weigh less, so that a misread one hardly tells: each is foretold
 * from all others (closed form of leaving one out: S. Sundararajan & S. S. Keerthi, Neural Computation 13 (2001)
 * 1103; from memory). How far is far is measured by the middle one, which a few misread strings do not move.
 */
function kinWeights(record: Record): readonly number[] {
  const { seen } = record;
  const { lower, whitened } = factored(record, TYPICAL);
  const squares = seen.map((_, row) => {
    const unit = forwardSolve(
      lower,
      seen.map((__, column) => (row === column ? 1 : 0)),
    );
    return inner(unit, whitened) ** 2 / inner(unit, unit);
  });
  const usual = usualSquare(squares);
  return squares.map((square) => Math.min(1, (FAR_FROM_KIN ** 2 * usual) / square));
}

/** Median of the squares over that of a standard normal's; a starting value of 1 weighs as six strings. */
function usualSquare(squares: readonly number[]): number {
  const inOrder = [...squares].sort((one, other) => one - other);
  const middle = (inOrder[Math.floor(inOrder.length / 2)] ?? 0) / MEDIAN_SQUARE;
  return (START_STRINGS + squares.length * middle) / (START_STRINGS + squares.length);
}

/** Median of the square of a standard normal draw. */
const MEDIAN_SQUARE = 0.4549;
const START_STRINGS = 6;

/** The covariance of the past strings as L L', and L^-1 times what they showed. */
function factored({ run, seen, parts, weights }: Record, sizes: PartSizes) {
  const betweenM2 = (sizes.noise * STARTING_SPREADS.between * run.toleranceM) ** 2;
  const covarianceRow = ({ places }: PastSeen, row: number): readonly number[] => {
    const lasting = parts.lasting[row]!;
    const passing = parts.passing[row]!;
    const noiseM2 = (betweenM2 + run.placeSpreadM ** 2 / Math.max(1, places)) / (weights[row] ?? 1);
    return parts.response[row]!.map(
      (response, column) =>
        response +
        sizes.lasting ** 2 * lasting[column]! +
        sizes.passing ** 2 * passing[column]! +
        (row === column ? noiseM2 : 0),
    );
  };
  const size = seen.length;
  const entries = new Float64Array(size * size);
  // Rows reach to the diagonal only, which is all that is read.
  for (const [row, one] of seen.entries()) entries.set(covarianceRow(one, row), row * size);
  const lower = choleskyFactor({ size, entries });
  invariant(lower, 'a covariance is positive definite');
  const whitened = forwardSolve(
    lower,
    seen.map(({ restM }) => restM),
  );
  return { lower, whitened };
}

interface Conditioned {
  readonly sizes: PartSizes;
  readonly logWeight: number;
  readonly mean: readonly number[];
  readonly covariance: Matrix;
}

/** The unknowns of the run to come, given the past and the sizes of the parts: offsets first, then responses. */
function conditioned(record: Record, wanted: readonly Unknown[], sizes: PartSizes): Conditioned {
  const { run, seen } = record;
  const { toleranceM, knob } = run;
  const { lower, whitened } = factored(record, sizes);
  const offsetKin = (one: Unknown, other: Unknown): number => {
    const { lasting, passing } = offsetShared(one, other);
    return toleranceM ** 2 * (sizes.lasting ** 2 * lasting + sizes.passing ** 2 * passing);
  };
  const responseKin = (one: Unknown, other: Unknown): number =>
    knob.responseMPerUnit * responseShared(one, other);
  const unknowns = [
    ...wanted.map((each) => ({ of: offsetKin, each, towards: seen.map((one) => offsetKin(each, one)) })),
    ...wanted.map((each) => ({
      of: responseKin,
      each,
      towards: seen.map((one) => one.reachM * responseKin(each, one)),
    })),
  ].map(({ of, each, towards }) => ({ of, each, whitened: forwardSolve(lower, towards) }));
  return {
    sizes,
    logWeight: logLikelihood(lower, whitened) + logStart(sizes),
    mean: unknowns.map((each) => inner(each.whitened, whitened)),
    covariance: unknowns.map((one) =>
      unknowns.map((other) => {
        const before = one.of === other.of ? one.of(one.each, other.each) : 0;
        const unit = one.of === responseKin ? knob.responseMPerUnit : 1;
        return unit * before - inner(one.whitened, other.whitened);
      }),
    ),
  };
}

const logLikelihood = ({ size, entries }: SquareMatrix, whitened: Float64Array): number =>
  whitened.reduce((sum, value, row) => sum - value ** 2 / 2 - Math.log(entries[row * size + row]!), 0);

const logStart = ({ lasting, passing, noise }: PartSizes): number =>
  -(Math.log(lasting) ** 2 + Math.log(passing) ** 2) / (2 * SIZE_LOG_SPREAD ** 2) -
  Math.log(noise) ** 2 / (2 * NOISE_LOG_SPREAD ** 2);

/** Mean and covariance of the mixture of all sizes, each weighing as likely as it makes the past. */
function averaged(fits: readonly Conditioned[], startBetweenM: number): KinModel {
  const most = Math.max(...fits.map(({ logWeight }) => logWeight));
  const weights = fits.map(({ logWeight }) => Math.exp(logWeight - most));
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const average = (of: (fit: Conditioned) => number): number =>
    fits.reduce((sum, fit, index) => sum + (weights[index]! / total) * of(fit), 0);
  const mean = fits[0]!.mean.map((_, row) => average((fit) => fit.mean[row]!));
  const away = (fit: Conditioned, row: number): number => fit.mean[row]! - mean[row]!;
  return {
    mean,
    covariance: mean.map((_, row) =>
      mean.map((__, column) =>
        average((fit) => fit.covariance[row]![column]! + away(fit, row) * away(fit, column)),
      ),
    ),
    betweenM: startBetweenM * Math.sqrt(average(({ sizes }) => sizes.noise ** 2)),
  };
}

const inner = (one: Float64Array, other: Float64Array): number =>
  one.reduce((sum, value, index) => sum + value * other[index]!, 0);
