import type { LotEquation, NormalEquations } from './normal-equations.js';

/** The equations of the seat unknowns with every lot's deviation integrated out, and the way back to the lots. */
export interface WithoutLots {
  readonly seat: NormalEquations['seat'];
  readonly seatRight: Float64Array;
  /** Deviations of the lots, in their standard uncertainties, at given seat unknowns. */
  readonly lotsAt: (unknowns: ArrayLike<number>) => Float64Array;
}

/**
 * Gaussian elimination of the lots; what is left is exactly the marginal precision of the seat (Schur complement). In
 * the order of minimum degree (W. F. Tinney & J. W. Walker, Proc. IEEE 55 (1967) 1801, scheme 2), so that little
 * fills in. The equations are used up.
 */
export function eliminateLots({ seat, seatRight, lots }: NormalEquations): WithoutLots {
  const rows: Eliminated[] = [];
  const left = new Set(lots.keys());
  while (left.size > 0) {
    const at = leastBound(lots, left);
    left.delete(at);
    const places = nonZero(lots[at]!.seat);
    intoSeat(lots[at]!, places, { seat, seatRight });
    intoOthers(lots, at, places);
    rows.push({ at, places });
  }
  rows.reverse();
  return { seat, seatRight, lotsAt: (unknowns) => deviations(rows, lots, unknowns) };
}

interface Eliminated {
  readonly at: number;
  /** Seat unknowns that it goes with. */
  readonly places: readonly number[];
}

/** The lot that was wound together with fewest of those left; the first of several. */
function leastBound(lots: readonly LotEquation[], left: ReadonlySet<number>): number {
  let least = -1;
  let fewest = Number.POSITIVE_INFINITY;
  for (const at of left) {
    const { size } = lots[at]!.others;
    if (size >= fewest) continue;
    least = at;
    fewest = size;
    if (size <= 1) break;
  }
  return least;
}

function nonZero(values: Float64Array): number[] {
  const places: number[] = [];
  for (let at = 0; at < values.length; at++) if (values[at] !== 0) places.push(at);
  return places;
}

function intoSeat(
  row: LotEquation,
  places: readonly number[],
  { seat: { size, entries }, seatRight }: Pick<NormalEquations, 'seat' | 'seatRight'>,
): void {
  for (const one of places) {
    const factor = row.seat[one]! / row.diagonal;
    seatRight[one] = seatRight[one]! - factor * row.right;
    for (const other of places)
      entries[one * size + other] = entries[one * size + other]! - factor * row.seat[other]!;
  }
}

function intoOthers(lots: readonly LotEquation[], at: number, places: readonly number[]): void {
  const row = lots[at]!;
  for (const [other, coefficient] of row.others) {
    const equation = lots[other]!;
    const factor = coefficient / row.diagonal;
    equation.others.delete(at);
    equation.diagonal -= factor * coefficient;
    equation.right -= factor * row.right;
    for (const place of places) equation.seat[place] = equation.seat[place]! - factor * row.seat[place]!;
    for (const [third, beside] of row.others)
      if (third !== other) equation.others.set(third, (equation.others.get(third) ?? 0) - factor * beside);
  }
}

/** From the last eliminated back to the first: each knows what it depends on. */
function deviations(
  rows: readonly Eliminated[],
  lots: readonly LotEquation[],
  unknowns: ArrayLike<number>,
): Float64Array {
  const found = new Float64Array(lots.length);
  for (const { at, places } of rows) {
    const row = lots[at]!;
    let rest = row.right;
    for (const place of places) rest -= row.seat[place]! * unknowns[place]!;
    for (const [other, coefficient] of row.others) rest -= coefficient * found[other]!;
    found[at] = rest / row.diagonal;
  }
  return found;
}
