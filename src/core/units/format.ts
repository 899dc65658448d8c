import { invariant } from '../foundation/index.js';
import { formatDecimal, formatTrimmed } from './decimal.js';
import { kilogramsForceFromNewtons, poundsForceFromNewtons } from './force.js';
import { millimetresFromMetres, thouFromMetres } from './length.js';

export type ForceUnit = 'N' | 'lbf' | 'kgf';

/** A gauge as the trade writes it: '10', '13.5'; at most two decimals, so that half and quarter thous stay. */
export const formatGauge = (gaugeThou: number): string => formatTrimmed(gaugeThou, 2);

/** A length in metres shown in thousandths of an inch, without the unit: '10.05'. */
export const formatThou = (lengthM: number, digits = 2): string =>
  formatDecimal(thouFromMetres(lengthM), digits);

/** A length in metres shown in millimetres, without the unit: '0.254'. */
export const formatMillimetres = (lengthM: number, digits = 3): string =>
  formatDecimal(millimetresFromMetres(lengthM), digits);

/** A force in newtons shown in `unit`, with the unit: '72.1 N', '16.21 lbf', '7.35 kgf'. */
export function formatForce(forceN: number, unit: ForceUnit): string {
  if (unit === 'lbf') return `${formatDecimal(poundsForceFromNewtons(forceN), 2)} lbf`;
  if (unit === 'kgf') return `${formatDecimal(kilogramsForceFromNewtons(forceN), 2)} kgf`;
  return `${formatDecimal(forceN, 1)} N`;
}

/** Mass per length in kg/m shown in grams a metre to four figures, with the unit: '0.3978 g/m'. */
export function formatUnitWeight(linearDensityKgPerM: number): string {
  invariant(linearDensityKgPerM >= 0, `a unit weight to be shown is ${linearDensityKgPerM}`);
  const gramsPerM = linearDensityKgPerM * 1000;
  if (gramsPerM === 0) return '0 g/m';
  const figuresBeforePoint = Math.floor(Math.log10(gramsPerM)) + 1;
  return `${formatDecimal(gramsPerM, Math.min(8, Math.max(0, 4 - figuresBeforePoint)))} g/m`;
}

/** A share shown in per cent, with the sign: 0.523 is '52 %'. */
export const formatFraction = (share: number, digits = 0): string =>
  `${formatDecimal(share * 100, digits)} %`;

/** Minutes after midnight on the 24-hour clock: 485 is '08:05'; 1440 is '24:00', the end of the day. */
export function formatClock(minute: number): string {
  const whole = Math.round(minute);
  invariant(whole >= 0 && whole <= 1440, `a time of day to be shown is ${minute} min`);
  return `${twoFigures(Math.floor(whole / 60))}:${twoFigures(whole % 60)}`;
}

const twoFigures = (value: number): string => String(value).padStart(2, '0');
