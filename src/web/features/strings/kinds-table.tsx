import { Link } from '@tanstack/react-router';
import { stringKeyInWords } from '../../../contract/index.js';
import { type LongColumn, LongTable } from '../../parts/long-table.js';
import { MeasureBar } from '../../parts/measure-bar.js';
import { type Figures, useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { STRINGS_WORDS } from '../../words/strings.js';
import { isBelowLevel, type KindLine } from './strings-book.js';

/** Each kind of string: what may be packed against what there should be. */
export function KindsTable({ kinds }: { readonly kinds: readonly KindLine[] }) {
  const words = useWords(STRINGS_WORDS);
  const figures = useFigures();
  const full = Math.max(1, ...kinds.map(({ released, reorderLevel }) => Math.max(released, reorderLevel)));
  return (
    <LongTable
      caption={words.title}
      columns={columnsOf(words, figures, full)}
      rows={kinds}
      rowKey={({ stringKey }) => stringKey}
    />
  );
}

const columnsOf = (
  words: (typeof STRINGS_WORDS)['en'],
  figures: Figures,
  full: number,
): readonly LongColumn<KindLine>[] => [
  { heading: words.columns.string, share: 5, cell: ({ stringKey }) => <KindWords stringKey={stringKey} /> },
  {
    heading: words.columns.bin,
    share: 3,
    cell: ({ bins }) =>
      bins.map(({ id, body }, at) => (
        <span key={id}>
          {at > 0 && ', '}
          <Link to="/strings" search={{ bin: id }}>
            {body.name}
          </Link>
        </span>
      )),
  },
  {
    heading: words.columns.released,
    share: 2,
    figures: true,
    cell: (kind) => (
      <span className={isBelowLevel(kind) ? 'care' : undefined}>{figures.number(kind.released)}</span>
    ),
  },
  {
    heading: words.columns.level,
    share: 2,
    figures: true,
    cell: ({ reorderLevel }) => (reorderLevel === 0 ? words.toOrder : figures.number(reorderLevel)),
  },
  {
    heading: words.columns.bar,
    share: 4,
    cell: ({ released, reorderLevel }) => <MeasureBar value={released} full={full} mark={reorderLevel} />,
  },
  {
    heading: words.columns.inCheck,
    share: 2,
    figures: true,
    cell: ({ inCheck }) => (inCheck === 0 ? words.none : figures.number(inCheck)),
  },
  {
    heading: words.columns.onHold,
    share: 2,
    figures: true,
    cell: ({ onHold }) =>
      onHold === 0 ? words.none : <span className="care">▲ {figures.number(onHold)}</span>,
  },
];

/** A kind of string: what it is, and its finish in smaller words. */
export function KindWords({ stringKey }: { readonly stringKey: string }) {
  const { short, material, finish } = stringKeyInWords(stringKey);
  return (
    <>
      <strong>{short}</strong> {material} <span className="quiet small">{finish}</span>
    </>
  );
}
