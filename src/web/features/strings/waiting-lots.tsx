import { Link } from '@tanstack/react-router';
import type { LyingStrings } from '../../../contract/index.js';
import desk from '../../parts/desk.module.css';
import { type SheetColumn, SheetTable } from '../../parts/sheet-table.js';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { STRINGS_WORDS } from '../../words/strings.js';
import { KindWords } from './kinds-table.js';
import { LotState } from './lot-state.js';
import type { BinRecord } from './strings-book.js';

interface WaitingLotsProps {
  readonly bins: readonly BinRecord[];
  readonly lying: readonly LyingStrings[];
}

/** Lots in check and on hold: what somebody has to say a word to. */
export function WaitingLots({ bins, lying }: WaitingLotsProps) {
  const words = useWords(STRINGS_WORDS);
  const figures = useFigures();
  const waiting = lying.filter(({ state }) => state !== 'released');
  const binName = (id: string) => bins.find((bin) => bin.id === id)?.body.name ?? words.none;
  const { lotColumns: heads } = words;
  const columns: readonly SheetColumn<LyingStrings>[] = [
    {
      heading: heads.lot,
      names: true,
      cell: ({ lotId, lot }) => (
        <Link to="/strings" search={{ lot: lotId }}>
          {lot}
        </Link>
      ),
    },
    { heading: heads.string, wide: true, cell: ({ stringKey }) => <KindWords stringKey={stringKey} /> },
    { heading: heads.bin, cell: ({ binId }) => binName(binId) },
    { heading: heads.state, cell: ({ state }) => <LotState state={state} /> },
    { heading: heads.count, figures: true, cell: ({ count }) => figures.number(count) },
    { heading: heads.reason, wide: true, cell: ({ holdReason }) => holdReason ?? words.none },
  ];
  return (
    <section className={desk.part} aria-labelledby="waiting">
      <h2 id="waiting">{words.waiting}</h2>
      {waiting.length === 0 ? (
        <p className="quiet">{words.waitingNone}</p>
      ) : (
        <>
          <p className="quiet">{words.waitingLead}</p>
          <SheetTable
            caption={words.waiting}
            columns={columns}
            rows={waiting}
            rowKey={({ lotId, binId }) => `${lotId} ${binId}`}
          />
        </>
      )}
    </section>
  );
}
