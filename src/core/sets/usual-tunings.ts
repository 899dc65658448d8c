import { STANDARD_REFERENCE_HZ } from '../units/index.js';
import type { Tuning } from './instrument.js';

const tuning = (name: string, midi: readonly number[]): Tuning & { readonly name: string } => ({
  name,
  pitches: midi.map((note) => ({ midi: note, cents: 0 })),
  referenceHz: STANDARD_REFERENCE_HZ,
});

/** Tunings that go without saying, treble first (common practice, no source). */
export const USUAL_TUNINGS: readonly (Tuning & { readonly name: string })[] = [
  tuning('standard six-string', [64, 59, 55, 50, 45, 40]),
  tuning('standard seven-string', [64, 59, 55, 50, 45, 40, 35]),
  tuning('standard eight-string', [64, 59, 55, 50, 45, 40, 35, 30]),
  // Courses from the treble, the thinner string of each first: two in unison, four an octave apart.
  tuning('standard twelve-string', [64, 64, 59, 59, 67, 55, 62, 50, 57, 45, 52, 40]),
  tuning('standard four-string bass', [43, 38, 33, 28]),
  tuning('standard five-string bass', [43, 38, 33, 28, 23]),
  tuning('standard baritone', [59, 54, 50, 45, 40, 35]),
];

/** The tuning that an instrument of so many strings usually has; undefined for a number that none usually has. */
export const usualTuning = (strings: number): Tuning | undefined =>
  USUAL_TUNINGS.find(({ pitches }) => pitches.length === strings);
