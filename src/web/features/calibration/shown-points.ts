import type { CalibrationView } from '../../../contract/index.js';

type Points = CalibrationView['diameters'];
export type CalibrationPoint = Points['points'][number];
export type CalibrationBand = Points['bands'][number];

/** How far a string came out from what was expected of it; of weights as a share, since heavy strings err by more. */
export const offOf = (
  { predicted, measured }: Pick<CalibrationPoint, 'predicted' | 'measured'>,
  by: Quantity,
): number => (by === 'weight' ? measured / predicted - 1 : measured - predicted);

export type Quantity = 'diameter' | 'weight';

/** Half of the interval within which nine ordinary strings of ten come out: from one set-up to another, and string to string. */
export function ordinaryWithin({ noise }: Pick<CalibrationView, 'noise'>, by: Quantity): number {
  const { stringM, runM, stringWeight, runWeight } = noise;
  return NINETY * (by === 'diameter' ? Math.hypot(stringM, runM) : Math.hypot(stringWeight, runWeight));
}

/** Of a normal distribution: half of the interval that holds 90 %, in standard deviations. */
const NINETY = 1.6449;

/** Points of a family, the farthest off first: as one reads a list for what is wrong. */
export const pointsOf = (
  points: readonly CalibrationPoint[],
  by: Quantity,
  familyKey: string,
): readonly CalibrationPoint[] =>
  points
    .filter((point) => familyKey === '' || point.familyKey === familyKey)
    .toSorted((a, b) => Math.abs(offOf(b, by)) - Math.abs(offOf(a, by)));

/** How many of these lie within a half interval, as a share. */
export const shareWithin = (points: readonly CalibrationPoint[], by: Quantity, half: number): number =>
  points.length === 0
    ? 0
    : points.filter((point) => Math.abs(offOf(point, by)) <= half).length / points.length;
