import { fanGeometry } from './fan.js';

/** Where everything of a neck lies along it, as shares of its whole length from the lowest nut to the last saddle. */
export interface NeckLines {
  /** One a string, treble first. */
  readonly nut: readonly number[];
  readonly saddle: readonly number[];
  readonly frets: readonly (readonly number[])[];
  readonly isFan: boolean;
}

/** Fret that stands square on a fan: our own choice for the drawing, near the middle of the hand's reach. */
const STRAIGHT_FRET = 7;
const FRETS_DRAWN = 12;

/** The neck of an instrument with these lengths, treble first, m: what a picture of it needs, in shares of its whole length. */
export function neckLines(scaleLengthsM: readonly number[]): NeckLines {
  const { nutM, saddleM, fretsM } = fanGeometry({
    scaleLengthsM,
    straightFret: STRAIGHT_FRET,
    frets: FRETS_DRAWN,
  });
  const from = Math.min(...nutM);
  const whole = Math.max(...saddleM) - from;
  const shares = (placesM: readonly number[]) => placesM.map((placeM) => (placeM - from) / whole);
  return {
    nut: shares(nutM),
    saddle: shares(saddleM),
    frets: fretsM.map(shares),
    isFan: new Set(scaleLengthsM.map((lengthM) => lengthM.toFixed(5))).size > 1,
  };
}
