import type { DialQuantity, MeasuredTable } from '../../../core/winding/index.js';
import { asDialReading } from '../../../core/winding/index.js';
import { useWho } from '../../api/use-who.js';
import { useQueued } from '../../outbox/index.js';
import { Button } from '../../parts/button.js';
import styles from '../../parts/floor.module.css';
import { Picture } from '../../parts/picture.js';
import { type SheetColumn, SheetTable } from '../../parts/sheet-table.js';
import { useFigures } from '../../sight/figures.js';
import { DIAL_ROUND_WORDS } from '../../words/dial-round.js';
import { useWords } from '../../words/language.js';
import type { RoundNow } from './round-now.js';
import { type DrawnReading, RoundPicture } from './round-picture.js';
import type { DialRound } from './use-dial-rounds.js';

interface RoundResultProps {
  readonly round: DialRound;
  readonly now: RoundNow;
}

/** What the readings say so far: the fitted table, what is off it, and what has moved since the table in force. */
export function RoundResult({ round, now: { table, drift } }: RoundResultProps) {
  const words = useWords(DIAL_ROUND_WORDS);
  const figures = useFigures();
  const { quantity } = round.body;
  if (!table) return null;
  const drawn = drawnReadings(round, table);
  const against = table.against.map((dial) => figures.number(dial, 2));
  const unsettled = table.rows
    .filter(({ isSettled }) => !isSettled)
    .map(({ dial }) => figures.number(dial, 2));
  const merged = table.rows.length - table.table.length;
  return (
    <div className={styles.part}>
      <p>{words.spread(figures.number(100 * table.spreadShare, 2))}</p>
      {drift && (
        <p>
          <strong>
            {drift.isProven
              ? words.moved(figures.number(100 * drift.share, 2), figures.number(100 * drift.u, 2))
              : words.notMoved(figures.number(100 * drift.share, 2), figures.number(100 * drift.u, 2))}
          </strong>
        </p>
      )}
      {unsettled.length > 0 && <p className="care">{words.unsettled(unsettled.join(', '))}</p>}
      {against.length > 0 && <p className="care">{words.against(against.join(', '))}</p>}
      {merged > 0 && <p className="care">{words.merged(merged)}</p>}
      <Picture
        title={words.resultTitle}
        picture={<RoundPicture readings={drawn} drift={drift} />}
        table={<TableOfRows table={table} quantity={quantity} drift={drift} />}
        caption={<p className="quiet small">{words.method}</p>}
      />
      <Readings round={round} drawn={drawn} />
    </div>
  );
}

function drawnReadings({ body }: DialRound, table: MeasuredTable): readonly DrawnReading[] {
  const aside = new Set(table.rows.flatMap(({ asideIds }) => asideIds));
  return body.readings.flatMap((each) => {
    const read = asDialReading(each, body.readingError);
    const row = table.rows.find(({ dial }) => dial === each.dial);
    if (!read || !row) return [];
    const counts = !each.isStruck && !aside.has(each.readingId);
    return [{ id: each.readingId, dial: each.dial, offPercent: 100 * (read.value / row.fitted - 1), counts }];
  });
}

interface TableOfRowsProps {
  readonly table: MeasuredTable;
  readonly quantity: DialQuantity;
  readonly drift: RoundNow['drift'];
}

function TableOfRows({ table, quantity, drift }: TableOfRowsProps) {
  const words = useWords(DIAL_ROUND_WORDS);
  const figures = useFigures();
  const shown = (value: number) =>
    quantity === 'pull' ? figures.number(value, 2) : figures.number(value * 1000, 5);
  const columns: readonly SheetColumn<MeasuredTable['rows'][number]>[] = [
    { heading: words.columns.dial, names: true, cell: ({ dial }) => figures.number(dial, 2) },
    { heading: words.columns.value[quantity], figures: true, cell: ({ value }) => shown(value) },
    { heading: words.columns.u, figures: true, cell: ({ value, u }) => figures.number((100 * u) / value, 2) },
    { heading: words.columns.fitted[quantity], figures: true, cell: ({ fitted }) => shown(fitted) },
    {
      heading: words.columns.off,
      figures: true,
      cell: ({ off, fitted }) => figures.number((100 * off) / fitted, 2),
    },
    {
      heading: words.columns.moved,
      figures: true,
      cell: ({ dial }) => {
        const row = drift?.rows.find((each) => each.dial === dial);
        return row ? figures.number(100 * row.share, 2) : '—';
      },
    },
  ];
  return (
    <SheetTable caption={words.resultTitle} columns={columns} rows={table.rows} rowKey={({ dial }) => dial} />
  );
}

/** Each reading by itself, with who read it: a slip is struck out here, and let count again. */
function Readings({ round, drawn }: { readonly round: DialRound; readonly drawn: readonly DrawnReading[] }) {
  const words = useWords(DIAL_ROUND_WORDS);
  const figures = useFigures();
  const who = useWho();
  const strike = useQueued('strike-dial-reading');
  const { readings, quantity } = round.body;
  const isOpen = round.state === 'open';
  const columns: readonly SheetColumn<(typeof readings)[number]>[] = [
    { heading: words.columns.dial, names: true, cell: ({ dial }) => figures.number(dial, 2) },
    {
      heading: words.columns.read,
      figures: true,
      cell: ({ read }) =>
        'pullN' in read
          ? words.pullRead(figures.number(read.pullN, 2))
          : words.travelRead(
              read.turns,
              figures.number(read.startM * 1000, 2),
              figures.number(read.endM * 1000, 2),
            ),
    },
    { heading: words.columns.instrument, cell: ({ instrument }) => instrument },
    { heading: words.columns.who, cell: ({ by, at }) => words.whoWhen(who(by), figures.moment(at)) },
    {
      heading: words.columns.counts,
      cell: ({ readingId, dial, isStruck }) => {
        const counts = drawn.find(({ id }) => id === readingId)?.counts ?? false;
        const said = isStruck ? words.struck : counts ? words.counts : words.aside;
        if (!isOpen) return said;
        const number = figures.number(dial, 2);
        return (
          <span className={styles.doing}>
            {said}
            <Button
              aria-label={isStruck ? words.unstrikeIt(number) : words.strikeIt(number)}
              onClick={() =>
                void strike.enter(
                  { roundId: round.id, readingId, isStruck: !isStruck },
                  { label: words.strikeIt(number), about: [round.id] },
                )
              }
            >
              {isStruck ? words.unstrike : words.strike}
            </Button>
          </span>
        );
      },
    },
  ];
  return (
    <SheetTable
      caption={words.readings[quantity]}
      columns={columns}
      rows={readings}
      rowKey={({ readingId }) => readingId}
    />
  );
}
