import type { CoreWire } from '../string/index.js';

/** How the first strings of a run are measured before the rest is made. */
export interface FirstOff {
  readonly strings: number;
  /** Along the wound length (of a plain string, the whole), from the end. */
  readonly placesFromEndM: readonly number[];
  /** Turns of the string in the micrometer, at every place. Report least, most and mean. */
  readonly rotationsDeg: readonly number[];
  readonly why: 'hex-corners-and-flats' | 'round-ovality';
}

/**
 * Two strings (one from each position where two run at once), three places, two rotations. A hexagon repeats
 * every 60 degrees, so 0 and 30 show its corners and its flats: their spread is the core's shape, no fault.
 * Round wire is read twice at right angles for ovality. Common practice, no source.
 */
export function firstOffPlan(string: {
  readonly coreShape: CoreWire['shape'];
  readonly fromM: number;
  readonly lengthM: number;
  readonly measureFromEndsM: number;
}): FirstOff {
  const insetM = Math.min(string.measureFromEndsM, string.lengthM / 4);
  const hex = string.coreShape === 'hex';
  return {
    strings: 2,
    placesFromEndM: [insetM, string.lengthM / 2, string.lengthM - insetM].map(
      (placeM) => string.fromM + placeM,
    ),
    rotationsDeg: hex ? [0, 30] : [0, 90],
    why: hex ? 'hex-corners-and-flats' : 'round-ovality',
  };
}
