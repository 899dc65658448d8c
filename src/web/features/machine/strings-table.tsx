import type { SetUpSheet } from '../../../core/winding/index.js';
import { Button } from '../../parts/button.js';
import { Explained } from '../../parts/explained.js';
import styles from '../../parts/floor.module.css';
import { type SheetColumn, SheetTable } from '../../parts/sheet-table.js';
import { StateMark, type StateTone } from '../../parts/state-mark.js';
import { useFigures } from '../../sight/figures.js';
import { DIAL_IN_WORDS } from '../../words/dial-in.js';
import { useWords } from '../../words/language.js';
import { STRINGS_WORDS } from '../../words/machine.js';
import { expectedBands } from '../set-up/expected-band.js';
import { instrumentFigure } from './instrument-figure.js';
import type { InstrumentUnit } from './read-instrument.js';
import type { Trial } from './run-count.js';
import { type Cell, cellsOf, cellsShown, meanDiameterM, readingIn } from './trial-readings.js';
import { useCellWords } from './use-cell-words.js';
import type { RunReading } from './use-run-book.js';

interface StringsTableProps {
  readonly sheet: SetUpSheet;
  readonly trials: readonly Trial[];
  readonly readings: readonly RunReading[];
  readonly unit: InstrumentUnit;
  /** In what the wrap's knob is marked; empty where it has a bare scale. */
  readonly knobUnit: string;
  readonly nameOf: (trial: Trial) => string;
  readonly onOpen: ((id: string) => void) | undefined;
}

const TONES: Readonly<Record<Trial['verdict'], StateTone>> = {
  open: 'waits',
  good: 'done',
  scrap: 'stopped',
};

/** Every trial string with its readings, its mean against the sheet's band, and the verdict. */
export function StringsTable({ sheet, trials, readings, unit, knobUnit, nameOf, onOpen }: StringsTableProps) {
  const words = useWords(STRINGS_WORDS);
  const dialWords = useWords(DIAL_IN_WORDS);
  const figures = useFigures();
  const cellWords = useCellWords();
  const cells = cellsShown(
    cellsOf(sheet.firstOff),
    readings.filter(({ trialStringId }) => trialStringId !== null),
  );
  const own = (trial: Trial) => readings.filter(({ trialStringId }) => trialStringId === trial.id);
  const figureOf = (value: number, inUnit: InstrumentUnit) =>
    instrumentFigure(value, inUnit, { figures, words });
  // Under the name: a column of its own would push the readings off a narrow screen.
  const dialledOf = ({ setting, setBy, seen }: Trial) => {
    const shown = setting === undefined ? undefined : dialWords.setAt(figures.number(setting, 2), knobUnit);
    const own = setBy === 'override' && shown !== undefined ? dialWords.byHand(shown) : shown;
    return [own, seen && dialWords.seen[seen].toLowerCase()].filter(Boolean).join(', ');
  };
  const columns: readonly SheetColumn<Trial>[] = [
    {
      heading: words.string,
      names: true,
      whole: true,
      cell: (trial) => (
        <span className={styles.lines}>
          {onOpen ? <Button onClick={() => onOpen(trial.id)}>{nameOf(trial)}</Button> : nameOf(trial)}
          <small>{dialledOf(trial)}</small>
        </span>
      ),
    },
    {
      heading: words.mean,
      whole: true,
      cell: (trial) => (
        <Mean
          sheet={sheet}
          cells={cells}
          name={nameOf(trial)}
          readings={own(trial)}
          figureOf={(m) => figureOf(m, unit)}
        />
      ),
    },
    {
      heading: words.verdict,
      whole: true,
      cell: ({ verdict }) => <StateMark tone={TONES[verdict]}>{words.verdicts[verdict]}</StateMark>,
    },
    ...cells.map((cell) => ({
      heading: cellWords.short(cell),
      figures: true,
      cell: (trial: Trial) => {
        const reading = readingIn(cell, own(trial));
        return reading ? figureOf(reading.value, cell.quantity === 'mass' ? 'g' : unit) : '–';
      },
    })),
  ];
  return (
    <SheetTable caption={words.readingsOf} columns={columns} rows={trials} rowKey={({ id }) => id} middle />
  );
}

interface MeanProps {
  readonly cells: readonly Cell[];
  readonly sheet: SetUpSheet;
  readonly name: string;
  readonly readings: readonly RunReading[];
  readonly figureOf: (valueM: number) => string;
}

function Mean({ sheet, cells, name, readings, figureOf }: MeanProps) {
  const words = useWords(STRINGS_WORDS);
  const valueM = meanDiameterM(cells, readings);
  const [band] = expectedBands(sheet);
  if (valueM === undefined || !band) return words.notYet;
  const count = readings.filter(({ quantity }) => quantity === 'diameter').length;
  const stands = valueM < band.lowM ? 'below' : valueM > band.highM ? 'above' : 'inBand';
  return (
    <>
      <Explained
        name={words.meanOf(name)}
        what={words.meanWhat}
        source={words.meanSource(count, `${figureOf(band.lowM)} – ${figureOf(band.highM)}`)}
      >
        {figureOf(valueM)}
      </Explained>{' '}
      <StateMark tone={stands === 'inBand' ? 'done' : 'care'}>{words[stands]}</StateMark>
    </>
  );
}
