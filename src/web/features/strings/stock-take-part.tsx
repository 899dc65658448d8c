import { TextInput } from '@mantine/core';
import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import type { LyingStrings } from '../../../contract/index.js';
import { useDo } from '../../api/use-do.js';
import { AmountField } from '../../parts/amount-field.js';
import { Button } from '../../parts/button.js';
import desk from '../../parts/desk.module.css';
import { useTell } from '../../parts/notices.js';
import { ProblemBox } from '../../parts/problem-box.js';
import { type SheetColumn, SheetTable } from '../../parts/sheet-table.js';
import { useWords } from '../../words/language.js';
import { STRINGS_WORDS } from '../../words/strings.js';
import { AnotherLot } from './another-lot.js';
import { KindWords } from './kinds-table.js';
import { LotState } from './lot-state.js';
import { COUNT_RULE, type CountLine, stockTake } from './stock-take.js';
import type { BinRecord } from './strings-book.js';

type Counted = Pick<LyingStrings, 'lotId' | 'lot' | 'stringKey' | 'state' | 'count'>;

interface StockTakePartProps {
  readonly bin: BinRecord;
  readonly lying: readonly LyingStrings[];
}

/** A bin counted lot by lot against the books, and written in one go. */
export function StockTakePart({ bin, lying }: StockTakePartProps) {
  const words = useWords(STRINGS_WORDS);
  const [typed, setTyped] = useState<Readonly<Record<string, string>>>({});
  const [found, setFound] = useState<readonly Counted[]>([]);
  const [reason, setReason] = useState('');
  const lots = [...lying, ...found.filter(({ lotId }) => lying.every((one) => one.lotId !== lotId))];
  const take = stockTake(lots, typed, reason);
  const clear = () => {
    setTyped({});
    setReason('');
    setFound([]);
  };
  const { busy, problem, write } = useWriteTake(bin, clear);
  return (
    <section className={desk.part} aria-labelledby="stock-take">
      <h2 id="stock-take">{words.stockTake}</h2>
      <p className="quiet">{lots.length === 0 ? words.binEmpty : words.stockTakeLead}</p>
      {lots.length > 0 && (
        <SheetTable
          caption={words.stockTake}
          columns={columnsOf(words, typed, bin.body.stringKey === undefined, (lotId, text) =>
            setTyped({ ...typed, [lotId]: text }),
          )}
          rows={take.lines}
          rowKey={({ lotId }) => lotId}
          middle
        />
      )}
      <AnotherLot
        stringKey={bin.body.stringKey}
        taken={lots.map(({ lotId }) => lotId)}
        onFound={(lot) => setFound([...found, lot])}
      />
      {take.counted > 0 && (
        <>
          <p role="status">{words.takeSum(take.differing, take.counted)}</p>
          {take.differing > 0 && (
            <TextInput
              label={words.takeReason}
              description={words.takeReasonHint}
              value={reason}
              onChange={(event) => setReason(event.currentTarget.value)}
            />
          )}
          <div>
            <Button
              kind="main"
              busy={busy}
              disabled={!take.isWritable}
              onClick={() => void write(take.lines, reason.trim())}
            >
              {words.writeTake}
            </Button>
          </div>
        </>
      )}
      <ProblemBox problem={problem} />
    </section>
  );
}

/** Writes one lot after the other; each that differs can be set back to what the books said. */
function useWriteTake(bin: BinRecord, onWritten: () => void) {
  const words = useWords(STRINGS_WORDS);
  const tell = useTell();
  const count = useDo('count-strings');
  const write = async (lines: readonly CountLine[], reason: string) => {
    const differing = lines.filter((line) => line.counted !== undefined && line.counted !== line.onBook);
    const written: CountLine[] = [];
    for (const line of differing) {
      const { lotId, counted = line.onBook } = line;
      const answer = await count.run({ binId: bin.id, lotId, counted, reason });
      if (!answer.ok) {
        if (written.length > 0)
          tell({ kind: 'care', text: words.tookSome(written.length, differing.length) });
        return;
      }
      written.push(line);
    }
    onWritten();
    tell({
      text: words.tookStock(bin.body.name),
      ...(written.length === 0
        ? {}
        : {
            undo: async () => {
              for (const { lotId, onBook } of written)
                await count.run({ binId: bin.id, lotId, counted: onBook, reason: words.tookBack });
            },
          }),
    });
  };
  return { busy: count.busy, problem: count.problem, write };
}

const columnsOf = (
  words: (typeof STRINGS_WORDS)['en'],
  typed: Readonly<Record<string, string>>,
  isMixed: boolean,
  onText: (lotId: string, text: string) => void,
): readonly SheetColumn<CountLine>[] => [
  {
    heading: words.takeColumns.lot,
    names: true,
    cell: ({ lotId, lot }) => (
      <Link to="/strings" search={{ lot: lotId }}>
        {lot}
      </Link>
    ),
  },
  ...(isMixed
    ? [
        {
          heading: words.lotColumns.string,
          cell: ({ stringKey }: CountLine) => <KindWords stringKey={stringKey} />,
        },
      ]
    : []),
  { heading: words.takeColumns.state, cell: ({ state }) => <LotState state={state} /> },
  { heading: words.takeColumns.book, figures: true, cell: ({ onBook }) => onBook },
  {
    heading: words.takeColumns.counted,
    cell: ({ lotId, lot }) => (
      <AmountField
        label={words.countedOf(lot)}
        isLabelUnseen
        rule={COUNT_RULE}
        text={typed[lotId] ?? ''}
        onText={(text) => onText(lotId, text)}
      />
    ),
  },
  {
    heading: words.takeColumns.difference,
    cell: ({ counted, onBook }) => <Difference by={counted === undefined ? undefined : counted - onBook} />,
  },
];

function Difference({ by }: { readonly by: number | undefined }) {
  const words = useWords(STRINGS_WORDS);
  if (by === undefined) return <span className="quiet">{words.notCounted}</span>;
  if (by === 0) return words.agrees;
  return <strong className="care">{by > 0 ? `+${by}` : by}</strong>;
}
