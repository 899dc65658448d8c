import {
  ALLOYS,
  type AlloyId,
  diameterToleranceM,
  type SourcedFigure,
  workshopDiameterToleranceM,
} from '../materials/index.js';
import { type Estimate, estimate } from '../numeric/index.js';
import type { CoreWire } from './construction.js';

/*
 * Standard uncertainties of what a string is made of. Where the source of a figure states none, ours stand in:
 * spreads of printed values about their middle, as shares of the figure (our judgement).
 */
const DENSITY_SPREAD = 0.003;
const MODULUS_SPREAD = 0.03;
const EXPANSION_SPREAD = 0.05;

/** Size of core wire, m: anywhere within the standard's tolerance, or a workshop's where none is known. */
export function coreSize({ sizeM, strengthTable }: CoreWire): Estimate {
  const tolerance = diameterToleranceM({ table: strengthTable, diameterM: sizeM });
  return anywhereWithin(sizeM, tolerance.ok ? tolerance.value : workshopDiameterToleranceM(sizeM));
}

/** Diameter of wrap wire, or thickness of rolled wrap, m: its spool names no standard, so a workshop's tolerance. */
export const wrapSize = (sizeM: number): Estimate => anywhereWithin(sizeM, workshopDiameterToleranceM(sizeM));

export const densityOf = (alloy: AlloyId): Estimate =>
  withSpread(ALLOYS[alloy].densityKgPerM3, DENSITY_SPREAD);

export const modulusOf = (alloy: AlloyId): Estimate =>
  withSpread(ALLOYS[alloy].youngsModulusPa, MODULUS_SPREAD);

export const expansionOf = (alloy: AlloyId): Estimate =>
  withSpread(ALLOYS[alloy].expansionPerK, EXPANSION_SPREAD);

/** Every size within +-t as likely as any other: u = t / sqrt 3 (JCGM 100:2008, 4.3.7). */
const anywhereWithin = (sizeM: number, toleranceM: number): Estimate =>
  estimate(sizeM, toleranceM / Math.sqrt(3));

const withSpread = (figure: SourcedFigure, share: number): Estimate =>
  estimate(figure.value, figure.u ?? share * figure.value);
