import type { Pitch } from '../units/index.js';

/**
 * What the strings are stretched on. Positions count from the player's thinnest side: position 1 is the
 * treble string. A twelve-string has twelve positions, each course giving its thinner string first.
 */
export interface Instrument {
  readonly name: string;
  /** Sounding length nut to saddle of each position, treble first. A fan has one length a string. */
  readonly scaleLengthsM: readonly number[];
  /** Wire that stretches along when a string slides at nut and saddle: post to anchor. Defaults to scale + 0.2 m. */
  readonly stretchingLengthsM?: readonly number[];
}

/** The open strings, treble first like the instrument's positions. */
export interface Tuning {
  readonly name?: string;
  readonly pitches: readonly Pitch[];
  /** Frequency of A4; 440 Hz by ISO 16. */
  readonly referenceHz: number;
}
