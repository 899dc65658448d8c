import { useMemo } from 'react';
import { inchesFromMetres, millimetresFromMetres } from '../../../core/units/index.js';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { STRINGS_WORDS } from '../../words/machine.js';
import type { Cell } from './trial-readings.js';

/** What a reading is called: its place along the string, in whole millimetres as on the set-up sheet and the rule, and the turn. */
export function useCellWords(): {
  readonly long: (cell: Cell) => string;
  readonly short: (cell: Cell) => string;
} {
  const words = useWords(STRINGS_WORDS);
  const figures = useFigures();
  return useMemo(() => {
    const place = (placeM: number, withInches: boolean) =>
      words.placeOn(
        figures.number(millimetresFromMetres(placeM)),
        withInches && figures.lengthUnit === 'in' ? figures.number(inchesFromMetres(placeM), 1) : undefined,
      );
    return {
      long: (cell) =>
        cell.quantity === 'mass' ? words.nowWeight : words.now(place(cell.placeM, true), cell.rotationDeg),
      short: (cell) =>
        cell.quantity === 'mass' ? words.weight : words.nowShort(place(cell.placeM, false), cell.rotationDeg),
    };
  }, [words, figures]);
}
