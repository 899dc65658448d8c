import { Link } from '@tanstack/react-router';
import { kgFromMg, mFromMm } from '../../../core/stock/index.js';
import { useMay } from '../../api/session.js';
import { useReadingPages } from '../../api/use-reading-pages.js';
import { useWho } from '../../api/use-who.js';
import desk from '../../parts/desk.module.css';
import { type LongColumn, LongTable } from '../../parts/long-table.js';
import { type Figures, useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { MOVEMENTS_WORDS } from '../../words/movements.js';
import { type MovementLine, type MovementView, movementLine } from './movement-line.js';
import { useAccountWords } from './use-account-words.js';

/** What was moved from and to an account, or of an item, newest first; more as one goes down. */
export function MovementsPart(view: MovementView) {
  const words = useWords(MOVEMENTS_WORDS);
  const figures = useFigures();
  const accountWords = useAccountWords();
  const whoOf = useWho();
  const may = useMay();
  const pages = useReadingPages('movements', view);
  const lines = (pages.data?.pages ?? []).flatMap(({ items }) => items.map((one) => movementLine(one, view)));
  const { columns } = words;
  const names = (accounts: readonly string[]) => accounts.map(accountWords).join(', ');
  const cells: readonly LongColumn<MovementLine>[] = [
    { heading: columns.at, share: 4, cell: ({ movement }) => figures.moment(movement.at) },
    { heading: columns.what, share: 2, cell: ({ movement }) => words.whats[movement.what] ?? movement.what },
    {
      heading: columns.moved,
      share: 3,
      figures: true,
      cell: ({ moved }) => movedInFigures(moved, figures, view.account !== undefined),
    },
    { heading: columns.from, share: 3, cell: ({ from }) => names(from) },
    { heading: columns.to, share: 4, cell: ({ to }) => names(to) },
    {
      heading: columns.by,
      share: 4,
      cell: ({ movement }) =>
        movement.ofKind === 'run' && may('run.read') ? (
          <>
            {whoOf(movement.by)},{' '}
            <Link to="/runs/$id" params={{ id: movement.ofId }}>
              {words.accounts.run}
            </Link>
          </>
        ) : (
          whoOf(movement.by)
        ),
    },
    { heading: columns.reason, share: 3, cell: ({ movement }) => movement.reason || '—' },
  ];
  return (
    <section className={desk.part} aria-labelledby="movements">
      <h2 id="movements">{words.title}</h2>
      {pages.isSuccess && lines.length === 0 ? (
        <p className="quiet">{words.none}</p>
      ) : (
        <LongTable
          caption={words.title}
          isWide
          columns={cells}
          rows={lines}
          rowKey={({ movement }) => movement.id}
          onNearEnd={pages.hasNextPage ? () => void pages.fetchNextPage() : undefined}
        />
      )}
    </section>
  );
}

/** Seen from an account it has a sign: what came, and what left. */
function movedInFigures(moved: MovementLine['moved'], figures: Figures, isSigned: boolean): string {
  const { mg, mm, pieces } = moved;
  const signed = (value: number, text: string) => (isSigned && value > 0 ? `+${text}` : text);
  return [
    ...(mg === undefined ? [] : [signed(mg, figures.weight(kgFromMg(mg)))]),
    ...(mm === undefined ? [] : [figures.metres(mFromMm(mm))]),
    ...(pieces === undefined ? [] : [signed(pieces, figures.number(pieces))]),
  ].join(', ');
}
