import { Link } from '@tanstack/react-router';
import type { RecordOf } from '../../api/use-records.js';
import { buttonClass } from '../../parts/button.js';
import desk from '../../parts/desk.module.css';
import { Facts } from '../../parts/facts.js';
import { RoomTitle } from '../../parts/room-title.js';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { REQUESTS_WORDS } from '../../words/requests.js';
import { GivenPart } from './given-part.js';
import styles from './request-part.module.css';
import { RequestState } from './request-state.js';
import { askedInShort } from './request-words.js';

/** A request that is over: what was asked, and what came of it. It is not answered anew. */
export function ClosedRequest({ record }: { readonly record: RecordOf<'request'> }) {
  const words = useWords(REQUESTS_WORDS);
  const { number } = useFigures();
  const { state, body } = record;
  return (
    <div className={desk.room}>
      <header className={desk.head}>
        <div>
          <RoomTitle title={words.room.title(body.player)} />
          <RequestState record={record} />
        </div>
        <Link to="/requests">{words.room.all}</Link>
      </header>
      <div className={desk.row}>
        <p>{words.room.closed[state]}</p>
        {body.orderId && (
          <Link to="/orders/$id" params={{ id: body.orderId }} className={buttonClass('main')}>
            {words.room.toOrder}
          </Link>
        )}
      </div>
      <Facts
        facts={[
          { name: words.stale.asked, value: askedInShort(body.request) },
          { name: words.stale.quantity, value: number(body.quantity) },
        ]}
      />
      {body.letter !== '' && (
        <section aria-labelledby="letter" className={desk.part}>
          <h2 id="letter">{words.stale.letter}</h2>
          <blockquote className={styles.letter}>{body.letter}</blockquote>
        </section>
      )}
      <GivenPart record={record} mayAnswer={false} />
    </div>
  );
}
