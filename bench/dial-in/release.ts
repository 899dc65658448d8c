import { COURSE_STRINGS, type Course } from './published-course.js';

/** When a run under a published rule is let go: none of the rules says, so the best way is looked for. */
export interface Release {
  /** Not before so many strings ... */
  readonly least: number;
  /** ... nor before so many readings in a row lay within a share of the tolerance. */
  readonly inARow: number;
  readonly within: number;
  /** Whether the knob is moved for the last string too. */
  readonly moveLast: boolean;
}

export const RELEASES: readonly Release[] = [1, 2, 3, 4, 5, 6, 8, 10, 12].flatMap((least) =>
  [1, 2, 3].flatMap((inARow) =>
    [0.1, 0.15, 0.2, 0.25, 0.3, 0.35, 0.4, 0.5, 0.6, 0.75, 1, 1e9].flatMap((within) =>
      (inARow > 1 && within > 1) || inARow > least
        ? []
        : [true, false].map((moveLast) => ({ least, inARow, within, moveLast })),
    ),
  ),
);

/** String after which a course is let go, counted from 1. */
export function releasedAfter({ seen }: Course, { least, inARow, within }: Release): number {
  let row = 0;
  for (let t = 1; t <= COURSE_STRINGS; t++) {
    row = Math.abs(seen[t - 1]!) <= within ? row + 1 : 0;
    if (t >= least && row >= inARow) return t;
  }
  return COURSE_STRINGS;
}

export const goodShareOf = (course: Course, release: Release, strings: number): number =>
  (release.moveLast ? course.goodAfter : course.goodBefore)[strings - 1]!;
