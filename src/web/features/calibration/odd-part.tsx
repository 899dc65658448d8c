import { Link } from '@tanstack/react-router';
import { Fragment } from 'react';
import type { CalibrationView } from '../../../contract/index.js';
import desk from '../../parts/desk.module.css';
import { type SheetColumn, SheetTable } from '../../parts/sheet-table.js';
import { useFigures } from '../../sight/figures.js';
import { CALIBRATION_WORDS } from '../../words/calibration.js';
import { useWords } from '../../words/language.js';
import { useWireNames } from '../recipes/use-wire-names.js';
import { useCalibrationNames } from './use-calibration-names.js';

type Outlier = CalibrationView['outliers'][number];

/** Strings, runs and lots of wire that lie where ordinary ones do not: each can be gone to. */
export function OddPart({ view }: { readonly view: CalibrationView }) {
  const words = useWords(CALIBRATION_WORDS).odd;
  const figures = useFigures();
  const names = useCalibrationNames(view);
  const columns: readonly SheetColumn<Outlier>[] = [
    {
      heading: words.columns.run,
      names: true,
      cell: ({ runId, runName }) => (
        <Link to="/runs/$id" params={{ id: runId }}>
          {runName}
        </Link>
      ),
    },
    {
      heading: words.columns.recipe,
      cell: ({ recipeId }) => (
        <Link to="/recipes/$id" params={{ id: names.recipeId(recipeId) }}>
          {names.recipe(recipeId)}
        </Link>
      ),
    },
    { heading: words.columns.machine, cell: ({ machineId }) => names.machine(machineId) },
    {
      heading: words.columns.how,
      wide: true,
      cell: ({ telling, off, stringIds }) => {
        const size = LENGTHS.has(telling)
          ? figures.slight(Math.abs(off))
          : `${figures.number(Math.abs(off) * 100, 1)} %`;
        return words.how(words.tellings[telling] ?? telling, size, {
          isMore: off > 0,
          strings: stringIds.length,
        });
      },
    },
    {
      heading: words.columns.far,
      figures: true,
      cell: ({ standardised }) => figures.number(Math.abs(standardised), 1),
    },
    { heading: words.columns.counts, figures: true, cell: ({ weight }) => figures.share(weight) },
  ];
  return (
    <section className={desk.part} aria-labelledby="odd">
      <h2 id="odd">{words.title}</h2>
      <p className={desk.lead}>{words.lead}</p>
      <OddLots view={view} />
      {view.outliers.length === 0 ? (
        <p>{words.noStrings}</p>
      ) : (
        <>
          <SheetTable
            caption={words.strings}
            columns={columns}
            rows={view.outliers.slice(0, SHOWN)}
            rowKey={({ runId, telling, stringIds }) => `${runId} ${telling} ${stringIds.join()}`}
          />
          {view.outlierCount > SHOWN && (
            <p className="quiet">{words.farthest(SHOWN, figures.number(view.outlierCount))}</p>
          )}
        </>
      )}
    </section>
  );
}

const SHOWN = 20;
/** What is told in metres; the rest are shares. */
const LENGTHS: ReadonlySet<string> = new Set(['mean-diameter', 'largest-diameter', 'corners']);

function OddLots({ view }: { readonly view: CalibrationView }) {
  const words = useWords(CALIBRATION_WORDS).odd;
  const figures = useFigures();
  const wireName = useWireNames();
  if (view.oddLots.length === 0) return <p>{words.noLots}</p>;
  return (
    <ul className={desk.list}>
      {view.oddLots.map(({ wireId, lot, spools, standardised }) => (
        <li key={`${wireId} ${lot}`}>
          {words.lot(lot, figures.number(Math.abs(standardised), 1), standardised > 0)}{' '}
          <Link to="/wire" search={{ wire: wireId }}>
            {wireName(wireId)}
          </Link>
          {spools.map(({ id, name }) => (
            <Fragment key={id}>
              {' · '}
              <Link to="/wire" search={{ spool: id }}>
                {words.spool(name)}
              </Link>
            </Fragment>
          ))}
        </li>
      ))}
    </ul>
  );
}
