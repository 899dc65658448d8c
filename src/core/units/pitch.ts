/** A sounding pitch: MIDI note number (69 is A4), and how many cents it stands off it. */
export interface Pitch {
  readonly midi: number;
  readonly cents: number;
}
