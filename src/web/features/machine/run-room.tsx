import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import { type ShopView, stringKeyInWords } from '../../../contract/index.js';
import { type RecordOf, useAllRecords } from '../../api/use-records.js';
import { isOf, useOutbox } from '../../outbox/index.js';
import { buttonClass } from '../../parts/button.js';
import styles from '../../parts/floor.module.css';
import { StringHead } from '../../parts/string-head.js';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { MACHINE_WORDS } from '../../words/machine.js';
import { EndsStep } from '../ends/ends-step.js';
import { useEndChecks } from '../ends/use-end-checks.js';
import { ChangeSpool } from './change-spool.js';
import { CloseStep } from './close-step.js';
import { CountStep } from './count-step.js';
import { FirstStringsStep } from './first-strings-step.js';
import { PauseButton } from './pause-button.js';
import { RunState } from './run-state.js';
import { runsAhead } from './runs-ahead.js';
import { SheetStep } from './sheet-step.js';
import { StartRun } from './start-run.js';
import { useCautions } from './use-cautions.js';
import { type RunBook, useRunBook } from './use-run-book.js';
import { useRunSheet } from './use-run-sheet.js';
import { useRunsHere } from './use-runs-here.js';

type Step = keyof (typeof MACHINE_WORDS)['en']['steps'];

const STEPS: Readonly<Record<string, readonly Step[]>> = {
  planned: ['sheet', 'spools'],
  running: ['sheet', 'spools', 'strings', 'count', 'close'],
  paused: ['sheet', 'spools', 'strings', 'count', 'close'],
};

/** A plain string has an end to check, and no machine to dial in: its ends are looked at first. */
const PLAIN_STEPS: typeof STEPS = {
  planned: ['sheet', 'spools'],
  running: ['sheet', 'spools', 'ends', 'strings', 'count', 'close'],
  paused: ['sheet', 'spools', 'ends', 'strings', 'count', 'close'],
};

interface RunRoomProps {
  readonly record: RecordOf<'run'>;
  readonly view: ShopView;
}

/** One run at its machine, step by step; the step at hand is open, each other one touch away. */
export function RunRoom({ record, view }: RunRoomProps) {
  const words = useWords(MACHINE_WORDS);
  const book = useRunBook(record);
  const made = useRunSheet(book.run, view);
  const cautions = useCautions(book.run, made.kind === 'sheet' ? made.sheet : undefined);
  const isPlain = record.body.spec.kind === 'plain';
  const steps = (isPlain ? PLAIN_STEPS : STEPS)[book.run.state] ?? [];
  const isEnded = useEndChecks(record.id, undefined).length > 0;
  const [chosen, setChosen] = useState<Step>();
  const mending = useMendedStep(record.id);
  const step =
    mending ??
    (chosen !== undefined && steps.includes(chosen) ? chosen : stepAtHand(book, isPlain && !isEnded));
  return (
    <article className={styles.room}>
      <RunHead book={book} />
      {steps.length > 0 ? (
        <nav aria-label={words.stepsOf} className={styles.steps}>
          {steps.map((each) => (
            <button
              key={each}
              type="button"
              aria-current={each === step ? 'step' : undefined}
              className={styles.step}
              onClick={() => setChosen(each)}
            >
              {words.steps[each]}
            </button>
          ))}
        </nav>
      ) : (
        <RunOver book={book} />
      )}
      {step === 'sheet' && (
        <SheetStep book={book} made={made} cautions={cautions} onOn={() => setChosen('spools')} />
      )}
      {step === 'spools' &&
        (book.run.state === 'planned' ? (
          <StartRun
            book={book}
            view={view}
            cautions={cautions}
            onStarted={() => setChosen(isPlain ? 'ends' : 'strings')}
          />
        ) : (
          <ChangeSpool book={book} view={view} />
        ))}
      {step === 'strings' && made.kind === 'sheet' && (
        <FirstStringsStep book={book} sheet={made.sheet} view={view} onOn={() => setChosen('count')} />
      )}
      {step === 'ends' && made.kind === 'sheet' && made.sheet.ends && (
        <EndsStep
          run={book.run}
          machineId={book.run.body.machineId}
          ends={made.sheet.ends}
          wireId={view.ids.wires[made.sheet.ends.wireId] ?? ''}
          onOn={() => setChosen('count')}
        />
      )}
      {step === 'count' && (
        <CountStep
          book={book}
          view={view}
          onSpool={() => setChosen('spools')}
          onEnough={() => setChosen('close')}
        />
      )}
      {step === 'close' && <CloseStep book={book} />}
    </article>
  );
}

