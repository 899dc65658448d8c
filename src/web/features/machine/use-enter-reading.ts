import { useCallback } from 'react';
import { freshId } from '../../api/fresh-id.js';
import { useQueued } from '../../outbox/index.js';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { STRINGS_WORDS } from '../../words/machine.js';
import { instrumentFigure } from './instrument-figure.js';
import type { Cell } from './trial-readings.js';
import { useCellWords } from './use-cell-words.js';
import { UNDO_MS } from './use-enter-tally.js';

/** Writes a reading down the moment it is typed, each by itself: a power cut costs none that was entered. */
export function useEnterReading(
  runId: string,
  micrometer: string,
): (cell: Cell, value: number, trialStringId?: string) => void {
  const words = useWords(STRINGS_WORDS);
  const figures = useFigures();
  const cellWords = useCellWords();
  const { enter } = useQueued('record-measurements');
  return useCallback(
    (cell, value, trialStringId) => {
      const isMass = cell.quantity === 'mass';
      const row = {
        id: freshId(),
        runId,
        ...(trialStringId === undefined ? {} : { trialStringId }),
        ...cell,
        value,
        instrument: isMass ? words.scaleName : micrometer.trim() || words.firstName,
      };
      const shown = isMass ? instrumentFigure(value, 'g', { figures, words }) : figures.diameter(value);
      void enter(
        { rows: [row] },
        { label: words.enteredReading(cellWords.short(cell), shown), undoWithin: UNDO_MS },
      );
    },
    [runId, micrometer, words, figures, cellWords, enter],
  );
}
