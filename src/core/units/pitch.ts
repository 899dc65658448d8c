/** A sounding pitch: MIDI note number (69 is A4), and how many cents it stands off it. */
export interface Pitch {
  readonly midi: number;
  readonly cents: number;
}

/** Frequency of A4, Hz (ISO 16:1975). */
export const STANDARD_REFERENCE_HZ = 440;

const MIDI_OF_A4 = 69;

/** Frequency ratio of an interval of `semitones` in twelve-tone equal temperament: 2^(n/12). */
export const semitoneRatio = (semitones: number): number => 2 ** (semitones / 12);

/**
 * Frequency, Hz, of a pitch in twelve-tone equal temperament: f = f_A4 * 2^((midi - 69 + cents/100)/12).
 * `referenceHz` is the frequency of A4.
 */
export const frequencyHz = (pitch: Pitch, referenceHz = STANDARD_REFERENCE_HZ): number =>
  referenceHz * semitoneRatio(pitch.midi - MIDI_OF_A4 + pitch.cents / 100);

/** Interval from one frequency to another, cents; positive where `toHz` is the higher: 1200 * log2(to/from). */
export const centsBetween = (fromHz: number, toHz: number): number => 1200 * Math.log2(toHz / fromHz);

/** The note nearest to a frequency, with the cents that it stands off, -50 to 50. */
export function nearestPitch(soundHz: number, referenceHz = STANDARD_REFERENCE_HZ): Pitch {
  const semitones = MIDI_OF_A4 + centsBetween(referenceHz, soundHz) / 100;
  // Adding zero turns the -0 that rounding may give into 0.
  const midi = Math.round(semitones) + 0;
  return { midi, cents: (semitones - midi) * 100 };
}
