/** Wire that stretches along beyond nut and saddle where an instrument does not say: our own default, no source. */
const BEYOND_NUT_AND_SADDLE_M = 0.2;

/** One place of a set: where its string sounds, and what is wished of it. Treble first. */
export interface SetPosition {
  readonly speakingLengthM: number;
  readonly frequencyHz: number;
  /** Wire that stretches when the string is bent, post to anchor. */
  readonly stretchingLengthM: number;
  readonly targetTensionN: number;
  /** Force wished for bending a whole tone at the 12th fret; left out where none is known. */
  readonly targetBendForceN?: number;
  /** How much this position counts; 1 is as much as any other. */
  readonly weight: number;
  /** Wished ln T of this string less ln T of the next; that of the targets where left out. */
  readonly stepToNext?: number;
  readonly kind?: 'plain' | 'wound';
  /** Only these candidates may stand here, by id. The shop's rules on plain and wound do not bind what is pinned. */
  readonly pinned?: readonly string[];
}

/** Stretching length of a string of this instrument that gives none. m. */
export const usualStretchingLengthM = (speakingLengthM: number): number =>
  speakingLengthM + BEYOND_NUT_AND_SADDLE_M;
