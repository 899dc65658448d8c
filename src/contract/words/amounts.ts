import {
  formatDecimal,
  formatMillimetres,
  formatThou,
  formatTrimmed,
  inchesFromMetres,
} from '../../core/units/index.js';

/** `8.1 thou (0.206 mm)`: small sizes in both units, the trade's first. */
export const sizeInBoth = (lengthM: number): string =>
  `${formatThou(lengthM, 1)} thou (${formatMillimetres(lengthM)} mm)`;

/** `1120 mm (44.1 in)`: lengths of string and wire. */
export const lengthInBoth = (lengthM: number): string =>
  `${formatMillimetres(lengthM, 0)} mm (${formatDecimal(inchesFromMetres(lengthM), 1)} in)`;

/** `11.3 mm/s (0.44 in/s)`. */
export const speedInBoth = (speedMPerS: number): string =>
  `${formatMillimetres(speedMPerS, 1)} mm/s (${formatDecimal(inchesFromMetres(speedMPerS), 2)} in/s)`;

/** `4.12 m`. */
export const metres = (lengthM: number): string => `${formatDecimal(lengthM, 2)} m`;

/** `0.482 kg`, or grams below a tenth of a kilogram: `35.2 g`. */
export const weight = (kg: number): string =>
  kg < 0.1 ? `${formatTrimmed(kg * 1000, 2)} g` : `${formatDecimal(kg, 3)} kg`;

/** `1 order`, `2 orders`. */
export const counted = (count: number, thing: string): string => `${count} ${thing}${count === 1 ? '' : 's'}`;
