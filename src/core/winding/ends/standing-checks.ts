import type { EndCheck } from './end-check.js';
import type { EndPull } from './end-pull.js';

/** A check as it was written down: one may take the place of an earlier one, and one without readings takes it back. */
export interface WrittenCheck extends EndCheck {
  readonly id: string;
  readonly insteadOf: string | null;
  readonly leastBreakingN: number | null;
}

/** What still stands of what was written down: nothing is erased, the later word counts. */
export function standingChecks<Row extends WrittenCheck>(rows: readonly Row[]): readonly Row[] {
  const replaced = new Set(rows.map(({ insteadOf }) => insteadOf));
  return rows.filter((row) => !replaced.has(row.id) && hasReading(row));
}

/** The pull tests among them, in the same order; those of wire of unknown strength are left out. */
export const pullsOf = (rows: readonly WrittenCheck[]): readonly EndPull[] =>
  standingChecks(rows).flatMap(({ pull, leastBreakingN }) =>
    pull && leastBreakingN !== null ? { ...pull, leastBreakingN } : [],
  );

const hasReading = ({ lengthM, twists, tailM, seat, pull }: EndCheck): boolean =>
  [lengthM, twists, tailM, seat, pull].some((each) => each !== undefined);
