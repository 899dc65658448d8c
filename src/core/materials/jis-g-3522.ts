import { metricRow, type PrintedRow, type StrengthTable } from './strength-table.js';

/** Millimetres and MPa. The standard's grade A begins at 0.08 mm; rows below 0.50 mm were not seen. */
const GRADE_A: readonly PrintedRow[] = [
  [0.5, 2300, 2550],
  [0.55, 2260, 2500],
  [0.6, 2210, 2450],
  [0.65, 2210, 2450],
  [0.7, 2160, 2400],
  [0.8, 2110, 2350],
  [0.9, 2110, 2300],
  [1, 2060, 2260],
  [1.2, 2010, 2210],
  [1.4, 1960, 2160],
  [1.6, 1910, 2110],
  [1.8, 1860, 2060],
  [2, 1810, 2010],
];

const GRADE_B: readonly PrintedRow[] = [
  [0.08, 3190, 3480],
  [0.09, 3140, 3430],
  [0.1, 3090, 3380],
  [0.12, 3040, 3330],
  [0.14, 2990, 3290],
  [0.16, 2940, 3240],
  [0.18, 2890, 3190],
  [0.2, 2840, 3090],
  [0.23, 2790, 3040],
  [0.26, 2750, 2990],
  [0.29, 2700, 2940],
  [0.32, 2650, 2890],
  [0.35, 2650, 2890],
  [0.4, 2600, 2840],
  [0.45, 2550, 2790],
  [0.5, 2550, 2790],
  [0.55, 2500, 2750],
  [0.6, 2450, 2700],
  [0.65, 2450, 2700],
  [0.7, 2400, 2650],
  [0.8, 2350, 2600],
  [0.9, 2300, 2500],
  [1, 2260, 2450],
  [1.2, 2210, 2400],
  [1.4, 2160, 2350],
  [1.6, 2110, 2300],
  [1.8, 2060, 2260],
  [2, 2010, 2210],
];

/** JIS G 3522 grade A: a size between rows takes the row of the nearest standard size above. */
export const JIS_G_3522_A = table('JIS G 3522 grade A', GRADE_A);

/** JIS G 3522 grade B, the stronger. */
export const JIS_G_3522_B = table('JIS G 3522 grade B', GRADE_B);

function table(designation: string, rows: readonly PrintedRow[]): StrengthTable {
  return { designation, betweenRows: 'next-larger-row', sources: ['jis-g-3522'], rows: rows.map(metricRow) };
}
