import { fail, type Result, succeed } from '../foundation/index.js';
import { type Estimate, estimate } from '../numeric/index.js';

/** Area of a hexagon over the square of its distance across flats. */
const HEXAGON_AREA = Math.sqrt(3) / 2;

/**
 * Mass of a metre of wire, kg/m: pi/4 d^2 rho round, sqrt(3)/2 s^2 rho hexagonal (s across flats).
 * Sizes in metres, density in kg/m3.
 */
export function wireUnitWeightKgPerM(wire: {
  readonly shape: 'round' | 'hex';
  readonly sizeM: number;
  readonly densityKgPerM3: number;
}): number {
  const area = wire.shape === 'hex' ? HEXAGON_AREA : Math.PI / 4;
  return area * wire.sizeM ** 2 * wire.densityKgPerM3;
}

/** Metres of wire in a kilogram: how wire is bought. */
export const metresPerKilogram = (unitWeightKgPerM: number): number => 1 / unitWeightKgPerM;

export interface SpoolContents {
  readonly netKg: number;
  readonly lengthM: number;
}

export interface SpoolFault {
  readonly code: 'spool.lighter-than-empty';
  readonly grossKg: number;
  readonly tareKg: number;
}

/** What is on a spool, from its weight full and empty and the wire's mass per metre. Fails where it weighs less than empty. */
export function spoolContents(spool: {
  readonly grossKg: number;
  readonly tareKg: number;
  readonly unitWeightKgPerM: number;
}): Result<SpoolContents, SpoolFault> {
  const netKg = spool.grossKg - spool.tareKg;
  if (netKg < 0) {
    return fail({ code: 'spool.lighter-than-empty', grossKg: spool.grossKg, tareKg: spool.tareKg });
  }
  return succeed({ netKg, lengthM: netKg / spool.unitWeightKgPerM });
}

/**
 * Mass per metre of a weighed cut length, kg/m: mu = m/L with (u_mu/mu)^2 = (u_m/m)^2 + (u_L/L)^2.
 * Source: JCGM 100:2008, 5.1.6.
 */
export function weighedUnitWeightKgPerM(cut: {
  readonly massKg: Estimate;
  readonly lengthM: Estimate;
}): Estimate {
  const { massKg, lengthM } = cut;
  const unitWeight = massKg.value / lengthM.value;
  return estimate(unitWeight, unitWeight * Math.hypot(massKg.u / massKg.value, lengthM.u / lengthM.value));
}
