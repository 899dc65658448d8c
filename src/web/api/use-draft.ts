import { useState } from 'react';

interface Versioned {
  readonly id: string;
  readonly version: number;
}

export interface Drafting<Rec extends Versioned, Draft> {
  readonly draft: Draft;
  readonly change: (change: Partial<Draft>) => void;
  /** Whether it says something else than the record that it was begun from. */
  readonly isChanged: boolean;
  /** The record that it was begun from; undefined for a new one. */
  readonly base: Rec | undefined;
  /** The record as somebody else has left it since, while this draft says something else than either. */
  readonly newer: Rec | undefined;
  /** Goes on from a record: its own words, or a draft of one's own over it. */
  readonly begin: (record: Rec | undefined, draft?: Draft) => void;
}

/**
 * A record while somebody changes it. As long as nothing was changed the draft follows the record; afterwards it keeps
 * what was typed, and tells when the record has moved on beneath it.
 */
export function useDraft<Rec extends Versioned, Draft extends object>(
  record: Rec | undefined,
  draftOf: (record: Rec | undefined) => Draft,
): Drafting<Rec, Draft> {
  const [held, setHeld] = useState(() => ({ base: record, draft: draftOf(record) }));
  const { base, draft } = held;
  const says = (one: Rec | undefined): boolean => JSON.stringify(draftOf(one)) === JSON.stringify(draft);
  const isChanged = !says(base);
  const hasMoved = record !== undefined && (base === undefined || record.version > base.version);
  // While nothing of one's own would be lost, or where the record now says the same, the draft goes along.
  if (hasMoved && (!isChanged || says(record))) setHeld({ base: record, draft: draftOf(record) });
  return {
    draft,
    change: (change) => setHeld((before) => ({ ...before, draft: { ...before.draft, ...change } })),
    isChanged,
    base,
    newer: hasMoved && isChanged && !says(record) ? record : undefined,
    begin: (from, wanted) => setHeld({ base: from, draft: wanted ?? draftOf(from) }),
  };
}
