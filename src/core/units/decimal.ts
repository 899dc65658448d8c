import { invariant } from '../foundation/index.js';

/** The sign that people read; a hyphen is not one, and breaks lines. */
export const MINUS = '\u2212';

/** A number with a fixed count of decimals, a true minus sign and no negative zero: '−3.20'. Never NaN. */
export function formatDecimal(value: number, digits: number): string {
  invariant(Number.isFinite(value), `a number to be shown is ${value}`);
  const text = Math.abs(value).toFixed(digits);
  return value < 0 && Number(text) !== 0 ? `${MINUS}${text}` : text;
}

/** Like `formatDecimal` with at most `digits` decimals, zeros at the end left off: '13.5', '10'. */
export function formatTrimmed(value: number, digits: number): string {
  const text = formatDecimal(value, digits);
  return text.includes('.') ? text.replace(/\.?0+$/, '') : text;
}
