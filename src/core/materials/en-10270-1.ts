import { metricRow, type PrintedRow, type StrengthTable } from './strength-table.js';

/** Millimetres and MPa, as printed. Each row runs from the one before it, left out, up to its own diameter. */
const FINE_DH: readonly PrintedRow[] = [
  [0.2, 2800, 3110],
  [0.22, 2770, 3080],
  [0.25, 2720, 3010],
  [0.28, 2680, 2970],
];

/** From 0.30 mm on the static and the dynamic grade of high strength are the same. */
const SH_AND_DH: readonly PrintedRow[] = [
  [0.3, 2660, 2940],
  [0.32, 2640, 2920],
  [0.34, 2610, 2890],
];

const SM: readonly PrintedRow[] = [
  [0.3, 2370, 2650],
  [0.4, 2270, 2550],
  [0.5, 2200, 2470],
  [0.6, 2140, 2400],
  [0.7, 2090, 2350],
  [0.8, 2050, 2300],
  [0.9, 2010, 2260],
  [1, 1980, 2250],
  [1.1, 1950, 2190],
  [1.2, 1920, 2160],
  [1.3, 1900, 2130],
  [1.4, 1870, 2100],
  [1.5, 1850, 2080],
  [1.6, 1830, 2050],
  [1.8, 1790, 2010],
  [2, 1760, 1970],
];

/** EN 10270-1 grade DH (dynamic, high); only the rows that were seen. */
export const EN_10270_1_DH = table('EN 10270-1 grade DH', [...FINE_DH, ...SH_AND_DH]);

/** EN 10270-1 grade SH (static, high); only the rows that were seen. */
export const EN_10270_1_SH = table('EN 10270-1 grade SH', SH_AND_DH);

/** EN 10270-1 grade SM (static, medium). */
export const EN_10270_1_SM = table('EN 10270-1 grade SM', SM);

function table(designation: string, rows: readonly PrintedRow[]): StrengthTable {
  return { designation, betweenRows: 'next-larger-row', sources: ['en-10270-1'], rows: rows.map(metricRow) };
}
