import type { QueuedEntry } from './entry.js';
import { expectedVersionOf, subjectOf } from './records-touched.js';

/** Which versions records have by what was sent from here. */
export interface VersionsReached {
  /** After the shop did an entry. */
  readonly note: (entry: QueuedEntry) => void;
  /** At least this version has the record that an input changes; undefined where nothing was sent about it. */
  readonly of: (input: object) => number | undefined;
}

/**
 * Remembers versions from the answer until long after the entry is let go of. A hand may be quicker than the screen: what it enters
 * names the version that it saw, while the next one is being drawn.
 */
export function versionsReached(): VersionsReached {
  const reached = new Map<string, number>();
  return {
    note: ({ input }) => {
      const subject = subjectOf(input);
      const expected = expectedVersionOf(input);
      if (subject !== undefined && expected !== undefined)
        reached.set(subject, Math.max(expected + 1, reached.get(subject) ?? 0));
    },
    of: (input) => reached.get(subjectOf(input) ?? ''),
  };
}
