import { TextInput } from '@mantine/core';
import { type FormEvent, useEffect, useRef, useState } from 'react';
import { BigWord } from '../../parts/big-word.js';
import { Button } from '../../parts/button.js';
import styles from '../../parts/floor.module.css';
import { HINT_BELOW } from '../../parts/hint-below.js';
import { useSound } from '../../parts/sound.js';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { STRINGS_WORDS } from '../../words/machine.js';
import { instrumentFigure } from './instrument-figure.js';
import { type InstrumentReading, type InstrumentUnit, readInstrument } from './read-instrument.js';
import { type Cell, type Reading, readingIn } from './trial-readings.js';
import { useCellWords } from './use-cell-words.js';

interface MeasuringProps {
  /** What is measured, in words. */
  readonly title: string;
  readonly cells: readonly Cell[];
  readonly readings: readonly Reading[];
  readonly unit: InstrumentUnit;
  readonly expected: { readonly diameterM: number; readonly massKg: number };
  readonly onReading: (cell: Cell, value: number) => void;
  readonly onDone: () => void;
}

/** One reading after the other: the instrument types digits and Enter, and the next place is asked for by itself. */
export function Measuring(props: MeasuringProps) {
  const { title, cells, readings, unit, expected, onReading, onDone } = props;
  const words = useWords(STRINGS_WORDS);
  const figures = useFigures();
  const sound = useSound();
  const cellWords = useCellWords();
  const field = useRef<HTMLInputElement>(null);
  const [skipped, setSkipped] = useState(false);
  const [text, setText] = useState('');
  const [doubt, setDoubt] = useState<{
    readonly text: string;
    readonly readings?: readonly InstrumentReading[];
  }>();
  // A weight that was left out stays so; a diameter that was taken back is asked for again.
  const at = cells.findIndex(
    (cell) => readingIn(cell, readings) === undefined && !(skipped && cell.quantity === 'mass'),
  );
  const cell = cells[at];
  // biome-ignore lint/correctness/useExhaustiveDependencies: with each next place the field is at hand again
  useEffect(() => field.current?.focus(), [at]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: told once, when nothing is left to measure
  useEffect(() => {
    if (!cell) onDone();
  }, [cell === undefined]);
  if (!cell) return null;
  const isMass = cell.quantity === 'mass';
  const shown: InstrumentUnit = isMass ? 'g' : unit;
  const wanted = isMass ? expected.massKg : expected.diameterM;
  const figureOf = (value: number, inUnit: InstrumentUnit) =>
    instrumentFigure(value, inUnit, { figures, words });
  const take = (value: number) => {
    sound.accepted();
    setText('');
    setDoubt(undefined);
    onReading(cell, value);
  };
  const enter = (event: FormEvent) => {
    event.preventDefault();
    if (text.trim() === '') {
      if (isMass) setSkipped(true);
      return;
    }
    const read = readInstrument(text, { quantity: cell.quantity, unit: shown, expected: wanted });
    if (read.ok) return take(read.value.value);
    sound.refused();
    setDoubt({ text, ...(read.fault.code === 'unlikely' ? { readings: read.fault.readings } : {}) });
    setText('');
  };
  const again = () => {
    setDoubt(undefined);
    field.current?.focus();
  };
  return (
    <form onSubmit={enter} className={styles.asking} aria-label={words.measuring(title)}>
      <p className="quiet">
        {words.measuring(title)}, {words.left(at, cells.length)}
      </p>
      <p className={styles.said} role="status">
        {isMass ? words.nowWeight : cellWords.long(cell)}
      </p>
      <TextInput
        {...HINT_BELOW}
        ref={field}
        label={words.field}
        description={
          isMass
            ? words.weightHint(figureOf(wanted, 'g'))
            : words.fieldHint(words.units[unit === 'mm' ? 'mm' : 'in'], figureOf(wanted, unit))
        }
        value={text}
        onChange={(event) => setText(event.currentTarget.value)}
        inputMode="decimal"
        autoComplete="off"
        classNames={{ input: styles.reading ?? '' }}
      />
      {doubt && !doubt.readings && (
        <BigWord tone="stopped" word={words.notLike} more={words.unreadable(doubt.text)} />
      )}
      {doubt?.readings && (
        <>
          <BigWord tone="care" word={words.notLike} more={words.asked(doubt.text, figureOf(wanted, shown))} />
          <div className={styles.doing}>
            {doubt.readings.map((reading) => (
              <Button key={reading.unit} size="floor" onClick={() => take(reading.value)}>
                {words.take(words.byUnit[reading.unit](reading.typed))}
              </Button>
            ))}
            <Button size="floor" onClick={again}>
              {words.measureAnew}
            </Button>
          </div>
        </>
      )}
    </form>
  );
}
