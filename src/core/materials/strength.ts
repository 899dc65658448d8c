import { fail, type Result, succeed } from '../foundation/index.js';
import { ksiFromPascals, metresFromInches, pascalsFromKsi } from '../units/index.js';
import { ASTM_A228 } from './a228.js';
import type { Standing } from './alloy.js';
import { EN_10270_1_DH, EN_10270_1_SH, EN_10270_1_SM } from './en-10270-1.js';
import { JIS_G_3522_A, JIS_G_3522_B } from './jis-g-3522.js';
import type { SourceKey } from './sources.js';
import type { StrengthRow, StrengthTable, StrengthTableId } from './strength-table.js';

/** The standards that core wire is judged by here, each with its own rows and its own rule between them. */
export const STRENGTH_TABLES: Readonly<Record<StrengthTableId, StrengthTable>> = {
  'astm-a228': ASTM_A228,
  'en-10270-1-dh': EN_10270_1_DH,
  'en-10270-1-sh': EN_10270_1_SH,
  'en-10270-1-sm': EN_10270_1_SM,
  'jis-g-3522-a': JIS_G_3522_A,
  'jis-g-3522-b': JIS_G_3522_B,
};

/** A diameter this near a row is the row's (half a ten-thousandth of an inch, the tables' last printed figure). */
const SAME_SIZE_M = metresFromInches(0.00005) + 1e-12;

/** How to read between two rows: the safe row of the larger size, or the line between them where the standard has it. */
export type StrengthReading = 'conservative' | 'linear';

export interface StrengthQuestion {
  readonly table: StrengthTableId;
  /** Diameter of round wire; across flats of a hexagon. */
  readonly diameterM: number;
  readonly reading: StrengthReading;
}

export interface TensileStrength {
  readonly minimumPa: number;
  /** Top of the standard's band: to show, never to rely on. */
  readonly maximumPa: number;
  readonly rule: 'row' | 'next-larger-row' | 'linear';
  /** The row that was read; of a linear reading, the larger of the two. */
  readonly rowDiameterM: number;
  /** The smaller row of a linear reading. */
  readonly lowerRowDiameterM?: number;
  /** True where 'linear' was asked and the standard's own rule, the next larger row, was followed instead. */
  readonly linearRefused: boolean;
  readonly standing: Standing;
  readonly sources: readonly SourceKey[];
}

/** No standard speaks for this diameter: nothing is extrapolated. */
export interface StrengthFault {
  readonly code: 'strength.outside-table';
  readonly table: StrengthTableId;
  readonly diameterM: number;
  readonly leastM: number;
  readonly mostM: number;
}

/**
 * Tensile strength that a standard asks of steel wire of a given diameter.
 *
 * Within half a ten-thousandth of an inch of a row: the row. Between rows, 'conservative' takes the next
 * larger size (JIS G 3522 prescribes it, the bounds of EN 10270-1 rows imply it), 'linear' the line between
 * the two rows, rounded down to 0.1 ksi: A228 only. Fails outside the rows.
 */
export function tensileStrength(question: StrengthQuestion): Result<TensileStrength, StrengthFault> {
  const table = STRENGTH_TABLES[question.table];
  const at = table.rows.findIndex((row) => question.diameterM <= row.diameterM + SAME_SIZE_M);
  const row = table.rows[at];
  const smaller = table.rows[at - 1];
  if (row === undefined) return outside(question, table);
  if (isSameSize(row, question.diameterM)) return succeed(fromRow(table, row, { rule: 'row' }));
  if (smaller === undefined) return outside(question, table);

  if (question.reading === 'linear' && table.betweenRows === 'linear') {
    return succeed(onTheLine(table, smaller, row, question.diameterM));
  }
  return succeed(
    fromRow(table, row, { rule: 'next-larger-row', linearRefused: question.reading === 'linear' }),
  );
}

const isSameSize = (row: StrengthRow, diameterM: number): boolean =>
  Math.abs(row.diameterM - diameterM) <= SAME_SIZE_M;

function fromRow(
  table: StrengthTable,
  row: StrengthRow,
  how: { readonly rule: 'row' | 'next-larger-row'; readonly linearRefused?: boolean },
): TensileStrength {
  return {
    minimumPa: row.minimumPa,
    maximumPa: row.maximumPa,
    rule: how.rule,
    rowDiameterM: row.diameterM,
    linearRefused: how.linearRefused ?? false,
    standing: row.correctedMaximum ? 'derived' : 'printed',
    sources: table.sources,
  };
}

function onTheLine(
  table: StrengthTable,
  smaller: StrengthRow,
  larger: StrengthRow,
  diameterM: number,
): TensileStrength {
  const share = (diameterM - smaller.diameterM) / (larger.diameterM - smaller.diameterM);
  const between = (from: number, to: number): number => downToTenthKsi(from + share * (to - from));
  return {
    minimumPa: between(smaller.minimumPa, larger.minimumPa),
    maximumPa: between(smaller.maximumPa, larger.maximumPa),
    rule: 'linear',
    rowDiameterM: larger.diameterM,
    lowerRowDiameterM: smaller.diameterM,
    linearRefused: false,
    standing: 'derived',
    sources: table.sources,
  };
}

/** Rounds down, for safety; the millionth keeps 371.0 from falling to 370.9 by the last bit of a double. */
const downToTenthKsi = (stressPa: number): number =>
  pascalsFromKsi(Math.floor(ksiFromPascals(stressPa) * 10 + 1e-6) / 10);

function outside(
  { table, diameterM }: StrengthQuestion,
  { rows }: StrengthTable,
): Result<never, StrengthFault> {
  const leastM = rows[0]?.diameterM ?? 0;
  const mostM = rows.at(-1)?.diameterM ?? 0;
  return fail({ code: 'strength.outside-table', table, diameterM, leastM, mostM });
}
