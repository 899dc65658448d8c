import { invariant } from '../foundation/index.js';
import { choleskyFactor, type Estimate, estimate } from '../numeric/index.js';
import type { SeatModel } from './construction.js';
import type { SeatFigures } from './seat.js';

/** The figures whose correlations a seat model can hold, in the order in which it holds them. */
export const CORRELATED_FIGURES = [
  'massSeat',
  'caliperSeat',
  'flattening',
  'extraGap',
  'axialShare',
] as const satisfies readonly (keyof SeatFigures)[];

type Figures = Omit<SeatFigures, 'bendingShare'>;

const COUNT = CORRELATED_FIGURES.length;
/** Correlations are rounded when written; a matrix at the very border of what is possible stays inside it. */
const INWARD = 1 - 1e-9;

/**
 * Rows F with which figure_i = value_i + sum F_ik z_k, z independent of variance one: F F' is the covariance.
 * Diagonal where no correlations are given.
 */
function seatFactor(seat: Omit<SeatModel, 'families'>): readonly (readonly number[])[] {
  const us = CORRELATED_FIGURES.map((name) => figureOf(seat, name).u);
  const { correlations } = seat;
  const entries = new Float64Array(COUNT * COUNT);
  let next = 0;
  for (let row = 0; row < COUNT; row++) {
    for (let column = 0; column < row; column++)
      entries[row * COUNT + column] = INWARD * (correlations?.[next++] ?? 0);
    entries[row * COUNT + row] = 1;
  }
  const lower = choleskyFactor({ size: COUNT, entries });
  invariant(lower, 'the correlations of a seat model contradict one another');
  return us.map((u, row) =>
    Array.from({ length: COUNT }, (_, column) => u * lower.entries[row * COUNT + column]!),
  );
}

/** Places the correlated figures among independent inputs, and gives the way from numbers back to the figures. */
export function placeCorrelated(
  seat: Omit<SeatModel, 'families'>,
  placeOf: (name: string, input: Estimate) => number,
): (numbers: readonly number[]) => Figures {
  if (!seat.correlations) {
    const places = CORRELATED_FIGURES.map((name) => placeOf(`seat ${name}`, figureOf(seat, name)));
    return (numbers) => figuresFrom((row) => numbers[places[row]!]!);
  }
  const factor = seatFactor(seat);
  const places = CORRELATED_FIGURES.map((_, k) => placeOf(`seat direction ${k}`, estimate(0, 1)));
  const values = CORRELATED_FIGURES.map((name) => figureOf(seat, name).value);
  return (numbers) =>
    figuresFrom((row) =>
      factor[row]!.reduce((sum, part, k) => sum + part * numbers[places[k]!]!, values[row]!),
    );
}

const figureOf = (seat: Omit<SeatModel, 'families'>, name: (typeof CORRELATED_FIGURES)[number]): Estimate =>
  seat[name] ?? estimate(0);

const figuresFrom = (at: (row: number) => number): Figures => ({
  massSeat: at(0),
  caliperSeat: at(1),
  flattening: at(2),
  extraGap: at(3),
  axialShare: at(4),
});
