import { Link } from '@tanstack/react-router';
import type { CalibrationView } from '../../../contract/index.js';
import desk from '../../parts/desk.module.css';
import { Explained } from '../../parts/explained.js';
import { type SheetColumn, SheetTable } from '../../parts/sheet-table.js';
import { useFigures } from '../../sight/figures.js';
import { CALIBRATION_WORDS } from '../../words/calibration.js';
import { useWords } from '../../words/language.js';

type Next = CalibrationView['next'][number];

/** Which string, measured and weighed, would teach most of all recipes. */
export function NextPart({ view }: { readonly view: CalibrationView }) {
  const words = useWords(CALIBRATION_WORDS).next;
  const figures = useFigures();
  const percent = (share: number) => `${figures.number(share * 100, 3)} %`;
  const columns: readonly SheetColumn<Next>[] = [
    {
      heading: words.columns.recipe,
      names: true,
      cell: ({ recipeId, name }) => (
        <Link to="/recipes/$id" params={{ id: recipeId }}>
          {name}
        </Link>
      ),
    },
    {
      heading: words.columns.gain,
      figures: true,
      cell: ({ name, gain }) => (
        <Explained name={words.gainName(name)} {...words.how}>
          {`${figures.number(gain * 100, 1)} %`}
        </Explained>
      ),
    },
    {
      heading: words.columns.diameter,
      figures: true,
      cell: ({ diameterNowM, diameterAfterM }) =>
        words.fromTo(`± ${figures.slight(diameterNowM, 1)}`, `± ${figures.slight(diameterAfterM, 1)}`),
    },
    {
      heading: words.columns.weight,
      figures: true,
      cell: ({ weightNow, weightAfterBoth }) =>
        words.fromTo(`± ${percent(weightNow)}`, `± ${percent(weightAfterBoth)}`),
    },
  ];
  return (
    <section className={desk.part} aria-labelledby="next">
      <h2 id="next">{words.title}</h2>
      <p className={desk.lead}>{words.lead}</p>
      {view.next.length === 0 ? (
        <p>{words.none}</p>
      ) : (
        <SheetTable
          caption={words.title}
          columns={columns}
          rows={view.next}
          rowKey={(each) => each.recipeId}
          middle
        />
      )}
    </section>
  );
}
