import { invariant } from '../foundation/index.js';

/** A weight of wire as the ledger keeps it: whole milligrams, to the nearest, a half up. */
export const mgFromKg = (kg: number): number => Math.round(finite(kg) * 1e6);

/** The weight that the ledger's milligrams stand for, kg. */
export const kgFromMg = (mg: number): number => mg / 1e6;

/** Length that the ledger's millimetres stand for, m. */
export const mFromMm = (mm: number): number => mm / 1e3;

/**
 * The length of so much wire as the ledger keeps it: whole millimetres, to the nearest, a half up.
 * mm = mg / (1000 x unit weight in kg/m).
 */
export function mmFromMg(mg: number, unitWeightKgPerM: number): number {
  invariant(unitWeightKgPerM > 0, `a wire weighs more than nothing a metre, not ${unitWeightKgPerM}`);
  return Math.round(finite(mg) / (1000 * unitWeightKgPerM));
}

/** What the ledger has of one spool's wire. */
export interface SpoolBook {
  readonly spoolId: string;
  readonly wireId: string;
  readonly unitWeightKgPerM: number;
  readonly mg: number;
  readonly mm: number;
}

/**
 * The length that leaves a spool with so much of its weight, whole millimetres: what share of the weight
 * leaves, that share of the length leaves, rounded against what stays. So a spool used up by weight is used
 * up by length too, and its length is never below zero while its weight is not, though every movement rounds
 * and though the wire's unit weight may have been amended since the spool came in. Where more leaves than is
 * there, which the ledger will refuse, the unit weight tells.
 */
export const lengthLeaving = ({ mg: onBook, mm, unitWeightKgPerM }: SpoolBook, mg: number): number =>
  mg > onBook ? mmFromMg(mg, unitWeightKgPerM) : mm - Math.round(mm * ((onBook - mg) / onBook));

function finite(quantity: number): number {
  invariant(Number.isFinite(quantity), `a quantity of wire is a number, not ${quantity}`);
  return quantity;
}
