import { grouped } from '../foundation/index.js';

/** One reading of a string, as micrometer, scale or rule gave it. */
export interface ReadingOfString {
  /** None for a string from the running work: such strings are told apart by the moment of writing down. */
  readonly trialStringId: string | null;
  readonly quantity: 'diameter' | 'mass' | 'length';
  /** m or kg. */
  readonly value: number;
  readonly placeM: number | null;
  readonly rotationDeg: number | null;
  readonly instrument: string;
  readonly at: string;
}

/** What was measured of strings of one run by one instrument, taken together. Squares are about the mean. */
export interface StringSums {
  readonly instrument: string;
  /** Whether it is the run's first string, wound before anybody could turn what the sheet says. */
  readonly isFirst: boolean;
  /** Whether no rotation was told of its diameters: then they are the largest, found by turning. */
  readonly isLargest: boolean;
  /** Of how many strings a diameter was read. */
  readonly strings: number;
  /** Mean diameter of those strings, m; 0 where there are none. */
  readonly meanM: number;
  readonly squaresM2: number;
  /** Squares of places about their string's mean, over all strings, and degrees of freedom: places less one a string. */
  readonly alongSquaresM2: number;
  readonly alongDegrees: number;
  /** Whole strings that were weighed, and their mean, kg; 0 where there are none. */
  readonly weighed: number;
  readonly meanKg: number;
  readonly squaresKg2: number;
  /** Readings of any kind. */
  readonly readings: number;
  readonly firstAt: string;
  readonly lastAt: string;
}

/**
 * Takes the readings of one run together, in the order in which they were written down. A string's diameter is the mean
 * over its places, of readings whose rotation was told where there are such. The first string is trial string number 1;
 * where a run has no trial strings, whichever was measured first. A weight of a cut piece counts for nothing here.
 */
export function stringSums(
  readings: readonly ReadingOfString[],
  trialNumbers: ReadonlyMap<string, number>,
): readonly StringSums[] {
  const parts = grouped(
    stringsRead(readings, trialNumbers),
    (string) => `${partOf(string)} ${string.instrument}`,
  );
  return [...parts.keys()].sort().map((part) => summed(parts.get(part)!));
}

/** The strings of a run one by one, as they were read. */
export function stringsRead(
  readings: readonly ReadingOfString[],
  trialNumbers: ReadonlyMap<string, number>,
): readonly StringRead[] {
  const strings = [...grouped(readings, ({ trialStringId, at }) => trialStringId ?? at).values()];
  const hasTrials = readings.some(({ trialStringId }) => trialStringId !== null);
  return strings.map((own, at) =>
    stringRead(own, hasTrials ? trialNumbers.get(own[0]!.trialStringId ?? '') === 1 : at === 0),
  );
}

export interface StringRead {
  readonly instrument: string;
  readonly isFirst: boolean;
  readonly isLargest: boolean;
  /** Mean reading at each place, m. */
  readonly placesM: readonly number[];
  /** Of a whole string. */
  readonly massKg: number | undefined;
  readonly own: readonly ReadingOfString[];
}

const partOf = ({ isFirst, isLargest }: StringRead): string => `${Number(isFirst)}${Number(isLargest)}`;

function stringRead(own: readonly ReadingOfString[], isFirst: boolean): StringRead {
  const diameters = own.filter(({ quantity }) => quantity === 'diameter');
  const turned = diameters.filter(({ rotationDeg }) => rotationDeg !== null);
  const used = turned.length > 0 ? turned : diameters;
  const places = grouped(used, ({ placeM }) => String(placeM));
  const isCut = own.some(({ quantity }) => quantity === 'length');
  const masses = own.filter(({ quantity }) => quantity === 'mass').map(({ value }) => value);
  return {
    instrument: (used[0] ?? own[0]!).instrument,
    isFirst,
    isLargest: diameters.length > 0 && turned.length === 0,
    placesM: [...places.values()].map((at) => mean(at.map(({ value }) => value))),
    massKg: isCut || masses.length === 0 ? undefined : mean(masses),
    own,
  };
}

function summed(strings: readonly StringRead[]): StringSums {
  const { instrument, isFirst, isLargest } = strings[0]!;
  const along = strings.map(({ placesM }) => placesM).filter(({ length }) => length > 0);
  const diameters = along.map(mean);
  const masses = strings.flatMap(({ massKg }) => massKg ?? []);
  const moments = strings.flatMap(({ own }) => own.map(({ at }) => at)).sort();
  return {
    instrument,
    isFirst,
    isLargest,
    strings: diameters.length,
    meanM: mean(diameters),
    squaresM2: squares(diameters),
    alongSquaresM2: along.reduce((sum, places) => sum + squares(places), 0),
    alongDegrees: along.reduce((sum, { length }) => sum + length - 1, 0),
    weighed: masses.length,
    meanKg: mean(masses),
    squaresKg2: squares(masses),
    readings: moments.length,
    firstAt: moments[0]!,
    lastAt: moments.at(-1)!,
  };
}

const mean = (values: readonly number[]): number =>
  values.length === 0 ? 0 : values.reduce((sum, value) => sum + value, 0) / values.length;

function squares(values: readonly number[]): number {
  const middle = mean(values);
  return values.reduce((sum, value) => sum + (value - middle) ** 2, 0);
}
