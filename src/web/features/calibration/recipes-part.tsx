import { Link } from '@tanstack/react-router';
import type { CalibrationView } from '../../../contract/index.js';
import desk from '../../parts/desk.module.css';
import { type LongColumn, LongTable } from '../../parts/long-table.js';
import { useFigures } from '../../sight/figures.js';
import { CALIBRATION_WORDS } from '../../words/calibration.js';
import { useWords } from '../../words/language.js';
import { RecipeState } from '../recipes/recipe-state.js';

type Standing = CalibrationView['recipes'][number];

/** Every recipe of which strings were measured, beside the rule by which it may be called calibrated. */
export function RecipesPart({ view }: { readonly view: CalibrationView }) {
  const words = useWords(CALIBRATION_WORDS).recipes;
  const figures = useFigures();
  const { rule } = view;
  const measured = view.recipes
    .filter(({ strings }) => strings > 0)
    .toSorted((a, b) => Number(b.mayBeCalibrated) - Number(a.mayBeCalibrated) || b.strings - a.strings);
  const columns: readonly LongColumn<Standing>[] = [
    {
      heading: words.columns.recipe,
      share: 3,
      cell: ({ recipeId, name }) => (
        <Link to="/recipes/$id" params={{ id: recipeId }}>
          {name}
        </Link>
      ),
    },
    { heading: words.columns.state, share: 2, cell: ({ state }) => <RecipeState state={state} /> },
    { heading: words.columns.strings, figures: true, cell: ({ strings }) => figures.number(strings) },
    { heading: words.columns.runs, figures: true, cell: ({ runs }) => figures.number(runs) },
    {
      heading: words.columns.diameter,
      share: 2,
      figures: true,
      cell: ({ meanDiameterM }) => figures.diameter(meanDiameterM.value),
    },
    {
      heading: words.columns.within,
      share: 2,
      figures: true,
      cell: ({ halfIntervalM }) => `± ${figures.slight(halfIntervalM)}`,
    },
    { heading: words.columns.rule, share: 4, cell: (each) => verdictOf(each, words) },
  ];
  return (
    <section className={desk.part} aria-labelledby="recipes-measured">
      <h2 id="recipes-measured">{words.title}</h2>
      <p className={desk.lead}>
        {words.rule(
          rule.strings,
          rule.runs,
          figures.slight(rule.shareOfTolerance * rule.toleranceM),
          figures.slight(rule.toleranceM),
        )}
      </p>
      <LongTable
        caption={words.title}
        columns={columns}
        rows={measured}
        rowKey={({ recipeId }) => recipeId}
        isWide
      />
    </section>
  );
}

/** The first thing that the rule still asks for. */
function verdictOf(
  { mayBeCalibrated, hasStrings, isNarrow, stringsToHalve }: Standing,
  words: (typeof CALIBRATION_WORDS)['en']['recipes'],
): string {
  if (mayBeCalibrated) return words.meets;
  if (!hasStrings) return words.tooFew;
  return isNarrow ? words.disagrees : words.tooWide(stringsToHalve);
}
