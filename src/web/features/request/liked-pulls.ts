import type { LikedSet } from '../../../core/sets/index.js';
import { tensionN } from '../../../core/string/index.js';
import { frequencyHz } from '../../../core/units/index.js';

/** Pull of each string of a liked set where it is liked, treble first. */
export const likedPullsN = ({ instrument, tuning, strings }: LikedSet): readonly (number | undefined)[] =>
  strings.map(({ linearDensityKgPerM }, at) => {
    const lengthM = instrument.scaleLengthsM[at];
    const pitch = tuning.pitches[at];
    if (lengthM === undefined || pitch === undefined) return undefined;
    return tensionN(linearDensityKgPerM, lengthM, frequencyHz(pitch, tuning.referenceHz));
  });
