import { invariant } from '../foundation/index.js';
import { gaussNewton } from '../numeric/index.js';
import { type Action, type FrettedString, frettingErrorCents, type SetBack } from './fretting.js';

/** Where saddle and nut should stand, and how true the string then plays. */
export interface FittedSetBack extends SetBack {
  /** What is left at each fret asked for, cents. */
  readonly errorsCents: readonly number[];
  readonly rmsCents: number;
}

const FIRST_OCTAVE = Array.from({ length: 12 }, (_, index) => index + 1);

/**
 * Saddle and nut set-backs that leave the least squared error over the frets (1 to 12 unless told), by
 * Gauss-Newton on the exact equations of `frettingErrorCents` (Beausoleil 2024, Sec. III).
 */
export function setBacks(
  string: FrettedString,
  { action, frets = FIRST_OCTAVE }: { readonly action: Action; readonly frets?: readonly number[] },
): FittedSetBack {
  invariant(frets.length >= 2, 'two set-backs want at least two frets');
  const scaleM = string.speakingLengthM;
  // Unknowns as shares of the scale: the step of the solver's differences is then some micrometres.
  const setBackOf = (unknowns: readonly number[]): SetBack => ({
    saddleM: unknowns[0]! * scaleM,
    nutM: unknowns[1]! * scaleM,
  });
  const errorsAt = (setBack: SetBack): readonly number[] =>
    frets.map((fret) => frettingErrorCents(string, { fret, action, setBack }));
  const fit = gaussNewton({ residuals: (unknowns) => errorsAt(setBackOf(unknowns)), start: [0, 0] });
  const fitted = setBackOf(fit.parameters);
  const errorsCents = errorsAt(fitted);
  const squares = errorsCents.reduce((sum, error) => sum + error * error, 0);
  return { ...fitted, errorsCents, rmsCents: Math.sqrt(squares / frets.length) };
}
