import { useWho } from '../../api/use-who.js';
import desk from '../../parts/desk.module.css';
import { type SheetColumn, SheetTable } from '../../parts/sheet-table.js';
import { StateMark } from '../../parts/state-mark.js';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { RUNS_WORDS } from '../../words/runs.js';
import type { RunSample, TrialString } from './run-samples.js';
import { MeanFigure } from './samples-table.js';

interface TrialsPartProps {
  readonly trials: readonly TrialString[];
  readonly samples: readonly RunSample[];
}

const TONES = { open: 'waits', good: 'done', scrap: 'stopped' } as const;

/** The strings wound to dial the machine in, and how they were judged. */
export function TrialsPart({ trials, samples }: TrialsPartProps) {
  const words = useWords(RUNS_WORDS);
  const figures = useFigures();
  const whoOf = useWho();
  const { trialColumns: heads } = words;
  const columns: readonly SheetColumn<TrialString>[] = [
    { heading: heads.number, names: true, cell: ({ number }) => words.trial(number) },
    { heading: heads.position, figures: true, cell: ({ position }) => position },
    {
      heading: heads.verdict,
      cell: ({ verdict }) => (
        <StateMark tone={TONES[verdict]}>{words.verdicts[verdict] ?? verdict}</StateMark>
      ),
    },
    {
      heading: heads.measured,
      figures: true,
      cell: ({ id }) => {
        const sample = samples.find(({ key }) => key === id);
        return sample ? <MeanFigure sample={sample} /> : words.none;
      },
    },
    { heading: heads.at, whole: true, cell: ({ at }) => figures.moment(at) },
    { heading: heads.by, cell: ({ by }) => whoOf(by) },
  ];
  return (
    <section className={desk.part} aria-labelledby="trials">
      <h2 id="trials">{words.trials}</h2>
      {trials.length === 0 ? (
        <p className="quiet">{words.trialsNone}</p>
      ) : (
        <SheetTable caption={words.trials} columns={columns} rows={trials} rowKey={({ id }) => id} />
      )}
    </section>
  );
}
