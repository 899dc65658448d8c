import { fail, type Result, succeed } from '../../foundation/index.js';
import { type StatsFault, tooFew } from '../stats-fault.js';

/** One reading of a study in which every person measures every part equally often. */
export interface StudyReading {
  readonly part: string;
  readonly person: string;
  readonly value: number;
}

/** Readings by part, person and trial. */
export interface CrossedStudy {
  readonly parts: readonly string[];
  readonly persons: readonly string[];
  readonly trials: number;
  /** cells[part][person] are that person's readings of that part. */
  readonly cells: readonly (readonly (readonly number[])[])[];
}

/** Sorts readings into cells; a fault where a cell is missing or of another size, or there are fewer than two of each. */
export function crossedStudy(readings: readonly StudyReading[]): Result<CrossedStudy, StatsFault> {
  const parts = [...new Set(readings.map(({ part }) => part))];
  const persons = [...new Set(readings.map(({ person }) => person))];
  const cells = parts.map((part) =>
    persons.map((person) =>
      readings.filter((each) => each.part === part && each.person === person).map(({ value }) => value),
    ),
  );
  const trials = cells[0]?.[0]?.length ?? 0;
  const least = Math.min(parts.length, persons.length, trials);
  if (least < 2) return fail(tooFew(least, 2));
  if (cells.flat().some((cell) => cell.length !== trials)) return fail({ code: 'stats.unequal-groups' });
  return succeed({ parts, persons, trials, cells });
}
