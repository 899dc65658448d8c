import { useState } from 'react';
import { firstOffInWords, type ShopView } from '../../../contract/index.js';
import type { SetUpSheet } from '../../../core/winding/index.js';
import { freshId } from '../../api/fresh-id.js';
import { useQueued } from '../../outbox/index.js';
import { Button } from '../../parts/button.js';
import { Empty } from '../../parts/empty.js';
import styles from '../../parts/floor.module.css';
import { useSound } from '../../parts/sound.js';
import { useWords } from '../../words/language.js';
import { STRINGS_WORDS } from '../../words/machine.js';
import { mayRun } from '../dial-in/next-string.js';
import { DialInPart } from './dial-in-part.js';
import { EnteredOfString } from './entered-of-string.js';
import { expectedOf } from './expected-of.js';
import { JudgeString } from './judge-string.js';
import { MeasureAgain } from './measure-again.js';
import { Measuring } from './measuring.js';
import { MicrometerFields, useMicrometer } from './micrometer-fields.js';
import type { Trial } from './run-count.js';
import { RunningCheck } from './running-check.js';
import { SettingsPart } from './settings-part.js';
import { StringsTable } from './strings-table.js';
import { cellsOf } from './trial-readings.js';
import { UndoStep } from './undo-step.js';
import { useEnterReading } from './use-enter-reading.js';
import type { RunBook } from './use-run-book.js';
import { type RunDialIn, useRunDialIn } from './use-run-dial-in.js';

interface FirstStringsStepProps {
  readonly book: RunBook;
  readonly sheet: SetUpSheet;
  readonly view: ShopView;
  readonly onOn: () => void;
}

/** The strings by which the machine is dialled in: wound, measured by the sheet's plan, judged. */
export function FirstStringsStep({ book, sheet, view, onOn }: FirstStringsStepProps) {
  const words = useWords(STRINGS_WORDS);
  const { firstOff } = sheet;
  const { run, trials, readings } = book;
  const dialIn = useRunDialIn(book, sheet, view);
  const micrometer = useMicrometer();
  const enterReading = useEnterReading(run.id, micrometer.name);
  const [activeId, setActiveId] = useState(() => trials.find(({ verdict }) => verdict === 'open')?.id);
  const active = trials.find(({ id }) => id === activeId);
  const cells = cellsOf(firstOff);
  const isLive = run.state === 'running';
  const nameOf = (trial: Trial) =>
    sheet.positions === 2 ? words.stringAt(trial.number, trial.position) : words.stringIs(trial.number);
  const own = (trial: Trial) => readings.filter(({ trialStringId }) => trialStringId === trial.id);
  return (
    <section aria-label={words.title} className={styles.part}>
      <h2>{words.title}</h2>
      <p>
        {words.lead(firstOff.strings, firstOff.placesFromEndM.length, firstOff.rotationsDeg.length)}{' '}
        {firstOffInWords(firstOff.why)}
      </p>
      <MicrometerFields micrometer={micrometer} />
      {isLive && dialIn && <DialInPart book={book} dialIn={dialIn} onNew={setActiveId} />}
      {isLive && !dialIn && <NewString book={book} sheet={sheet} onNew={setActiveId} />}
      {isLive && dialIn?.doubtful && (
        <MeasureAgain
          key={`again ${dialIn.doubtful.id}`}
          name={nameOf(dialIn.doubtful)}
          readings={own(dialIn.doubtful)}
          sheet={sheet}
          lengthM={run.body.spec.lengthM}
          unit={micrometer.unit}
          onReading={(cell, value) => enterReading(cell, value, dialIn.doubtful?.id)}
        />
      )}
      {active && isLive && active.id !== dialIn?.doubtful?.id && (
        <Measuring
          key={active.id}
          title={nameOf(active)}
          cells={cells}
          readings={own(active)}
          unit={micrometer.unit}
          expected={expectedOf(sheet, run.body.spec.lengthM)}
          onReading={(cell, value) => enterReading(cell, value, active.id)}
          onDone={() => undefined}
        />
      )}
      {active && <JudgeString key={`judge ${active.id}`} run={run} trial={active} name={nameOf(active)} />}
      {active && run.state !== 'planned' && (
        <EnteredOfString book={book} trial={active} name={nameOf(active)} />
      )}
      {trials.length === 0 ? (
        <Empty what={words.none} />
      ) : (
        <StringsTable
          sheet={sheet}
          trials={trials}
          readings={readings}
          unit={micrometer.unit}
          knobUnit={dialIn?.unit ?? ''}
          nameOf={nameOf}
          onOpen={isLive ? setActiveId : undefined}
        />
      )}
      {isLive && (trials.some(({ verdict }) => verdict === 'good') || letsRun(dialIn)) && (
        <div className={styles.onward}>
          <Button kind="main" size="floor" onClick={onOn}>
            {words.goOn}
          </Button>
        </div>
      )}
      {isLive && sheet.layers.length > 0 && (
        <SettingsPart run={run} sheet={sheet} isInNumbers={dialIn?.unit === ''} />
      )}
      {isLive && (
        <RunningCheck
          book={book}
          sheet={sheet}
          unit={micrometer.unit}
          onReading={(cell, value) => enterReading(cell, value)}
        />
      )}
    </section>
  );
}

/** Sure enough at every position, and nothing left to measure. */
const letsRun = (dialIn: RunDialIn | undefined): boolean =>
  dialIn?.positions.every(({ advice, isToMeasure }) => mayRun(advice) && !isToMeasure) ?? false;

interface NewStringProps {
  readonly book: RunBook;
  readonly sheet: SetUpSheet;
  readonly onNew: (id: string) => void;
}

/** Of a machine that makes two at once each position is dialled in by itself. */
function NewString({ book, sheet, onNew }: NewStringProps) {
  const { run, trials, nextNumber: number } = book;
  const words = useWords(STRINGS_WORDS);
  const sound = useSound();
  const trial = useQueued('record-trial-string');
  const add = async (position: 1 | 2) => {
    const id = freshId();
    await trial.enter({ id, runId: run.id, number, position }, { label: words.entered(number) });
    sound.accepted();
    onNew(id);
  };
  const positions = sheet.positions === 2 ? ([1, 2] as const) : ([1] as const);
  return (
    <div className={styles.doing}>
      {positions.map((position) => (
        <Button
          key={position}
          kind={trials.length === 0 ? 'main' : 'plain'}
          size="floor"
          onClick={() => void add(position)}
        >
          {positions.length === 2 ? words.newStringAt(position) : words.newString}
        </Button>
      ))}
      <UndoStep book={book} />
    </div>
  );
}
