import { fail, type Result, succeed } from '../foundation/index.js';
import { metresFromInches, metresFromMillimetres } from '../units/index.js';
import type { SourceKey } from './sources.js';
import type { StrengthTableId } from './strength-table.js';

/** Wire above the band before, up to and including this diameter, may be off by so much; out-of-round may be as large. */
export interface ToleranceBand {
  readonly upToDiameterM: number;
  readonly plusMinusM: number;
}

export interface ToleranceTable {
  /** The least diameter that the bands speak for. */
  readonly leastM: number;
  readonly bands: readonly ToleranceBand[];
  readonly sources: readonly SourceKey[];
}

const A228_TOLERANCES: ToleranceTable = {
  leastM: metresFromInches(0.004),
  bands: [
    inches(0.01, 0.0002),
    inches(0.028, 0.0003),
    inches(0.063, 0.0004),
    inches(0.08, 0.0005),
    inches(0.25, 0.001),
  ],
  sources: ['astm-a228'],
};

/** Printed for the standard sizes 0.50, 0.55 to 1.00 and 1.20 to 2.00 mm; a size between takes that of the one above. */
const JIS_TOLERANCES: ToleranceTable = {
  leastM: metresFromMillimetres(0.5),
  bands: [millimetres(0.5, 0.008), millimetres(1, 0.01), millimetres(2, 0.015)],
  sources: ['jis-g-3522'],
};

/** What is recorded of each standard's permissible variation in diameter. Of EN 10270-1 nothing was seen. */
export const DIAMETER_TOLERANCES: Readonly<Partial<Record<StrengthTableId, ToleranceTable>>> = {
  'astm-a228': A228_TOLERANCES,
  'jis-g-3522-a': JIS_TOLERANCES,
  'jis-g-3522-b': JIS_TOLERANCES,
};

export type ToleranceFault =
  | { readonly code: 'tolerance.not-recorded'; readonly table: StrengthTableId }
  | {
      readonly code: 'tolerance.outside-table';
      readonly table: StrengthTableId;
      readonly diameterM: number;
      readonly leastM: number;
      readonly mostM: number;
    };

/** Far below any printed figure: keeps 0.010 in, however reckoned, in the band that ends there. */
const ROUNDING_M = 1e-9;

/**
 * Permissible variation of steel wire's diameter, plus or minus, in metres; the difference between the
 * largest and the smallest diameter at one place may be as large. Fails where the standard was not seen or
 * does not speak for the size. Sources: ASTM A228; JIS G 3522.
 */
export function diameterToleranceM(wire: {
  readonly table: StrengthTableId;
  readonly diameterM: number;
}): Result<number, ToleranceFault> {
  const { table, diameterM } = wire;
  const known = DIAMETER_TOLERANCES[table];
  if (known === undefined) return fail({ code: 'tolerance.not-recorded', table });

  const band = known.bands.find(({ upToDiameterM }) => diameterM <= upToDiameterM + ROUNDING_M);
  if (band === undefined || diameterM < known.leastM - ROUNDING_M) {
    const mostM = known.bands.at(-1)?.upToDiameterM ?? known.leastM;
    return fail({ code: 'tolerance.outside-table', table, diameterM, leastM: known.leastM, mostM });
  }
  return succeed(band.plusMinusM);
}

const WORKSHOP_SHARE = 0.01;
const WORKSHOP_LEAST_M = metresFromInches(0.0002);

/**
 * Where a shop that has agreed nothing with its mill may begin for copper and nickel alloys: plus or minus
 * 1 % of the diameter, 0.0002 in at least. A workshop value, not a standard's: ASTM B250 sets the real one.
 */
export const workshopDiameterToleranceM = (diameterM: number): number =>
  Math.max(WORKSHOP_SHARE * diameterM, WORKSHOP_LEAST_M);

function inches(upTo: number, plusMinus: number): ToleranceBand {
  return { upToDiameterM: metresFromInches(upTo), plusMinusM: metresFromInches(plusMinus) };
}

function millimetres(upTo: number, plusMinus: number): ToleranceBand {
  return { upToDiameterM: metresFromMillimetres(upTo), plusMinusM: metresFromMillimetres(plusMinus) };
}
