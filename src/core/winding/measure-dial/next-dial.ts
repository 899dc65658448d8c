import { type DialMean, dialMeans } from './dial-means.js';
import type { DialReading, DialValue } from './dial-reading.js';
import { type MeasuredTable, measuredTable } from './measured-table.js';
import { tableDrift } from './table-drift.js';

/** What is to be read next. */
export type NextDial =
  | {
      readonly kind: 'read';
      readonly dial: number;
      /** Where to turn back to first, so that the number is come up to from below; left out on the way up already. */
      readonly backBelow?: number;
      readonly why: 'first' | 'again' | 'apart' | 'against' | 'unlike-before';
      readonly done: number;
      /** Readings that are foreseen by now. */
      readonly foreseen: number;
    }
  | { readonly kind: 'done' };

/** Every number is read so often, in passes upwards. */
const PASSES = 2;
/** A number whose readings do not agree by then is left as it is, and said to be unsettled. */
const MOST_AT_ONE = 5;

/**
 * The dial is gone through from its lowest number to its highest, twice, so that play is always taken up from the same
 * side (common practice, no source); then numbers are asked for once more whose readings do not agree, that go against
 * the others, or that have moved otherwise than the others since the table in force.
 */
export function nextDial(round: {
  readonly dials: readonly number[];
  readonly readings: readonly DialReading[];
  readonly inForce: readonly DialValue[];
  /** How far to turn back, in numbers of the dial. */
  readonly runUp: number;
}): NextDial {
  const { dials, runUp } = round;
  const counted = round.readings.filter(({ isStruck }) => !isStruck);
  const countAt = (dial: number) => counted.filter((reading) => reading.dial === dial).length;
  const inOrder = [...dials].sort((one, other) => one - other);
  const fewest = Math.min(...inOrder.map(countAt));
  const wanted = inOrder.flatMap((dial): readonly Wanted[] => {
    if (fewest < PASSES)
      return countAt(dial) === fewest ? [{ dial, why: fewest === 0 ? 'first' : 'again' }] : [];
    const why = countAt(dial) < MOST_AT_ONE ? doubtAt(dial, counted, round.inForce) : undefined;
    return why ? [{ dial, why }] : [];
  });
  const last = round.readings.at(-1)?.dial ?? Number.POSITIVE_INFINITY;
  const next = wanted.find(({ dial }) => dial > last) ?? wanted[0];
  if (!next) return { kind: 'done' };
  const left =
    fewest < PASSES
      ? inOrder.reduce((sum, dial) => sum + Math.max(0, PASSES - countAt(dial)), 0)
      : wanted.length;
  return {
    kind: 'read',
    ...next,
    ...(next.dial > last ? {} : { backBelow: next.dial - runUp }),
    done: counted.length,
    foreseen: counted.length + left,
  };
}

interface Wanted {
  readonly dial: number;
  readonly why: Extract<NextDial, { kind: 'read' }>['why'];
}

/** Why one number should be read once more, if it should. */
function doubtAt(
  dial: number,
  readings: readonly DialReading[],
  inForce: readonly DialValue[],
): Wanted['why'] | undefined {
  const mean = dialMeans(readings).means.find((each) => each.dial === dial);
  if (mean && !mean.isSettled) return 'apart';
  // What was asked for once more because of its neighbours is believed then.
  if (!mean || readCount(mean) > PASSES) return undefined;
  const table = measuredTable(readings);
  if (!table) return undefined;
  if (table.against.includes(dial)) return 'against';
  return hasMovedAlone(dial, table, inForce) ? 'unlike-before' : undefined;
}

const readCount = ({ count, asideIds }: DialMean): number => count + asideIds.length;

/** Whether a number has moved since the table in force, and otherwise than the others together. */
function hasMovedAlone(dial: number, table: MeasuredTable, inForce: readonly DialValue[]): boolean {
  const drift = tableDrift(table, inForce);
  const row = drift?.rows.find((each) => each.dial === dial);
  return row?.isProven === true && Math.abs(row.share - drift!.share) > MOVED_ALONE * row.u;
}

const MOVED_ALONE = 3.29;
