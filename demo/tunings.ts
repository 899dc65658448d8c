import type { NamedTuning } from '../src/core/orders/index.js';
import { STANDARD_REFERENCE_HZ } from '../src/core/units/index.js';

/** MIDI numbers, treble first. */
const TUNINGS: readonly (readonly [name: string, ...midi: number[]])[] = [
  ['standard six', 64, 59, 55, 50, 45, 40],
  ['half step down', 63, 58, 54, 49, 44, 39],
  ['drop D', 64, 59, 55, 50, 45, 38],
  ['open D', 62, 57, 54, 50, 45, 38],
  ['open G', 62, 59, 55, 50, 43, 38],
  ['D A D G A D', 62, 57, 55, 50, 45, 38],
  ['standard seven', 64, 59, 55, 50, 45, 40, 35],
  ['standard eight', 64, 59, 55, 50, 45, 40, 35, 30],
  ['baritone B', 59, 54, 50, 45, 40, 35],
  ['open B baritone', 59, 54, 51, 47, 42, 35],
  ['standard bass four', 43, 38, 33, 28],
];

/** Tunings that orders may call by name: common practice, no source. */
export const demoTunings = (): readonly NamedTuning[] =>
  TUNINGS.map(([name, ...midi]) => ({
    name,
    tuning: {
      name,
      pitches: midi.map((number) => ({ midi: number, cents: 0 })),
      referenceHz: STANDARD_REFERENCE_HZ,
    },
  }));
