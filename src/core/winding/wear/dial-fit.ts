import { isotonicFit } from '../../numeric/index.js';
import type { DialRow } from '../machine.js';

export interface DialFit {
  /** Whether traverse rises or falls with the dial, by the weight of all rows. */
  readonly direction: 'rising' | 'falling';
  /** Dial settings, each once, with the traverse of the nearest table that keeps its direction. */
  readonly rows: readonly DialRow[];
  /** Each row as it was measured, and how far it stands off that table, m. */
  readonly residuals: readonly { readonly dial: number; readonly offM: number }[];
  /** Rows that go against the direction of the others: misread, or miscounted. */
  readonly against: readonly number[];
}

/**
 * The nearest dial table whose traverse keeps one direction (least squares, isotonic). Rows may come in any order and
 * a setting more than once. Undefined where there are fewer than two settings.
 */
export function dialFit(measured: readonly DialRow[]): DialFit | undefined {
  const settings = [...new Set(measured.map(({ dial }) => dial))].sort((a, b) => a - b);
  if (settings.length < 2) return undefined;
  const seen = settings.map((dial) => {
    const own = measured.filter((row) => row.dial === dial);
    return { mean: own.reduce((sum, row) => sum + row.traversePerTurnM, 0) / own.length, weight: own.length };
  });
  const fits = ([1, -1] as const).map((sign) => {
    const fitted = isotonicFit(
      seen.map(({ mean }) => sign * mean),
      seen.map(({ weight }) => weight),
    ).map((value) => sign * value);
    const misfit = seen.reduce((sum, { mean, weight }, at) => sum + weight * (mean - fitted[at]!) ** 2, 0);
    return { sign, fitted, misfit };
  });
  const [rising, falling] = fits as [(typeof fits)[0], (typeof fits)[0]];
  const { sign, fitted } = falling.misfit < rising.misfit ? falling : rising;
  const residuals = measured.map(({ dial, traversePerTurnM }) => ({
    dial,
    offM: traversePerTurnM - fitted[settings.indexOf(dial)]!,
  }));
  return {
    direction: sign === 1 ? 'rising' : 'falling',
    rows: settings.map((dial, at) => ({ dial, traversePerTurnM: fitted[at]! })),
    residuals,
    against: settings.filter((_, at) => Math.abs(seen[at]!.mean - fitted[at]!) > ROUNDING_M),
  };
}

/** Below a hundredth of a nanometre two means are one. */
const ROUNDING_M = 1e-11;
