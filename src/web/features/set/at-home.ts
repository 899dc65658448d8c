import type { Shop } from '../../../core/day/index.js';
import { type StringSpec, type Tuning, usualTuning } from '../../../core/sets/index.js';
import { pitchName } from '../../../core/units/index.js';

/** Where a set is at home, as texts that the fields of the page take. */
export interface Home {
  readonly instrument: string;
  readonly scale: string;
  readonly tuning: string;
}

/**
 * An instrument and a tuning to show a set on before anyone has said: strings cut for long scales go on the
 * shop's first long instrument, in the lowest tuning that it knows for so many strings; others on its first
 * instrument of so many strings, tuned as usual.
 */
export function homeOf(specs: readonly StringSpec[], { instruments, tunings, rules }: Shop): Home {
  const count = specs.length;
  const isLong = specs.some(({ lengthM }) => lengthM > rules.standardLengthM);
  const fitting = instruments.filter(({ scaleLengthsM }) => scaleLengthsM.length === count);
  const instrument =
    fitting.find(({ scaleLengthsM }) => isLong === Math.max(...scaleLengthsM) > rules.standardScaleUpToM) ??
    fitting[0];
  const known = tunings.filter(({ tuning }) => tuning.pitches.length === count);
  const lowest = known.toSorted((a, b) => heightOf(a.tuning) - heightOf(b.tuning))[0];
  const named = isLong ? lowest : known[0];
  return {
    instrument: instrument?.name ?? '',
    scale: instrument ? '' : isLong ? '34 in' : '25.5 in',
    tuning: named?.name ?? notesOf(usualTuning(count)),
  };
}

const heightOf = ({ pitches }: Tuning): number => pitches.reduce((sum, { midi }) => sum + midi, 0);

/** Low to high, as a tuning is written. */
const notesOf = (tuning: Tuning | undefined): string =>
  tuning?.pitches.toReversed().map(pitchName).join(' ') ?? '';
