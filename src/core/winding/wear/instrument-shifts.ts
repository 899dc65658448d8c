import type { DatedString } from './first-string.js';
import { fitLevels, type LevelFit, levelCells } from './machine-levels.js';

/** That an instrument reads otherwise from one month on: as it does when it was dropped, or set anew. */
export interface InstrumentShift {
  readonly instrument: string;
  /** The first month of the other reading. */
  readonly month: number;
  /** How much more it reads since, m. */
  readonly byM: number;
}

/**
 * Machines month by month, whatever they were measured with, and the months from which instruments read otherwise. An
 * instrument reads as it always did unless a shift explains more than chance would; shifts are taken in one by one,
 * what explains most first (forward selection by F of one degree).
 */
export function machinesAndShifts(strings: readonly DatedString[]): {
  readonly fit: LevelFit;
  readonly shifts: readonly InstrumentShift[];
} {
  const cells = levelCells(strings);
  const months = [...new Set(cells.map(({ month }) => month))].sort((a, b) => a - b);
  const instruments = [...new Set(cells.map(({ instrument }) => instrument))];
  let breaks: readonly Break[] = [];
  let fit = fitLevels(cells, partsBy(breaks));
  while (breaks.length < MOST_SHIFTS) {
    const tried = instruments
      .flatMap((instrument) => months.slice(1).map((month): Break => ({ instrument, month })))
      .filter(
        (each) => !breaks.some((known) => known.instrument === each.instrument && known.month === each.month),
      )
      .map((each) => {
        const wider = [...breaks, each];
        return { breaks: wider, fit: fitLevels(cells, partsBy(wider)) };
      });
    const best = tried.toSorted((a, b) => a.fit.restSquares - b.fit.restSquares)[0];
    if (!best || (fit.restSquares - best.fit.restSquares) / best.fit.variance < PROVEN_F) break;
    ({ breaks, fit } = best);
  }
  return { fit, shifts: breaks.map((each) => shiftAt(each, breaks, fit)).sort((a, b) => a.month - b.month) };
}

interface Break {
  readonly instrument: string;
  readonly month: number;
}

/** Beyond what the best of some thirty tries reaches by chance once in a hundred times (3.6 standard deviations). */
const PROVEN_F = 13;
const MOST_SHIFTS = 6;

/** The name of an instrument between its shifts. */
const partsBy =
  (breaks: readonly Break[]) =>
  (instrument: string, month: number): string =>
    `${breaks.filter((each) => each.instrument === instrument && each.month <= month).length} ${instrument}`;

function shiftAt({ instrument, month }: Break, breaks: readonly Break[], fit: LevelFit): InstrumentShift {
  const nameAt = partsBy(breaks);
  const since = fit.instruments.get(nameAt(instrument, month)) ?? 0;
  const before = fit.instruments.get(nameAt(instrument, month - 1)) ?? 0;
  return { instrument, month, byM: since - before };
}
