import type { Calibration } from './calibrate.js';
import type { Sample } from './sample.js';
import { FLAGGED_BEYOND, tailWeight } from './tail-weight.js';

/** One measured string against what its family, machine and construction let expect. m, or kg/m. */
export interface CalibrationPoint {
  readonly stringId: string;
  readonly runId: string;
  readonly recipeId: string;
  readonly machineId: string;
  readonly familyKey: string;
  readonly predicted: number;
  readonly measured: number;
  /** Its own weight times that of its run. */
  readonly weight: number;
  readonly isFlagged: boolean;
}

/** Points that are not shown one by one: how many lie in a stretch of predicted values, and how far off they are. */
export interface PointBand {
  readonly from: number;
  readonly to: number;
  readonly count: number;
  /** Measured less predicted: mean and standard deviation. */
  readonly meanOff: number;
  readonly spread: number;
}

export interface CalibrationPoints {
  /** All that are flagged, as far as there is room, then the newest. */
  readonly points: readonly CalibrationPoint[];
  readonly bands: readonly PointBand[];
}

const BANDS = 12;

/**
 * Predicted against measured: mean diameters of strings wound by the sheet, and unit weights as they would be at the
 * diameter expected (a string that came out thick is heavy, and that is no error of the seat). At most `most` points
 * each, the rest in bands.
 */
export function calibrationPoints(
  calibration: Calibration,
  most: number,
): { readonly diameters: CalibrationPoints; readonly weights: CalibrationPoints } {
  return {
    diameters: shared(pointsOf(calibration, 'mean-diameter', 0), most),
    weights: shared(pointsOf(calibration, 'weight-beside-mean', 2), most),
  };
}

function pointsOf(
  { samples, judged, posterior }: Calibration,
  telling: Sample['telling'],
  quantity: number,
): readonly CalibrationPoint[] {
  const { layout, mean } = posterior;
  return samples.flatMap((sample, at) => {
    if (sample.telling !== telling || !sample.family) return [];
    const { runId, recipeId, machineId, familyKey } = sample;
    const blocks = [0, layout.familyAt(familyKey)!, layout.machineAt(machineId)!];
    const expected = sample.slopes.expected[quantity]!;
    const scale = quantity < 2 ? 1 : expected;
    const bySeat = sample.byUnknown.reduce(
      (sum, slope, k) => sum + slope * blocks.reduce((all, block) => all + mean[block + k]!, 0),
      0,
    );
    const { standardised, weight } = judged[at]!;
    return sample.strings.map((string) => ({
      stringId: string.stringId,
      runId,
      recipeId,
      machineId,
      familyKey,
      predicted: expected + scale * bySeat,
      measured: expected + scale * string.off,
      weight: weight * string.weight,
      isFlagged: Math.abs(standardised) > FLAGGED_BEYOND || string.weight < FLAGGED_WEIGHT,
    }));
  });
}

/** What a string counts that lies just so far off the rest of its run. */
const FLAGGED_WEIGHT = tailWeight(FLAGGED_BEYOND ** 2);

function shared(points: readonly CalibrationPoint[], most: number): CalibrationPoints {
  const flagged = points.filter(({ isFlagged }) => isFlagged).slice(-most);
  const ordinary = points.filter(({ isFlagged }) => !isFlagged);
  const room = most - flagged.length;
  const shown = new Set([...flagged, ...(room > 0 ? ordinary.slice(-room) : [])]);
  return {
    points: points.filter((point) => shown.has(point)),
    bands: bandsOf(points.filter((point) => !shown.has(point))),
  };
}

function bandsOf(points: readonly CalibrationPoint[]): readonly PointBand[] {
  if (points.length === 0) return [];
  let least = Number.POSITIVE_INFINITY;
  let largest = Number.NEGATIVE_INFINITY;
  for (const { predicted } of points) {
    least = Math.min(least, predicted);
    largest = Math.max(largest, predicted);
  }
  const width = (largest - least) / BANDS || 1;
  const offs = Array.from({ length: BANDS }, (): number[] => []);
  for (const { predicted, measured } of points)
    offs[Math.min(BANDS - 1, Math.floor((predicted - least) / width))]!.push(measured - predicted);
  return offs.flatMap((band, at) => {
    if (band.length === 0) return [];
    const meanOff = band.reduce((sum, off) => sum + off, 0) / band.length;
    const squares = band.reduce((sum, off) => sum + (off - meanOff) ** 2, 0);
    const spread = band.length < 2 ? 0 : Math.sqrt(squares / (band.length - 1));
    return [{ from: least + at * width, to: least + (at + 1) * width, count: band.length, meanOff, spread }];
  });
}
