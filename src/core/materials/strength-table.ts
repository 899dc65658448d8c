import type { SourceKey } from './sources.js';

/** A standard's table of tensile strength against diameter. */
export type StrengthTableId =
  | 'astm-a228'
  | 'en-10270-1-dh'
  | 'en-10270-1-sh'
  | 'en-10270-1-sm'
  | 'jis-g-3522-a'
  | 'jis-g-3522-b';

/** One row: the strengths that the standard asks of wire of this diameter. */
export interface StrengthRow {
  readonly diameterM: number;
  readonly minimumPa: number;
  readonly maximumPa: number;
  /** The maximum is not as printed: a misprint was put right. */
  readonly correctedMaximum?: true;
}

export interface StrengthTable {
  readonly designation: string;
  /** What a size between two rows takes: its own place on the line between them, or the row of the larger size. */
  readonly betweenRows: 'linear' | 'next-larger-row';
  readonly sources: readonly SourceKey[];
  /** Rising diameter. The first row is the least size that the table judges. */
  readonly rows: readonly StrengthRow[];
}

/** A row as the standards print it: diameter, minimum, maximum. */
export type PrintedRow = readonly [diameter: number, minimum: number, maximum: number];

/** A row of a table in millimetres and megapascals. */
export const metricRow = ([millimetres, minimumMPa, maximumMPa]: PrintedRow): StrengthRow => ({
  diameterM: millimetres / 1000,
  minimumPa: minimumMPa * 1e6,
  maximumPa: maximumMPa * 1e6,
});
