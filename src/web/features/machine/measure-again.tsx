import type { SetUpSheet } from '../../../core/winding/index.js';
import { DIAL_IN_WORDS } from '../../words/dial-in.js';
import { useWords } from '../../words/language.js';
import { expectedOf } from './expected-of.js';
import { Measuring } from './measuring.js';
import type { InstrumentUnit } from './read-instrument.js';
import { type Cell, cellsOf, readingsAgain } from './trial-readings.js';
import type { RunReading } from './use-run-book.js';

interface MeasureAgainProps {
  readonly name: string;
  readonly sheet: SetUpSheet;
  readonly lengthM: number;
  /** All readings of the string, the first look's too. */
  readonly readings: readonly RunReading[];
  readonly unit: InstrumentUnit;
  readonly onReading: (cell: Cell, value: number) => void;
}

/** A second look at a string whose readings are doubted: every place once more. */
export function MeasureAgain({ name, sheet, lengthM, readings, unit, onReading }: MeasureAgainProps) {
  const words = useWords(DIAL_IN_WORDS);
  const cells = cellsOf(sheet.firstOff).filter(({ quantity }) => quantity === 'diameter');
  return (
    <Measuring
      title={`${name} ${words.sameString}`}
      cells={cells}
      readings={readingsAgain(cells, readings)}
      unit={unit}
      expected={expectedOf(sheet, lengthM)}
      onReading={onReading}
      onDone={() => undefined}
    />
  );
}
