import type { CalendarDate, Chance } from '../../src/core/foundation/index.js';
import type { LargeMicrometer } from './causes.js';
import { normal } from './normal.js';
import type { StringTruth } from './string-truth.js';

/** The shop's micrometers, and the one that mostly lies at each machine. */
export const MICROMETERS = ['micrometer 1', 'micrometer 2', 'micrometer 3'] as const;
export const SCALE = 'string scale';

const USUAL_MICROMETER: Readonly<Record<string, (typeof MICROMETERS)[number]>> = {
  wren: 'micrometer 1',
  'twin-finch': 'micrometer 2',
  'old-heron': 'micrometer 3',
  'two-herons': 'micrometer 3',
  bench: 'micrometer 1',
};

/** One time in four somebody has carried it off, and another is taken. */
export const micrometerAt = (machine: string, chance: Chance): string =>
  chance.next() < 0.25 ? chance.pick(MICROMETERS) : (USUAL_MICROMETER[machine] ?? MICROMETERS[0]);

export interface PlaceOnString {
  /** 0, 1, 2: near the end, in the middle, near the tail. */
  readonly place: number;
  readonly rotationDeg: number;
}

/** Where strings are measured: three places, each at two rotations a quarter turn apart. */
export const MEASURED_AT: readonly PlaceOnString[] = [0, 1, 2].flatMap((place) =>
  [0, 90].map((rotationDeg) => ({ place, rotationDeg })),
);

/** How far from the end a place lies, m. */
export const placeM = (place: number, lengthM: number): number =>
  Math.round(lengthM * (0.2 + 0.3 * place) * 1000) / 1000;

/** Standard deviation of one reading of the same place, and the last digit that a micrometer shows. Invented. */
const REPEAT_M = 0.8e-6;
const DIGIT_M = 1e-6;

export interface Micrometer {
  readonly instrument: string;
  readonly date: CalendarDate;
}

/** What a micrometer shows, m: to whole micrometres, with its error on that day. */
export function diameterReadingM(
  string: StringTruth,
  { place, rotationDeg }: PlaceOnString,
  by: Micrometer & { readonly large: LargeMicrometer; readonly chance: Chance },
): number {
  const { instrument, date, large, chance } = by;
  const ovalM = string.ovalM * Math.cos((Math.PI / 90) * (rotationDeg - string.widestDeg));
  const errorM = instrument === large.instrument && date >= large.from ? large.readsLargeM : 0;
  return toDigit(string.atPlaceM(place) + ovalM + errorM + normal(chance, REPEAT_M), DIGIT_M);
}

/** What the scale shows, kg: to whole milligrams. */
export const massReadingKg = ({ massKg }: StringTruth, chance: Chance): number =>
  toDigit(massKg + normal(chance, 1.5e-6), 1e-6);

/** A decimal, as it is written: 0.000254 and not 0.00025400000000000005. */
const toDigit = (value: number, digit: number): number =>
  Number((Math.round(value / digit) * digit).toFixed(9));
