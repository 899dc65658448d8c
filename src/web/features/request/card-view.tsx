import { Link } from '@tanstack/react-router';
import { type CardString, cardGauge, type PlayerCard, playerCard } from '../../../contract/index.js';
import { metresFromThou } from '../../../core/units/index.js';
import type { RecordOf } from '../../api/use-records.js';
import { useReading } from '../../api/use-records.js';
import { Button, buttonClass } from '../../parts/button.js';
import { Empty } from '../../parts/empty.js';
import { RoomTitle } from '../../parts/room-title.js';
import { type SheetColumn, SheetTable } from '../../parts/sheet-table.js';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { REQUESTS_WORDS } from '../../words/requests.js';
import type { DrawnString } from '../set/drawn-string.js';
import { StringsPicture } from '../set/strings-picture.js';
import styles from './card-view.module.css';
import { cardPath } from './given-part.js';

/** The card that goes back to a player, as a page that prints. */
export function CardView({ record }: { readonly record: RecordOf<'request'> }) {
  const { card: words, next } = useWords(REQUESTS_WORDS);
  const { pull } = useFigures();
  const { id, body } = record;
  const card = playerCard(body, pull);
  return (
    <div className={styles.card}>
      <div className={`${styles.steps} on-screen`}>
        <Link to="/requests/$id" params={{ id }}>
          {words.back}
        </Link>
        {card && (
          <>
            <a href={cardPath(id)} className={buttonClass()}>
              {next.pdf}
            </a>
            <Button kind="main" onClick={() => window.print()}>
              {words.print}
            </Button>
          </>
        )}
      </div>
      <RoomTitle title={words.title(body.player)} />
      {card ? <Told card={card} changed={record.updatedAt} /> : <Empty what={words.none} />}
    </div>
  );
}

function Told({ card, changed }: { readonly card: PlayerCard; readonly changed: string }) {
  const { card: words } = useWords(REQUESTS_WORDS);
  const { date } = useFigures();
  const shop = useReading('now', {}).data?.shop ?? '';
  return (
    <>
      <p className={styles.gauges}>{card.gauges}</p>
      <p>{card.about}</p>
      <StringsPicture strings={card.strings.map(drawnCard)} />
      <section aria-labelledby="feel">
        <h2 id="feel">{words.feel}</h2>
        <FeelTable strings={card.strings} />
      </section>
      <section aria-labelledby="neck">
        <h2 id="neck">{words.neck}</h2>
        {card.neck.map((sentence) => (
          <p key={sentence}>{sentence}</p>
        ))}
      </section>
      <section aria-labelledby="mind">
        <h2 id="mind">{words.mind}</h2>
        {card.mind.map((sentence) => (
          <p key={sentence}>{sentence}</p>
        ))}
      </section>
      <p className="small quiet">{card.known}</p>
      <p className="small quiet">{words.from(shop, date(changed.slice(0, 10)))}</p>
    </>
  );
}

function FeelTable({ strings }: { readonly strings: readonly CardString[] }) {
  const { card: words, answer } = useWords(REQUESTS_WORDS);
  const { pull } = useFigures();
  const isLiked = strings.some(({ likedTensionN }) => likedTensionN !== undefined);
  const columns: readonly SheetColumn<CardString>[] = [
    { heading: words.string, names: true, cell: ({ position }) => position },
    { heading: answer.note, cell: ({ note }) => note },
    { heading: answer.gauge, whole: true, cell: ({ spec }) => cardGauge(spec) },
    { heading: words.pull, figures: true, cell: ({ tensionN }) => pull(tensionN) },
    { heading: words.wished, figures: true, cell: ({ wishedTensionN }) => pull(wishedTensionN) },
    ...(isLiked ? [{ heading: words.beside, wide: true, cell: ({ feel }: CardString) => feel }] : []),
  ];
  return (
    <SheetTable caption={words.feel} columns={columns} rows={strings} rowKey={({ position }) => position} />
  );
}

const drawnCard = ({
  position,
  note,
  spec,
  speakingLengthM,
  tensionN,
  wishedTensionN,
}: CardString): DrawnString => ({
  position,
  note,
  gauge: cardGauge(spec),
  kind: spec.kind,
  diameterM: metresFromThou(spec.gaugeThou),
  speakingLengthM,
  tensionN,
  wishedTensionN,
});
