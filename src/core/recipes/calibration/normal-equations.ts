import type { SquareMatrix } from '../../numeric/index.js';
import type { FitFrame, SamplePlace } from './fit-frame.js';
import type { Sample } from './sample.js';
import { UNKNOWNS } from './seat-unknowns.js';

/**
 * What all samples say of seat and wire lots, as the normal equations of weighted least squares. Seat unknowns are
 * gathered per family and machine first: few cells, however many strings. Each lot of wire has one unknown, its
 * deviation in its own standard uncertainties, believed 0 +- 1 beforehand.
 */
export interface NormalEquations {
  /** Of the seat unknowns alone, in the order of the layout; the prior is not in it. */
  readonly seat: SquareMatrix;
  readonly seatRight: Float64Array;
  readonly lots: readonly LotEquation[];
}

export interface LotEquation {
  diagonal: number;
  right: number;
  /** Coefficients by seat unknowns. */
  readonly seat: Float64Array;
  /** Coefficients by other lots that it was wound together with. */
  readonly others: Map<number, number>;
}

/** `precisions`: of each sample, one over the variance of its mean, less where it is doubted. */
export function normalEquations(frame: FitFrame, precisions: Float64Array): NormalEquations {
  const { samples, layout, places } = frame;
  const { size } = layout;
  const cells: Cell[] = [];
  const lots = frame.lots.map(
    (): LotEquation => ({ diagonal: 1, right: 0, seat: new Float64Array(size), others: new Map() }),
  );
  samples.forEach((sample, at) => {
    const place = places[at]!;
    const precision = precisions[at]!;
    if (place.cell >= 0) {
      const cell = cells[place.cell] ?? emptyCell(place);
      cells[place.cell] = cell;
      gatherCell(cell, sample, precision);
    }
    gatherLots(lots, place, { sample, precision });
  });
  const seat = { size, entries: new Float64Array(size ** 2) };
  const seatRight = new Float64Array(size);
  for (const cell of cells) spread(cell, seat, seatRight);
  return { seat, seatRight, lots };
}

/** All samples of one family on one machine. */
interface Cell {
  readonly blocks: readonly number[];
  readonly matrix: Float64Array;
  readonly right: Float64Array;
}

const emptyCell = ({ blocks }: SamplePlace): Cell => ({
  blocks,
  matrix: new Float64Array(UNKNOWNS ** 2),
  right: new Float64Array(UNKNOWNS),
});

function gatherCell({ matrix, right }: Cell, { byUnknown, mean }: Sample, precision: number): void {
  for (let k = 0; k < UNKNOWNS; k++) {
    const part = precision * byUnknown[k]!;
    if (part === 0) continue;
    right[k] = right[k]! + part * mean;
    for (let l = 0; l < UNKNOWNS; l++)
      matrix[k * UNKNOWNS + l] = matrix[k * UNKNOWNS + l]! + part * byUnknown[l]!;
  }
}

/** What a sample says of its wires' lots. */
function gatherLots(
  lots: readonly LotEquation[],
  { ways, blocks }: SamplePlace,
  { sample: { byUnknown, mean }, precision }: { readonly sample: Sample; readonly precision: number },
): void {
  for (const { lot, way } of ways) {
    const equation = lots[lot]!;
    const { seat, others } = equation;
    const towards = precision * way;
    equation.right += towards * mean;
    for (const block of blocks)
      for (let k = 0; k < UNKNOWNS; k++) seat[block + k] = seat[block + k]! + towards * byUnknown[k]!;
    for (const other of ways) {
      const entry = towards * other.way;
      if (other.lot === lot) equation.diagonal += entry;
      else others.set(other.lot, (others.get(other.lot) ?? 0) + entry);
    }
  }
}

function spread({ blocks, matrix, right }: Cell, seat: SquareMatrix, seatRight: Float64Array): void {
  const { size, entries } = seat;
  for (const row of blocks)
    for (let k = 0; k < UNKNOWNS; k++) {
      seatRight[row + k] = seatRight[row + k]! + right[k]!;
      for (const column of blocks)
        for (let l = 0; l < UNKNOWNS; l++) {
          const at = (row + k) * size + column + l;
          entries[at] = entries[at]! + matrix[k * UNKNOWNS + l]!;
        }
    }
}
