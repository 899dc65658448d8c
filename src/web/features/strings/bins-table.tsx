import { Link } from '@tanstack/react-router';
import type { LyingStrings } from '../../../contract/index.js';
import { type LongColumn, LongTable } from '../../parts/long-table.js';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { STRINGS_WORDS } from '../../words/strings.js';
import { KindWords } from './kinds-table.js';
import type { BinRecord } from './strings-book.js';

interface BinsTableProps {
  readonly bins: readonly BinRecord[];
  readonly lying: readonly LyingStrings[];
}

/** Bin after bin in the order of the walk: what it is for and what lies in it. */
export function BinsTable({ bins, lying }: BinsTableProps) {
  const words = useWords(STRINGS_WORDS);
  const figures = useFigures();
  const inBin = (id: string) => lying.filter(({ binId }) => binId === id);
  const { columns: heads } = words;
  const columns: readonly LongColumn<BinRecord>[] = [
    {
      heading: heads.bin,
      share: 2,
      cell: ({ id, body }) => (
        <Link to="/strings" search={{ bin: id }}>
          {body.name}
        </Link>
      ),
    },
    {
      heading: heads.holds,
      share: 4,
      cell: ({ body }) =>
        body.stringKey === undefined ? words.anyString : <KindWords stringKey={body.stringKey} />,
    },
    { heading: heads.lots, figures: true, cell: ({ id }) => inBin(id).length || words.none },
    {
      heading: heads.strings,
      figures: true,
      cell: ({ id }) => figures.number(inBin(id).reduce((sum, { count }) => sum + count, 0)),
    },
    {
      heading: heads.level,
      figures: true,
      cell: ({ body }) => (body.reorderLevel === 0 ? words.none : figures.number(body.reorderLevel)),
    },
  ];
  return (
    <LongTable
      caption={words.title}
      columns={columns}
      rows={bins.toSorted((a, b) => a.body.walkOrder - b.body.walkOrder)}
      rowKey={({ id }) => id}
    />
  );
}
