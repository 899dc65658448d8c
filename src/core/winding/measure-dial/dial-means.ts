import { grouped } from '../../foundation/index.js';
import type { DialReading } from './dial-reading.js';

/** What the readings at one number of the dial say together. */
export interface DialMean {
  readonly dial: number;
  /** Of the readings that agree. */
  readonly value: number;
  /** Readings that count, those set aside left out. */
  readonly count: number;
  /** One standard deviation of `value`. */
  readonly u: number;
  /** Readings that stand apart from the others there: kept, not counted. */
  readonly asideIds: readonly string[];
  /** Whether the readings there agree, or there is but one: otherwise one more is wanted. */
  readonly isSettled: boolean;
}

/** Beyond so many standard deviations (one in a thousand) two readings do not agree. */
export const APART = 3.29;

/**
 * How far a hand sets the same number apart from one time to the next, as a share of what it gives, as long as the
 * readings do not tell: a round workshop figure, no source.
 */
const SETTING_SHARE = 0.002;
/** So many numbers read twice tell it better. */
const LEAST_PAIRS = 4;
/** Middle of the absolute value of a standard normal draw. */
const MIDDLE_OF_NORMAL = 0.6745;

/** Readings by number, ascending, averaged; `spreadShare` is that of a single reading. */
export function dialMeans(readings: readonly DialReading[]): {
  readonly means: readonly DialMean[];
  readonly spreadShare: number;
} {
  const counted = readings.filter(({ isStruck }) => !isStruck);
  const byDial = [...grouped(counted, ({ dial }) => String(dial)).values()].sort(
    ([one], [other]) => one!.dial - other!.dial,
  );
  const spreadShare = spreadOf(counted, byDial);
  return { spreadShare, means: byDial.map((own) => meanOf(own, spreadShare)) };
}

/** By the middle one of the pairs' differences, which one misread pair does not move; never below the instrument's. */
function spreadOf(counted: readonly DialReading[], byDial: readonly (readonly DialReading[])[]): number {
  const instrument = Math.sqrt(middleOf(counted.map(({ instrumentShare }) => instrumentShare ** 2)));
  const apart = byDial.flatMap(([one, other]) =>
    one && other ? [(2 * Math.abs(one.value - other.value)) / (one.value + other.value)] : [],
  );
  if (apart.length < LEAST_PAIRS) return Math.hypot(instrument, SETTING_SHARE);
  return Math.max(instrument, middleOf(apart) / MIDDLE_OF_NORMAL / Math.SQRT2);
}

function meanOf(own: readonly DialReading[], spreadShare: number): DialMean {
  const middle = middleOf(own.map(({ value }) => value));
  const farM = APART * Math.SQRT2 * spreadShare * middle;
  const near = own.length < 3 ? own : own.filter(({ value }) => Math.abs(value - middle) <= farM);
  const agreeing = near.length < 2 ? own : near;
  const values = agreeing.map(({ value }) => value);
  const value = values.reduce((sum, each) => sum + each, 0) / values.length;
  return {
    dial: own[0]!.dial,
    value,
    count: agreeing.length,
    u: (spreadShare * value) / Math.sqrt(agreeing.length),
    asideIds: own.filter((reading) => !agreeing.includes(reading)).map(({ id }) => id),
    isSettled: Math.max(...values) - Math.min(...values) <= farM,
  };
}

/** Of an even number, the mean of the two in the middle; 0 of none. */
export function middleOf(values: readonly number[]): number {
  const inOrder = [...values].sort((one, other) => one - other);
  const half = Math.floor(inOrder.length / 2);
  if (inOrder.length === 0) return 0;
  return inOrder.length % 2 === 1 ? inOrder[half]! : (inOrder[half - 1]! + inOrder[half]!) / 2;
}
