import { Link } from '@tanstack/react-router';
import { useId } from 'react';
import type { QualityRunView } from '../../../contract/index.js';
import { useReading } from '../../api/use-records.js';
import { Asked } from '../../parts/asked.js';
import desk from '../../parts/desk.module.css';
import { type SheetColumn, SheetTable } from '../../parts/sheet-table.js';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { QUALITY_WORDS } from '../../words/quality.js';

/** The run of a point: what it was made of and on, and each of its strings. */
export function RunPart({ runId }: { readonly runId: string }) {
  const words = useWords(QUALITY_WORDS).run;
  const question = useReading('quality-run', { runId });
  return (
    <Asked question={question} what={words.what}>
      {(run) => <RunSeen run={run} />}
    </Asked>
  );
}

function RunSeen({ run }: { readonly run: QualityRunView }) {
  const words = useWords(QUALITY_WORDS).run;
  const figures = useFigures();
  const id = useId();
  return (
    <section aria-labelledby={id} className={desk.part}>
      <h2 id={id}>{words.title(run.name)}</h2>
      <p>{words.made(run.recipe.name, run.machine.name, figures.moment(run.at), run.good, run.scrap)}</p>
      <p>
        <Link to="/runs/$id" params={{ id: run.runId }}>
          {words.open(run.name)}
        </Link>
      </p>
      {run.spools.length > 0 && (
        <ul className={desk.list} aria-label={words.spools}>
          {run.spools.map((spool) => (
            <li key={spool.id}>
              <Link to="/wire" search={{ spool: spool.id }}>
                {words.spool(spool.name)}
              </Link>{' '}
              {words.ofLot(spool.wire, spool.lot)}
            </li>
          ))}
        </ul>
      )}
      {run.strings.length === 0 ? <p>{words.notMeasured}</p> : <StringsTable run={run} />}
    </section>
  );
}

type StringRow = QualityRunView['strings'][number];

function StringsTable({ run }: { readonly run: QualityRunView }) {
  const words = useWords(QUALITY_WORDS).run;
  const figures = useFigures();
  const { columns } = words;
  const slight = (value: number | undefined) => (value === undefined ? '' : figures.slight(value));
  const all: readonly SheetColumn<StringRow>[] = [
    {
      heading: columns.string,
      names: true,
      cell: ({ number }) => (number === undefined ? words.running : words.trial(number)),
    },
    { heading: columns.position, figures: true, cell: ({ position }) => position ?? '' },
    { heading: columns.at, whole: true, cell: ({ at }) => figures.moment(at) },
    { heading: columns.instrument, cell: ({ instrument }) => instrument },
    { heading: columns.off, figures: true, cell: ({ offM }) => slight(offM) },
    { heading: columns.along, figures: true, cell: ({ alongM }) => slight(alongM) },
    {
      heading: columns.weight,
      figures: true,
      cell: ({ weightOff }) => (weightOff === undefined ? '' : `${figures.number(weightOff * 100, 2)} %`),
    },
    {
      heading: columns.verdict,
      cell: ({ verdict }) => (verdict === undefined ? '' : words.verdicts[verdict]),
    },
  ];
  return (
    <SheetTable
      caption={words.strings(run.name)}
      columns={all}
      rows={run.strings}
      rowKey={({ at, number = 0 }) => `${at} ${number}`}
    />
  );
}
