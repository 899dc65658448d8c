import { invariant } from '../foundation/index.js';
import type { StretchedString } from './stretched.js';

/**
 * How the ends hold a stiff string: free to hinge, held straight, or hinged at the saddle and held straight
 * by nut or fretting finger.
 */
export type StringEnds = 'pinned' | 'clamped' | 'pinned-saddle-clamped-nut';

/**
 * Partials 1..count in Hz: f_n = n f0 c(b) sqrt(1 + pi² b² n²), f0 the flexible string's pitch, with
 * c = 1 pinned, 1 + 2b + 4b² clamped, 1 + b + b² pinned saddle and clamped nut. Agrees with Fletcher 1964
 * and Beausoleil 2024 (eqs 4, 6, App. B) to second order in b.
 */
export function partialsHz(
  string: Pick<StretchedString, 'frequencyHz' | 'bendingParameter' | 'inharmonicityB'>,
  count: number,
  ends: StringEnds,
): readonly number[] {
  invariant(Number.isInteger(count) && count >= 1, 'a string has at least one partial');
  const raisedHz = string.frequencyHz * endFactor(ends, string.bendingParameter);
  return Array.from({ length: count }, (_, index) => {
    const n = index + 1;
    return n * raisedHz * Math.sqrt(1 + string.inharmonicityB * n * n);
  });
}

/** What clamped ends add for every partial alike: they take length from the part that swings. */
const endFactor = (ends: StringEnds, b: number): number => {
  if (ends === 'pinned') return 1;
  return ends === 'clamped' ? 1 + 2 * b + 4 * b * b : 1 + b + b * b;
};
