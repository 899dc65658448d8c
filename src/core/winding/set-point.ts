import type { RecordedFigure } from './past-run.js';
import type { StrengthBound } from './strength-bound.js';

/**
 * A tension to set, N: what the shop's own record gives, or, since nobody has published any for guitar
 * strings, only the bound that strength decides, or not even that. Never a value from elsewhere.
 */
export type SetPoint =
  | {
      readonly kind: 'from-record';
      readonly value: number;
      readonly runs: number;
      /** Beside what the wire bears at least; left out where no strength is in print. */
      readonly bound?: StrengthBound;
      /** `value` as a share of the wire's least breaking load; above 1 the record contradicts the strength table. */
      readonly shareOfBreaking?: number;
    }
  | {
      readonly kind: 'no-record';
      readonly upper: number;
      readonly upperWhy: StrengthBound['basis'];
      readonly bound: StrengthBound;
    }
  | { readonly kind: 'unknown' };

/** The set-point that record and strength give together. */
export function setPoint(recorded: RecordedFigure | undefined, bound: StrengthBound | undefined): SetPoint {
  if (recorded) {
    return {
      kind: 'from-record',
      ...recorded,
      ...(bound && { bound, shareOfBreaking: recorded.value / (bound.strengthPa * bound.areaM2) }),
    };
  }
  if (bound) return { kind: 'no-record', upper: bound.upperN, upperWhy: bound.basis, bound };
  return { kind: 'unknown' };
}
