import { useState } from 'react';
import type { SetUpSheet } from '../../../core/winding/index.js';
import { Button } from '../../parts/button.js';
import styles from '../../parts/floor.module.css';
import { useWords } from '../../words/language.js';
import { STRINGS_WORDS } from '../../words/machine.js';
import { Measuring } from './measuring.js';
import type { InstrumentUnit } from './read-instrument.js';
import { type Cell, cellsOfCheck } from './trial-readings.js';
import type { RunBook } from './use-run-book.js';

interface RunningCheckProps {
  readonly book: RunBook;
  readonly sheet: SetUpSheet;
  readonly unit: InstrumentUnit;
  readonly onReading: (cell: Cell, value: number) => void;
}

/** A look at a string between, while the run goes on. */
export function RunningCheck({ book: { run, readings }, sheet, unit, onReading }: RunningCheckProps) {
  const words = useWords(STRINGS_WORDS);
  const between = readings.filter(({ trialStringId }) => trialStringId === null);
  /** How many readings there were when this check began; undefined while none is under way. */
  const [before, setBefore] = useState<number>();
  return (
    <section aria-label={words.runningTitle} className={styles.asking}>
      <h3>{words.runningTitle}</h3>
      <p>
        {words.runningLead} {between.length > 0 && words.lastChecks(between.length)}
      </p>
      {before === undefined ? (
        <div>
          <Button size="floor" onClick={() => setBefore(between.length)}>
            {words.measureRunning}
          </Button>
        </div>
      ) : (
        <Measuring
          title={words.measureRunningOf}
          cells={cellsOfCheck(sheet.firstOff)}
          readings={between.slice(before)}
          unit={unit}
          expected={{
            diameterM: sheet.meanDiameterM.value,
            massKg: sheet.unitWeightKgPerM.value * run.body.spec.lengthM,
          }}
          onReading={onReading}
          onDone={() => setBefore(undefined)}
        />
      )}
    </section>
  );
}
