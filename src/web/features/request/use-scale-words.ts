import type { Instrument } from '../../../core/sets/index.js';
import { useFigures } from '../../sight/figures.js';

/** The scale of an instrument in words: one length, or a fan's shortest and longest. */
export function useScaleWords(): (instrument: Instrument) => string {
  const { length } = useFigures();
  return ({ scaleLengthsM }) => {
    const ends = [length(Math.min(...scaleLengthsM)), length(Math.max(...scaleLengthsM))];
    return [...new Set(ends)].join('–');
  };
}
