import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import { stringKeyInWords } from '../../../contract/index.js';
import { type RecordOf, useAllRecords } from '../../api/use-records.js';
import { Asked } from '../../parts/asked.js';
import { Button, buttonClass } from '../../parts/button.js';
import { Empty } from '../../parts/empty.js';
import styles from '../../parts/floor.module.css';
import { RoomTitle } from '../../parts/room-title.js';
import { useFigures } from '../../sight/figures.js';
import { DIAL_ROUND_WORDS } from '../../words/dial-round.js';
import { useWords } from '../../words/language.js';
import { MACHINE_WORDS } from '../../words/machine.js';
import { CoresList } from '../ends/cores-list.js';
import { PracticeDoor } from '../practice/practice-door.js';
import { RunState } from './run-state.js';
import { dueOf, runsAhead } from './runs-ahead.js';
import { useRunsHere } from './use-runs-here.js';

interface RunsPartProps {
  readonly machine: RecordOf<'machine'>;
  readonly onOther: () => void;
}

/** So many after the next are shown at once: a day's work of a machine. */
const SHOWN = 6;

/** What runs here, what is next, what comes after. */
export function RunsPart({ machine, onOther }: RunsPartProps) {
  const words = useWords(MACHINE_WORDS);
  const dialWords = useWords(DIAL_ROUND_WORDS);
  const { question, runs } = useRunsHere(machine.id);
  const plans = (useAllRecords('plan', { state: 'in-force' }).data ?? []).map(({ body }) => body);
  const [showsAll, setShowsAll] = useState(false);
  return (
    <>
      <header className={styles.head}>
        <div>
          <RoomTitle title={machine.body.name} />
          <p className="quiet">{words.positions(machine.body.positions)}</p>
        </div>
        <div className={styles.doing}>
          <PracticeDoor />
          {machine.body.kind === 'winder' && (
            <Link to="/machine/dial" search={{ machine: machine.id }} className={buttonClass()}>
              {machine.body.drive === 'gear' ? dialWords.door : dialWords.doorPull}
            </Link>
          )}
          <Button onClick={onOther}>{words.otherMachine}</Button>
        </div>
      </header>
      <Asked question={question} what={words.what.runs}>
        {() => {
          const { underWay, planned } = runsAhead(runs, plans);
          const [next, ...after] = planned;
          const shown = showsAll ? after : after.slice(0, SHOWN);
          const list = (title: string, these: readonly RecordOf<'run'>[], large = false) =>
            these.length > 0 && (
              <section aria-label={title} className={styles.part}>
                <h2>{title}</h2>
                <ul className={styles.runs}>
                  {these.map((run) => (
                    <RunLine key={run.id} run={run} due={dueOf(run.id, plans)} large={large} />
                  ))}
                </ul>
              </section>
            );
          return (
            <>
              {list(words.underWay, underWay, true)}
              {list(words.next, next ? [next] : [], underWay.length === 0)}
              {list(words.after, shown)}
              {shown.length < after.length && (
                <Button size="floor" onClick={() => setShowsAll(true)}>
                  {words.moreRuns(after.length - shown.length)}
                </Button>
              )}
              {machine.body.kind === 'bench' && <CoresList />}
              {runs.length === 0 && <Empty what={words.nothingPlanned} />}
            </>
          );
        }}
      </Asked>
    </>
  );
}

interface RunLineProps {
  readonly run: RecordOf<'run'>;
  readonly due: string | undefined;
  readonly large: boolean;
}

function RunLine({ run, due, large }: RunLineProps) {
  const words = useWords(MACHINE_WORDS);
  const figures = useFigures();
  const { short, material, finish } = stringKeyInWords(run.body.stringKey);
  return (
    <li>
      <Link to="/machine" search={{ run: run.id }} className={large ? styles.runLarge : styles.run}>
        <RunState state={run.state} large={large} />
        <span className={styles.lines}>
          <strong className={large ? styles.gaugeLarge : styles.gauge}>{short}</strong>
          <span>{[material, finish].filter(Boolean).join(', ')}</span>
        </span>
        <span className={styles.lines}>
          <span>{words.wanted(figures.number(run.body.quantity))}</span>
          <span className="quiet">
            {[run.body.name, due && words.due(figures.date(due))].filter(Boolean).join(', ')}
          </span>
        </span>
      </Link>
    </li>
  );
}
