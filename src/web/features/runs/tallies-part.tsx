import type { ReadingAnswer } from '../../../contract/index.js';
import desk from '../../parts/desk.module.css';
import { MeasureBar } from '../../parts/measure-bar.js';
import { type SheetColumn, SheetTable } from '../../parts/sheet-table.js';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { RUNS_WORDS } from '../../words/runs.js';
import { type TallyLine, tallyLines } from './run-samples.js';

/** Good strings and scrap by reason, as the winder and the coiler tallied them. */
export function TalliesPart({ tallies }: { readonly tallies: ReadingAnswer<'tallies'>['items'] }) {
  const words = useWords(RUNS_WORDS);
  const figures = useFigures();
  const lines = tallyLines(tallies);
  const all = lines.reduce((sum, { winder, coiler }) => sum + winder + coiler, 0);
  const { tallyColumns: heads } = words;
  const columns: readonly SheetColumn<TallyLine>[] = [
    { heading: heads.outcome, names: true, cell: ({ outcome }) => words.outcomes[outcome] },
    { heading: heads.reason, cell: ({ reason }) => reason || words.none },
    { heading: heads.winder, figures: true, cell: ({ winder }) => figures.number(winder) },
    { heading: heads.coiler, figures: true, cell: ({ coiler }) => figures.number(coiler) },
    {
      heading: heads.bar,
      wide: true,
      cell: ({ winder, coiler }) => <MeasureBar value={winder + coiler} full={all} />,
    },
  ];
  return (
    <section className={desk.part} aria-labelledby="tallies">
      <h2 id="tallies">{words.tallies}</h2>
      {lines.length === 0 ? (
        <p className="quiet">{words.talliesNone}</p>
      ) : (
        <SheetTable
          caption={words.tallies}
          columns={columns}
          rows={lines}
          rowKey={({ outcome, reason }) => `${outcome} ${reason}`}
          middle
        />
      )}
    </section>
  );
}
