import type { MeasuredString } from './measured-string.js';
import { type StringSlopes, slopesUnderTension } from './string-slopes.js';

/**
 * What a string can tell, each about another thing than the others, so that their errors are their own:
 * - `mean-diameter`, `largest-diameter`: of a string wound by the sheet; the largest only where the mean is missing.
 * - `corners`: largest less mean diameter, of any string.
 * - `weight-beside-mean`, `weight-beside-largest`: unit weight less what goes with the string's own diameter, of any
 *   string: turned settings move both alike.
 * - `weight`: unit weight of a string wound by the sheet whose diameter nobody took.
 * - `axial-stiffness`.
 * Weights and stiffness are shares of what is expected, diameters are in m.
 */
export const TELLING = [
  'mean-diameter',
  'largest-diameter',
  'corners',
  'weight-beside-mean',
  'weight-beside-largest',
  'weight',
  'axial-stiffness',
] as const;

export type Telling = (typeof TELLING)[number];

/** How each telling is made up of the quantities: coefficients of mean diameter, largest diameter, unit weight, stiffness. */
export function telling(kind: Telling, { byDiameter }: StringSlopes): readonly number[] {
  const perM = byDiameter[2]!;
  switch (kind) {
    case 'mean-diameter':
      return [1, 0, 0, 0];
    case 'largest-diameter':
      return [0, 1, 0, 0];
    case 'corners':
      return [-1, 1, 0, 0];
    case 'weight-beside-mean':
      return [-perM, 0, 1, 0];
    case 'weight-beside-largest':
      return [0, -perM, 1, 0];
    case 'weight':
      return [0, 0, 1, 0];
    case 'axial-stiffness':
      return [0, 0, 0, 1];
  }
}

/** What one string tells. */
export function toldBy(string: MeasuredString): readonly Telling[] {
  const { meanDiameterM, largestDiameterM, unitWeightKgPerM, axialStiffnessN } = string;
  const isBySheet = string.setting === 'by-sheet';
  const told: Telling[] = [];
  if (meanDiameterM !== undefined && isBySheet) told.push('mean-diameter');
  if (meanDiameterM === undefined && largestDiameterM !== undefined && isBySheet)
    told.push('largest-diameter');
  if (meanDiameterM !== undefined && largestDiameterM !== undefined) told.push('corners');
  if (unitWeightKgPerM !== undefined) {
    if (meanDiameterM !== undefined) told.push('weight-beside-mean');
    else if (largestDiameterM !== undefined) told.push('weight-beside-largest');
    else if (isBySheet) told.push('weight');
  }
  if (axialStiffnessN !== undefined) told.push('axial-stiffness');
  return told;
}

/** Measured less expected: m for diameters, shares for weight and stiffness; 0 where it was not measured. */
export function offsOf(string: MeasuredString, { expected }: StringSlopes): readonly number[] {
  const { meanDiameterM, largestDiameterM, unitWeightKgPerM, axialStiffnessN } = string;
  return [
    meanDiameterM === undefined ? 0 : meanDiameterM - expected[0]!,
    largestDiameterM === undefined ? 0 : largestDiameterM - expected[1]!,
    unitWeightKgPerM === undefined ? 0 : unitWeightKgPerM / expected[2]! - 1,
    axialStiffnessN === undefined ? 0 : axialStiffnessN / expected[3]! - 1,
  ];
}

/** How a telling goes with the unknowns, and with the sizes of the wires. */
export function slopesOfTelling(
  kind: Telling,
  slopes: StringSlopes,
  tensionRatio: number | undefined,
): { readonly byUnknown: readonly number[]; readonly byWire: readonly number[] } {
  const parts = telling(kind, slopes);
  const combined = (rows: readonly (readonly number[])[]): number[] =>
    rows[0]!.map((_, column) =>
      parts.reduce((sum, part, quantity) => sum + part * rows[quantity]![column]!, 0),
    );
  return {
    byUnknown: slopesUnderTension(combined(slopes.byUnknown), tensionRatio),
    byWire: combined(slopes.byWire),
  };
}
