import { useCallback } from 'react';
import type { EndCheck } from '../../../core/winding/index.js';
import { freshId } from '../../api/fresh-id.js';
import { useQueued } from '../../outbox/index.js';
import { ENDS_WORDS } from '../../words/ends.js';
import { useWords } from '../../words/language.js';
import { UNDO_MS } from '../machine/use-enter-tally.js';

interface EndsOfRun {
  readonly runId: string;
  readonly runName: string;
  readonly machineId: string;
  readonly gauge: string;
  /** What it was cut from, where that is known. */
  readonly spoolId: string | undefined;
}

/** Writes down what was found of an end, and takes back what was written; each at once, line or no line. */
export function useEnterEnd({ runId, runName, machineId, gauge, spoolId }: EndsOfRun): {
  readonly enter: (number: number, check: EndCheck) => Promise<unknown>;
  readonly takeBack: (number: number, id: string) => Promise<unknown>;
} {
  const words = useWords(ENDS_WORDS);
  const { enter } = useQueued('record-end-checks');
  return {
    enter: useCallback(
      (number, check) => {
        const named = {
          ...(gauge.trim() === '' ? {} : { gauge: gauge.trim() }),
          ...(spoolId === undefined ? {} : { spoolId }),
        };
        return enter(
          { rows: [{ id: freshId(), runId, machineId, ...check, ...named }] },
          { label: words.entered(number, runName), undoWithin: UNDO_MS },
        );
      },
      [enter, runId, runName, machineId, gauge, spoolId, words],
    ),
    takeBack: useCallback(
      (number, id) =>
        enter(
          { rows: [{ id: freshId(), runId, machineId, insteadOf: id }] },
          { label: words.takenBack(number, runName), undoWithin: UNDO_MS },
        ),
      [enter, runId, runName, machineId, words],
    ),
  };
}
