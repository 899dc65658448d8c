import {
  diameterToleranceM,
  STRENGTH_TABLES,
  tensileStrength,
  workshopDiameterToleranceM,
} from '../../../core/materials/index.js';
import type { WireRecord } from './wire-book.js';

export interface DiameterCheck {
  readonly offM: number;
  readonly toleranceM: number;
  /** The standard that allows so much; undefined where it is the workshop's own rule. */
  readonly standard: string | undefined;
  readonly holds: boolean;
}

/** A certified diameter against the wire's size and what its standard allows, or what a workshop would. */
export function diameterCheck({ body }: WireRecord, diameterM: number): DiameterCheck {
  const { strengthTable, sizeM } = body;
  const known = strengthTable && diameterToleranceM({ table: strengthTable, diameterM: sizeM });
  const standard = known?.ok && strengthTable ? STRENGTH_TABLES[strengthTable].designation : undefined;
  const toleranceM = known?.ok ? known.value : workshopDiameterToleranceM(sizeM);
  const offM = diameterM - sizeM;
  return { offM, toleranceM, standard, holds: Math.abs(offM) <= toleranceM + ROUNDING_M };
}

export interface TensileCheck {
  readonly minimumPa: number;
  readonly standard: string;
  readonly holds: boolean;
}

/** A certified strength against the least that the wire's standard asks; undefined where none is named or it does not speak of this size. */
export function tensileCheck({ body }: WireRecord, tensilePa: number): TensileCheck | undefined {
  const { strengthTable: table, sizeM: diameterM } = body;
  if (table === undefined) return undefined;
  const asked = tensileStrength({ table, diameterM, reading: 'conservative' });
  if (!asked.ok) return undefined;
  const { minimumPa } = asked.value;
  return { minimumPa, standard: STRENGTH_TABLES[table].designation, holds: tensilePa >= minimumPa };
}

/** Far below any figure of a certificate. */
const ROUNDING_M = 1e-9;
