import { useCallback } from 'react';
import { freshId } from '../../api/fresh-id.js';
import type { RecordOf } from '../../api/use-records.js';
import { useQueued } from '../../outbox/index.js';
import { useWords } from '../../words/language.js';
import { COUNT_WORDS } from '../../words/machine.js';

/** So long a touch can be taken back before the shop has it: the time to see that it was the wrong one. */
export const UNDO_MS = 8_000;

interface Counted {
  readonly outcome: 'good' | 'scrap';
  readonly count: number;
  readonly reason: string;
}

/** Counts strings of a run at the machine. */
export function useEnterTally({ id: runId, body }: RecordOf<'run'>): (counted: Counted) => Promise<unknown> {
  const words = useWords(COUNT_WORDS);
  const { enter } = useQueued('record-tally');
  const { name } = body;
  return useCallback(
    ({ outcome, count, reason }) =>
      enter(
        { id: freshId(), runId, station: 'winder', outcome, reason, count },
        {
          label: outcome === 'good' ? words.goodLabel(count, name) : words.scrapLabel(reason, name),
          undoWithin: UNDO_MS,
        },
      ),
    [enter, runId, name, words],
  );
}
