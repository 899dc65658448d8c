import { useMemo } from 'react';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { STRINGS_WORDS } from '../../words/machine.js';
import type { Cell } from './trial-readings.js';

/** What a reading is called: its place along the string, and the turn. */
export function useCellWords(): {
  readonly long: (cell: Cell) => string;
  readonly short: (cell: Cell) => string;
} {
  const words = useWords(STRINGS_WORDS);
  const figures = useFigures();
  return useMemo(
    () => ({
      long: (cell) =>
        cell.quantity === 'mass' ? words.nowWeight : words.now(figures.length(cell.placeM), cell.rotationDeg),
      short: (cell) =>
        cell.quantity === 'mass'
          ? words.weight
          : words.nowShort(figures.length(cell.placeM), cell.rotationDeg),
    }),
    [words, figures],
  );
}