/** Where an entry that the shop refused is mended. */
function useMendedStep(runId: string): Step | undefined {
  const { editing } = useOutbox();
  if (!editing?.about.includes(runId)) return undefined;
  if (isOf(editing, 'start-run') || isOf(editing, 'change-spool')) return 'spools';
  return isOf(editing, 'close-run') ? 'close' : undefined;
}

/** Before the start the sheet; then the first strings, until one of them is judged, or the first ends; then the count. */
function stepAtHand({ run, trials, count }: RunBook, wantsEnds: boolean): Step | undefined {
  if (run.state === 'planned') return 'sheet';
  if (run.state !== 'running' && run.state !== 'paused') return undefined;
  if (run.body.spec.kind === 'plain') return wantsEnds && count.good === 0 ? 'ends' : 'count';
  return trials.some(({ verdict }) => verdict === 'good') ? 'count' : 'strings';
}

function RunHead({ book }: { readonly book: RunBook }) {
  const words = useWords(MACHINE_WORDS);
  const figures = useFigures();
  const { run, count, isOnTheWay } = book;
  const isLive = run.state === 'running' || run.state === 'paused';
  return (
    <header className={styles.runHead}>
      <StringHead
        stringKey={run.body.stringKey}
        name={run.body.name}
        back={
          <Link to="/machine" className={styles.back}>
            {words.backToRuns}
          </Link>
        }
      />
      <div className={styles.lines}>
        <RunState state={run.state} large />
        {isOnTheWay && <span className="quiet">{words.onTheWay}</span>}
      </div>
      <p className={styles.progress}>
        {words.goodOf(
          figures.number(isLive || run.state === 'planned' ? count.good : run.body.goodCount),
          figures.number(run.body.quantity),
        )}
      </p>
      {isLive && <PauseButton run={run} />}
    </header>
  );
}

function RunOver({ book: { run } }: { readonly book: RunBook }) {
  const words = useWords(MACHINE_WORDS);
  const figures = useFigures();
  const { goodCount, scrapCount } = run.body;
  return (
    <section className={styles.part}>
      <p className={styles.said}>{words.runOver}</p>
      {run.state === 'closed' && <p>{words.lotIs(figures.number(goodCount), figures.number(scrapCount))}</p>}
      <AfterRun machineId={run.body.machineId} />
    </section>
  );
}

/** What is next on the machine, one touch away. */
function AfterRun({ machineId }: { readonly machineId: string }) {
  const words = useWords(MACHINE_WORDS);
  const { runs } = useRunsHere(machineId);
  const plans = (useAllRecords('plan', { state: 'in-force' }).data ?? []).map(({ body }) => body);
  const { underWay, planned } = runsAhead(runs, plans);
  const next = underWay[0] ?? planned[0];
  return (
    <div className={styles.doing}>
      {next && (
        <Link to="/machine" search={{ run: next.id }} className={buttonClass('main', 'floor')}>
          {words.nextRun(stringKeyInWords(next.body.stringKey).short)}
        </Link>
      )}
      <Link to="/machine" className={buttonClass(next ? 'plain' : 'main', 'floor')}>
        {words.backToRuns}
      </Link>
    </div>
  );
}
