import { type Estimate, estimate } from '../../numeric/index.js';
import { type Construction, seatFamilyOf } from '../../string/index.js';
import type { Calibration } from './calibrate.js';
import { priorMiddle } from './calibration-prior.js';
import type { WireUsed } from './measured-string.js';
import { ninetyPercentFactor } from './ninety-percent.js';
import { familyKey } from './sample.js';
import { type SeatQuestion, seatQuestion, seatVariance } from './seat-question.js';
import { QUANTITIES, type Quantity } from './seat-unknowns.js';
import { type StringSlopes, stringSlopes } from './string-slopes.js';
import { tellingVariance } from './telling-noise.js';
import type { Telling } from './told-by-string.js';

/** A string that may be made: one of a recipe, on a machine or on whichever is free. */
export interface StringAsked {
  readonly construction: Construction;
  readonly machineId?: string | undefined;
  /** Standard uncertainties of the sizes of its wires, core first. */
  readonly wires: readonly Pick<WireUsed, 'sizeUM'>[];
}

/** What a string is expected to show. */
export interface StringPrediction {
  /** What strings of this construction have in the mean; `u` is the doubt about seat, flattening and gap alone. */
  readonly mean: Readonly<Record<Quantity, Estimate>>;
  /** What the next string will show, wound by the sheet, its wire's, the run's and its own chance included. */
  readonly next: Readonly<Record<Quantity, Estimate>>;
  /** Half of an interval of 90 %, in `u`. */
  readonly ninetyPercent: number;
}

/** Diameters, unit weight and axial stiffness of a string, SI, by what the shop's own strings have taught. */
export function predictString(calibration: Calibration, string: StringAsked): StringPrediction {
  const slopes = stringSlopes(string.construction, priorMiddle(calibration.prior));
  const question = questionOf(calibration, string);
  const about = QUANTITIES.map((_, at) => {
    const { off, variance } = seatVariance(calibration.posterior, question, slopes.byUnknown[at]!);
    const scale = at < 2 ? 1 : slopes.expected[at]!;
    const value = slopes.expected[at]! + scale * off;
    const nextVariance = variance + chanceVariance(calibration, string, slopes, at);
    return {
      mean: estimate(value, scale * Math.sqrt(variance)),
      next: estimate(value, scale * Math.sqrt(nextVariance)),
    };
  });
  const named = (of: 'mean' | 'next') =>
    Object.fromEntries(QUANTITIES.map((name, at) => [name, about[at]![of]])) as Record<Quantity, Estimate>;
  return {
    mean: named('mean'),
    next: named('next'),
    ninetyPercent: ninetyPercentFactor(calibration.noiseDegrees),
  };
}

/** Which unknowns a string goes by. */
export const questionOf = (
  calibration: Calibration,
  { construction, machineId }: Pick<StringAsked, 'construction' | 'machineId'>,
): SeatQuestion => seatQuestion(calibration, familyKey(seatFamilyOf(construction)), machineId);

/** Variance of one quantity of one string by wire, run and chance; a share where the quantity is one. */
export function chanceVariance(
  { noise }: Pick<Calibration, 'noise'>,
  { wires }: Pick<StringAsked, 'wires'>,
  slopes: StringSlopes,
  quantity: number,
): number {
  const ofWires = wires.reduce(
    (sum, { sizeUM }, wire) => sum + (sizeUM * (slopes.byWire[quantity]![wire] ?? 0)) ** 2,
    0,
  );
  const { run, string } = tellingVariance(TOLD_ALONE[quantity]!, slopes, noise);
  return ofWires + run + string;
}

/** What a string tells of each quantity where nothing else of it was measured. */
const TOLD_ALONE: readonly Telling[] = ['mean-diameter', 'largest-diameter', 'weight', 'axial-stiffness'];
