import { Link } from '@tanstack/react-router';
import type { RecordOf } from '../../api/use-records.js';
import { useRecords } from '../../api/use-records.js';
import { Asked } from '../../parts/asked.js';
import desk from '../../parts/desk.module.css';
import { type SheetColumn, SheetTable } from '../../parts/sheet-table.js';
import { type Figures, useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { RECIPES_WORDS } from '../../words/recipes.js';
import { RunState } from '../runs/run-state.js';

/** The runs that were set up by a recipe, newest first. */
export function RunsPart({ recipeId }: { readonly recipeId: string }) {
  const words = useWords(RECIPES_WORDS);
  const figures = useFigures();
  const runs = useRecords('run', { recipeId, limit: 50 });
  return (
    <section className={desk.part} aria-labelledby="runs">
      <h2 id="runs">{words.runs}</h2>
      <Asked question={runs} what={words.runs}>
        {({ items }) =>
          items.length === 0 ? (
            <p className="quiet">{words.runsNone}</p>
          ) : (
            <SheetTable
              caption={words.runs}
              columns={columnsOf(words.runColumns, figures)}
              rows={items}
              rowKey={({ id }) => id}
            />
          )
        }
      </Asked>
    </section>
  );
}

const columnsOf = (
  columns: (typeof RECIPES_WORDS)['en']['runColumns'],
  figures: Figures,
): readonly SheetColumn<RecordOf<'run'>>[] => [
  {
    heading: columns.run,
    names: true,
    cell: ({ id, body }) => (
      <Link to="/runs/$id" params={{ id }}>
        {body.name}
      </Link>
    ),
  },
  { heading: columns.state, cell: ({ state }) => <RunState state={state} /> },
  { heading: columns.version, figures: true, cell: ({ body }) => body.recipeVersion },
  { heading: columns.good, figures: true, cell: ({ body }) => body.goodCount },
  { heading: columns.scrap, figures: true, cell: ({ body }) => body.scrapCount },
  {
    heading: columns.closed,
    whole: true,
    cell: ({ body }) => (body.closedAt === undefined ? '—' : figures.moment(body.closedAt)),
  },
];
