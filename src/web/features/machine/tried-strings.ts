import { type FirstOff, looksOf, type TriedString } from '../../../core/winding/index.js';
import type { Trial } from './run-count.js';
import { cellsOf, readingIn } from './trial-readings.js';
import type { RunReading } from './use-run-book.js';

/**
 * Trial strings as the dial-in takes them. The last string of a position counts once all its diameters are measured;
 * earlier ones with what there is of them. `toMeasure`: positions, from 0, whose last string is not measured yet; one that
 * was thrown away need not be.
 */
export function triedStrings(
  trials: readonly Trial[],
  readings: readonly RunReading[],
  firstOff: Pick<FirstOff, 'placesFromEndM' | 'rotationsDeg'>,
): { readonly strings: readonly TriedString[]; readonly toMeasure: ReadonlySet<number> } {
  const toMeasure = new Set<number>();
  const strings = trials.map((trial): TriedString => {
    const position = trial.position - 1;
    const own = readings.filter(({ trialStringId }) => trialStringId === trial.id);
    const isLast = trials.findLast((each) => each.position === trial.position) === trial;
    const isWhole = cellsOf(firstOff).every(
      (cell) => cell.quantity !== 'diameter' || readingIn(cell, own) !== undefined,
    );
    if (isLast && !isWhole && trial.verdict !== 'scrap') toMeasure.add(position);
    return {
      position,
      ...(trial.setting === undefined ? {} : { setting: trial.setting }),
      ...(trial.setBy === undefined ? {} : { setBy: trial.setBy }),
      looksM: isLast && !isWhole ? [] : looksOf(own.flatMap(diameterOf)),
    };
  });
  return { strings, toMeasure };
}

const diameterOf = ({ quantity, value, placeM, rotationDeg }: RunReading) =>
  quantity === 'diameter' && typeof placeM === 'number'
    ? [{ valueM: value, placeM, rotationDeg: rotationDeg ?? 0 }]
    : [];
