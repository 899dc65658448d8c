import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import { materialInWords } from '../../../contract/index.js';
import type { RecordOf } from '../../api/use-records.js';
import { Button, buttonClass } from '../../parts/button.js';
import desk from '../../parts/desk.module.css';
import { Explained } from '../../parts/explained.js';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { REQUESTS_WORDS } from '../../words/requests.js';
import { SETS_WORDS } from '../../words/sets.js';
import { explainLoad } from '../set/explain-string.js';
import { DeclineDialog } from './decline-dialog.js';
import { OrderDialog } from './order-dialog.js';
import styles from './request-part.module.css';
import { answerInShort } from './request-words.js';

interface GivenPartProps {
  readonly record: RecordOf<'request'>;
  readonly mayAnswer: boolean;
}

/** The answer that the player was given, and what can be done with it. */
export function GivenPart({ record, mayAnswer }: GivenPartProps) {
  const { next, room, answer: words } = useWords(REQUESTS_WORDS);
  const { how } = useWords(SETS_WORDS);
  const figures = useFigures();
  const [open, setOpen] = useState<'order' | 'decline'>();
  const close = () => setOpen(undefined);
  const { id, state, body } = record;
  const { answer, request } = body;
  if (!answer) return null;
  const isOpen = state === 'answered' && mayAnswer;
  return (
    <section aria-labelledby="given" className={desk.part}>
      <div className={desk.head}>
        <div>
          <h2 id="given">{next.title}</h2>
          <p className={styles.gauges}>{answerInShort(body)}</p>
          <p className="quiet">
            {materialInWords(request.material)}; {words.together}{' '}
            <Explained
              name={how.loadOf}
              how={() => explainLoad({ strings: answer.strings.length }, { words: how, figures })}
            >
              {figures.pull(answer.totalTensionN)}
            </Explained>
          </p>
        </div>
        <div className={desk.row}>
          <Link to="/requests/$id" params={{ id }} search={{ view: 'card' }} className={buttonClass()}>
            {next.card}
          </Link>
          <a href={cardPath(id)} className={buttonClass()}>
            {next.pdf}
          </a>
          {isOpen && (
            <>
              <Button onClick={() => setOpen('decline')}>{room.decline}</Button>
              <Button kind="main" onClick={() => setOpen('order')}>
                {next.order}
              </Button>
            </>
          )}
        </div>
      </div>
      <OrderDialog record={record} open={open === 'order'} onClose={close} />
      <DeclineDialog record={record} open={open === 'decline'} onClose={close} />
    </section>
  );
}

/** Where the card is printed as a document. */
export const cardPath = (id: string): string => `/api/v1/requests/${id}/card.pdf`;
