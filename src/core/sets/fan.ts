import { invariant } from '../foundation/index.js';
import { semitoneRatio } from '../units/index.js';

export interface FanLengths {
  readonly trebleM: number;
  readonly bassM: number;
  readonly count: number;
  /** Distance of each string from the treble one across the fingerboard, where they are not evenly spaced. m. */
  readonly stringPlacesM?: readonly number[];
}

/**
 * Scale length of each string of a fan, treble first, m: L_k = L_treble + (L_bass - L_treble) x_k / x_last,
 * x the place across the fingerboard. Linear in place, so that frets are straight.
 */
export function fanScaleLengthsM({ trebleM, bassM, count, stringPlacesM }: FanLengths): number[] {
  invariant(Number.isInteger(count) && count > 0, 'a fan has a whole number of strings');
  const places = stringPlacesM ?? Array.from({ length: count }, (_, index) => index);
  invariant(places.length === count, 'each string of a fan has a place');
  const last = places.at(-1)!;
  return places.map((place) => (last === 0 ? trebleM : trebleM + ((bassM - trebleM) * place) / last));
}

/** Distance of a fret from the nut along its string, m: L (1 - 2^(-n/12)). */
export const fretDistanceM = (scaleLengthM: number, fret: number): number =>
  scaleLengthM * (1 - semitoneRatio(-fret));

/** Where nut, saddle and frets of each string lie along the neck. m; 0 is the straight fret, towards the saddle positive. */
export interface FanGeometry {
  readonly nutM: readonly number[];
  readonly saddleM: readonly number[];
  /** `fretsM[n - 1]` is fret n, one place a string, treble first. */
  readonly fretsM: readonly (readonly number[])[];
}

/**
 * Lines of a fan whose fret `straightFret` stands square to the neck (0 is the nut; it may lie between frets).
 * On a string of length L: nut at -L (1 - 2^(-p/12)), saddle at L 2^(-p/12), fret n at L (2^(-p/12) - 2^(-n/12)).
 */
export function fanGeometry(fan: {
  readonly scaleLengthsM: readonly number[];
  readonly straightFret: number;
  readonly frets: number;
}): FanGeometry {
  const { scaleLengthsM, straightFret, frets } = fan;
  const fromStraight = (lengthM: number, fret: number): number =>
    fretDistanceM(lengthM, fret) - fretDistanceM(lengthM, straightFret);
  return {
    nutM: scaleLengthsM.map((lengthM) => fromStraight(lengthM, 0)),
    saddleM: scaleLengthsM.map((lengthM) => lengthM * semitoneRatio(-straightFret)),
    fretsM: Array.from({ length: frets }, (_, index) =>
      scaleLengthsM.map((lengthM) => fromStraight(lengthM, index + 1)),
    ),
  };
}
