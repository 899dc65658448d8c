import type { FirstOff } from '../../../core/winding/index.js';

/** A reading that the protocol asks for: diameters place by place, turn by turn; at last the weight. */
export type Cell =
  | { readonly quantity: 'diameter'; readonly placeM: number; readonly rotationDeg: number }
  | { readonly quantity: 'mass' };

/** A reading as it was written down. */
export interface Reading {
  readonly quantity: 'diameter' | 'mass' | 'length';
  readonly value: number;
  readonly placeM?: number | null;
  readonly rotationDeg?: number | null;
}

/** What of the sheet says where a string is measured. */
type Measured = Pick<FirstOff, 'placesFromEndM' | 'rotationsDeg'>;

/** All readings of one string, in the order in which the hand goes along it. */
export const cellsOf = ({ placesFromEndM, rotationsDeg }: Measured): readonly Cell[] => [
  ...placesFromEndM.flatMap((placeM) =>
    rotationsDeg.map((rotationDeg) => ({ quantity: 'diameter', placeM, rotationDeg }) as const),
  ),
  { quantity: 'mass' },
];

/** What a table of strings has columns for: all readings that there are, also where another plan was followed; before there is any,
 * those that the plan asks for. */
export function cellsShown(planned: readonly Cell[], readings: readonly Reading[]): readonly Cell[] {
  const found: Cell[] = [];
  for (const { quantity, placeM, rotationDeg } of readings) {
    if (quantity !== 'diameter' || typeof placeM !== 'number' || typeof rotationDeg !== 'number') continue;
    const cell = { quantity, placeM, rotationDeg } as const;
    if (!found.some((each) => isIn(each, cell))) found.push(cell);
  }
  if (found.length === 0) return planned;
  return [...found.sort(alongTheString), { quantity: 'mass' }];
}

function alongTheString(one: Cell, other: Cell): number {
  if (one.quantity === 'mass' || other.quantity === 'mass') return 0;
  return one.placeM - other.placeM || one.rotationDeg - other.rotationDeg;
}

/** A check between: the middle place, all turns. */
export function cellsOfCheck({ placesFromEndM, rotationsDeg }: Measured): readonly Cell[] {
  const placeM = placesFromEndM[Math.floor(placesFromEndM.length / 2)] ?? 0;
  return rotationsDeg.map((rotationDeg) => ({ quantity: 'diameter', placeM, rotationDeg }));
}

/** The reading of a cell; where it was measured again the last one holds. */
export const readingIn = (cell: Cell, readings: readonly Reading[]): Reading | undefined =>
  readings.findLast((reading) => isIn(cell, reading));

/** Readings of a second look: of each cell all but the first. */
export const readingsAgain = (cells: readonly Cell[], readings: readonly Reading[]): readonly Reading[] =>
  cells.flatMap((cell) => readings.filter((reading) => isIn(cell, reading)).slice(1));

/** Mean over the places of a string, each the mean over its turns, so that a place read once weighs as much; m. Undefined
 * before there is one. */
export function meanDiameterM(cells: readonly Cell[], readings: readonly Reading[]): number | undefined {
  const places = new Map<number, number[]>();
  for (const cell of cells) {
    const value = cell.quantity === 'diameter' ? readingIn(cell, readings)?.value : undefined;
    if (cell.quantity !== 'diameter' || value === undefined) continue;
    places.set(cell.placeM, [...(places.get(cell.placeM) ?? []), value]);
  }
  return places.size === 0 ? undefined : mean([...places.values()].map(mean));
}

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

function isIn(cell: Cell, { quantity, placeM, rotationDeg }: Omit<Reading, 'value'>): boolean {
  if (cell.quantity !== quantity) return false;
  if (cell.quantity === 'mass') return true;
  const near = Math.abs((placeM ?? Number.NaN) - cell.placeM) < SAME_PLACE_M;
  return near && rotationDeg === cell.rotationDeg;
}

/** Places are marked on a rule: closer than this they are the same. */
const SAME_PLACE_M = 0.0005;
