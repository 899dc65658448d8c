import { Link } from '@tanstack/react-router';
import type { LyingStrings } from '../../../contract/index.js';
import desk from '../../parts/desk.module.css';
import { type SheetColumn, SheetTable } from '../../parts/sheet-table.js';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { STRINGS_WORDS } from '../../words/strings.js';
import { LotState } from './lot-state.js';

/** What lies in a bin, for those who do not count it. */
export function BinContents({ lying }: { readonly lying: readonly LyingStrings[] }) {
  const words = useWords(STRINGS_WORDS);
  const figures = useFigures();
  const columns: readonly SheetColumn<LyingStrings>[] = [
    {
      heading: words.lotColumns.lot,
      names: true,
      cell: ({ lotId, lot }) => (
        <Link to="/strings" search={{ lot: lotId }}>
          {lot}
        </Link>
      ),
    },
    { heading: words.lotColumns.state, cell: ({ state }) => <LotState state={state} /> },
    { heading: words.lotColumns.count, figures: true, cell: ({ count }) => figures.number(count) },
  ];
  return (
    <section className={desk.part} aria-labelledby="contents">
      <h2 id="contents">{words.columns.lots}</h2>
      {lying.length === 0 ? (
        <p className="quiet">{words.binEmpty}</p>
      ) : (
        <SheetTable
          caption={words.columns.lots}
          columns={columns}
          rows={lying}
          rowKey={({ lotId }) => lotId}
        />
      )}
    </section>
  );
}
