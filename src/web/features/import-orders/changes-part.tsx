import desk from '../../parts/desk.module.css';
import { type SheetColumn, SheetTable } from '../../parts/sheet-table.js';
import { StateMark, type StateTone } from '../../parts/state-mark.js';
import { useWords } from '../../words/language.js';
import { ORDERS_WORDS } from '../../words/orders.js';
import { outcomesOf, type Preview } from './mapping.js';

type Order = Preview['orders'][number];

const TONES: Readonly<Record<Order['outcome'], StateTone>> = {
  new: 'waits',
  changed: 'goes',
  same: 'done',
  fault: 'care',
};
/** What is as it was is counted; what changes is shown first, and of a large file not without end. */
const MOST_SHOWN = 200;

/** What would become of each order of the file. */
export function ChangesPart({ preview }: { readonly preview: Preview }) {
  const words = useWords(ORDERS_WORDS);
  const { changeColumns, outcomes } = words;
  const counts = outcomesOf(preview);
  const inWords = (lines: Order['lines']) =>
    (lines ?? []).map(({ quantity, setName }) => words.lineInWords(quantity, setName)).join('; ');
  const columns: readonly SheetColumn<Order>[] = [
    { heading: changeColumns.order, names: true, cell: ({ number }) => number },
    {
      heading: changeColumns.outcome,
      whole: true,
      cell: ({ outcome }) => <StateMark tone={TONES[outcome]}>{outcomes[outcome]}</StateMark>,
    },
    { heading: changeColumns.lines, cell: ({ fileLines }) => fileLines.join(', ') },
    { heading: changeColumns.would, wide: true, cell: ({ lines }) => inWords(lines) },
    { heading: changeColumns.was, wide: true, cell: ({ before }) => inWords(before) },
  ];
  const changing = preview.orders.filter(({ outcome }) => outcome !== 'same');
  return (
    <section aria-labelledby="changes" className={desk.stack}>
      <h2 id="changes">{words.changes}</h2>
      <p role="status">
        {(Object.keys(outcomes) as Order['outcome'][])
          .filter((outcome) => counts[outcome] > 0)
          .map((outcome) => words.outcomeCount(outcomes[outcome], counts[outcome]))
          .join(' · ')}
      </p>
      {changing.length > 0 && (
        <SheetTable
          caption={words.changes}
          columns={columns}
          rows={changing.slice(0, MOST_SHOWN)}
          rowKey={({ number }) => number}
        />
      )}
    </section>
  );
}
