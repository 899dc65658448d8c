import type { Calibration } from './calibrate.js';
import type { SeatPosterior } from './seat-posterior.js';
import { UNKNOWNS } from './seat-unknowns.js';
import type { WoundOn } from './wound-on.js';

/** Which unknowns of the layout a string goes by, and how far it is from having any of its own. */
export interface SeatQuestion {
  /** Where blocks of unknowns begin, and how much each counts. */
  readonly blocks: readonly { readonly place: number; readonly share: number }[];
  /** A family, or a machine, of which nothing was measured: its deviation is open. */
  readonly isNewFamily: boolean;
  readonly isNewMachine: boolean;
}

/**
 * The question for a family on a machine. No machine told: the mean of those that wound the family (or, of a new
 * family, any string), by what was read of each.
 */
export function seatQuestion(
  { posterior, woundOn }: Pick<Calibration, 'posterior' | 'woundOn'>,
  family: string,
  machineId: string | undefined,
): SeatQuestion {
  const { layout } = posterior;
  const familyAt = layout.familyAt(family);
  const machines = machineId === undefined ? machineShares(woundOn, layout, family) : [];
  const machineAt = machineId === undefined ? undefined : layout.machineAt(machineId);
  return {
    blocks: [
      { place: 0, share: 1 },
      ...(familyAt === undefined ? [] : [{ place: familyAt, share: 1 }]),
      ...(machineAt === undefined ? machines : [{ place: machineAt, share: 1 }]),
    ],
    isNewFamily: familyAt === undefined,
    isNewMachine: machineAt === undefined && machines.length === 0,
  };
}

/** The mean and variance of sum slope_k seat_k, as deviation from what is expected at the prior's middle. */
export function seatVariance(
  posterior: SeatPosterior,
  question: SeatQuestion,
  slopes: readonly number[],
): { readonly off: number; readonly variance: number } {
  const { mean } = posterior;
  let off = 0;
  for (const { place, coefficient } of rowOf(question, slopes)) off += coefficient * mean[place]!;
  return { off, variance: Math.max(0, seatCovariance(posterior, question, slopes, slopes)) };
}

/** Covariance of two such sums of one string. */
export function seatCovariance(
  { covariance: { size, entries }, spreads }: SeatPosterior,
  question: SeatQuestion,
  slopes: readonly number[],
  otherSlopes: readonly number[],
): number {
  const others = rowOf(question, otherSlopes);
  let sum = 0;
  for (const one of rowOf(question, slopes))
    for (const other of others)
      sum += one.coefficient * other.coefficient * entries[one.place * size + other.place]!;
  slopes.forEach((slope, k) => {
    const open =
      (question.isNewFamily ? spreads.family[k]! : 0) + (question.isNewMachine ? spreads.machine[k]! : 0);
    sum += slope * otherSlopes[k]! * open;
  });
  return sum;
}

/** The question as a sparse row over the layout. */
export function rowOf(
  { blocks }: SeatQuestion,
  slopes: readonly number[],
): readonly { readonly place: number; readonly coefficient: number }[] {
  return blocks.flatMap(({ place, share }) =>
    slopes.flatMap((slope, k) => (slope === 0 ? [] : [{ place: place + k, coefficient: share * slope }])),
  );
}

function machineShares(
  woundOn: WoundOn,
  layout: SeatPosterior['layout'],
  family: string,
): readonly { readonly place: number; readonly share: number }[] {
  const machines = [...(woundOn.get(family) ?? woundOn.get('') ?? [])];
  const total = machines.reduce((sum, [, readings]) => sum + readings, 0);
  return machines.map(([machineId, readings]) => ({
    place: layout.machineAt(machineId)!,
    share: readings / total,
  }));
}

/** Slopes of one unknown by itself. */
export const unitSlopes = (unknown: number): readonly number[] =>
  Array.from({ length: UNKNOWNS }, (_, k) => (k === unknown ? 1 : 0));
