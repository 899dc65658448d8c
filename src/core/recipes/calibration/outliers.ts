import type { Calibration } from './calibrate.js';
import type { Sample } from './sample.js';
import { FLAGGED_BEYOND } from './tail-weight.js';
import { tellingVariance } from './telling-noise.js';
import type { Telling } from './told-by-string.js';

/** A string, or all strings of a run, that lies where ordinary ones do not. It counts less and is still there. */
export interface Outlier {
  readonly telling: Telling;
  readonly runId: string;
  readonly recipeId: string;
  readonly machineId: string;
  /** The one string, or all of the run that told the same. */
  readonly stringIds: readonly string[];
  /** How far it lies off: of one string from the others of its run, of a run from what the model says. m, or a share of weight. */
  readonly off: number;
  /** That in standard deviations. */
  readonly standardised: number;
  /** What it still counts, 1 being an ordinary one. */
  readonly weight: number;
}

/** A lot of wire that seems to be of another size than its certificate, measurement or standard says. */
export interface OddLot {
  readonly lot: string;
  /** In standard uncertainties of the size stated. */
  readonly standardised: number;
}

/** All outliers, the farthest first. */
export function outliers({ samples, judged, noise }: Calibration): readonly Outlier[] {
  const found = samples.flatMap((sample, at): Outlier[] => {
    const { rest, standardised, weight } = judged[at]!;
    const whole =
      Math.abs(standardised) > FLAGGED_BEYOND
        ? [outlierOf(sample, sample.strings, { off: rest, standardised, weight })]
        : [];
    const { string } = tellingVariance(sample.telling, sample.slopes, noise);
    const single =
      sample.strings.length < 3
        ? []
        : sample.strings.flatMap((each) => {
            const off = each.off - sample.mean;
            const own = off / Math.sqrt(string);
            return Math.abs(own) > FLAGGED_BEYOND
              ? [outlierOf(sample, [each], { off, standardised: own, weight: each.weight })]
              : [];
          });
    return [...whole, ...single];
  });
  return found.sort((a, b) => Math.abs(b.standardised) - Math.abs(a.standardised));
}

/** Lots of wire beyond what their stated uncertainty allows, the farthest first. */
export const oddLots = ({ lots }: Calibration): readonly OddLot[] =>
  [...lots]
    .filter(([, standardised]) => Math.abs(standardised) > FLAGGED_BEYOND)
    .map(([lot, standardised]) => ({ lot, standardised }))
    .sort((a, b) => Math.abs(b.standardised) - Math.abs(a.standardised));

const outlierOf = (
  { telling, runId, recipeId, machineId }: Sample,
  strings: Sample['strings'],
  how: Pick<Outlier, 'off' | 'standardised' | 'weight'>,
): Outlier => ({
  telling,
  runId,
  recipeId,
  machineId,
  stringIds: strings.map(({ stringId }) => stringId),
  ...how,
});
