import { useMe } from '../api/session.js';
import { Button } from '../parts/button.js';
import { useTell } from '../parts/notices.js';
import { StateMark, type StateTone } from '../parts/state-mark.js';
import { useFigures } from '../sight/figures.js';
import { useWords } from '../words/language.js';
import { OUTBOX_WORDS } from '../words/outbox.js';
import type { QueuedEntry } from './entry.js';
import { stoppedByRefusal } from './order-of-sending.js';
import styles from './outbox-bar.module.css';
import { useOutbox } from './use-outbox.js';

type Standing = 'waiting' | 'sending' | 'refused' | 'stopped' | 'other';

const TONES: Readonly<Record<Standing, StateTone>> = {
  waiting: 'waits',
  sending: 'goes',
  refused: 'care',
  stopped: 'stopped',
  other: 'waits',
};

/** All that the shop has not got yet, in the order of entry. What was never sent can be taken back here. */
export function EntryList() {
  const words = useWords(OUTBOX_WORDS);
  const figures = useFigures();
  const tell = useTell();
  const me = useMe().person.id;
  const { entries, discard } = useOutbox();
  const stopped = stoppedByRefusal(entries);
  const takeBack = async (number: number) => {
    if (!(await discard(number))) tell({ kind: 'care', text: words.goneAlready });
  };
  return (
    <ol className={styles.entries} aria-label={words.listTitle}>
      {entries
        .filter(({ state }) => state !== 'done')
        .map((entry) => {
          const standing = standingOf(entry, { me, stopped });
          return (
            <li key={entry.number} className={styles.entry}>
              <StateMark tone={TONES[standing]}>{words.states[standing]}</StateMark>
              <span>{entry.label}</span>
              <span className="quiet small">{words.enteredAt(figures.time(entry.at))}</span>
              {(standing === 'waiting' || standing === 'stopped') && (
                <Button onClick={() => void takeBack(entry.number)}>{words.takeBack}</Button>
              )}
            </li>
          );
        })}
    </ol>
  );
}

function standingOf(
  { state, by, number }: QueuedEntry,
  { me, stopped }: { readonly me: string; readonly stopped: ReadonlySet<number> },
): Standing {
  if (state === 'refused') return 'refused';
  if (by.id !== me) return 'other';
  if (stopped.has(number)) return 'stopped';
  return state === 'sending' ? 'sending' : 'waiting';
}
