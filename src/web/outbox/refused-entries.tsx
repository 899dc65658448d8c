import { useNavigate } from '@tanstack/react-router';
import { useEffect, useRef, useState } from 'react';
import { useMe } from '../api/session.js';
import { Button } from '../parts/button.js';
import { Dialog } from '../parts/dialog.js';
import { ProblemBox } from '../parts/problem-box.js';
import { useSound } from '../parts/sound.js';
import { useWords } from '../words/language.js';
import { OUTBOX_WORDS } from '../words/outbox.js';
import { versionNow } from './decisions.js';
import type { QueuedEntry } from './entry.js';
import { stoppedByRefusal } from './order-of-sending.js';
import styles from './outbox-bar.module.css';
import { useOutbox } from './use-outbox.js';

/** What the shop refused of the person who is signed in: its own words, and the ways on. Kept until one is chosen. */
export function RefusedEntries() {
  const me = useMe().person.id;
  const { entries } = useOutbox();
  const refused = entries.filter(({ state, by }) => state === 'refused' && by.id === me);
  useSoundOfMore(refused.length);
  return refused.map((entry) => <Refused key={entry.number} entry={entry} />);
}

function Refused({ entry }: { readonly entry: QueuedEntry }) {
  const words = useWords(OUTBOX_WORDS);
  const navigate = useNavigate();
  const { entries, sendAgain, discard, edit } = useOutbox();
  const [asks, setAsks] = useState(false);
  const { number, label, place, problem } = entry;
  const current = versionNow(entry);
  const behind = countBehind(entries, entry);
  return (
    <article className={styles.refused} aria-label={words.refusedTitle(label)}>
      <h2>{words.refusedTitle(label)}</h2>
      <ProblemBox problem={problem} />
      {current !== undefined && <p>{words.changedMeanwhile(current)}</p>}
      {behind > 0 && <p>{words.behind(behind)}</p>}
      <div className={styles.choices}>
        <Button kind="main" size="floor" onClick={() => void sendAgain(number)}>
          {current === undefined ? words.sendAgain : words.sendUpon}
        </Button>
        {place !== undefined && (
          <Button
            size="floor"
            onClick={() => {
              edit(number);
              void navigate({ href: place });
            }}
          >
            {words.mend}
          </Button>
        )}
        <Button kind="grave" size="floor" onClick={() => setAsks(true)}>
          {words.discard}
        </Button>
      </div>
      <Dialog
        title={words.discardTitle}
        open={asks}
        onClose={() => setAsks(false)}
        actions={
          <Button kind="grave" onClick={() => void discard(number)}>
            {words.discard}
          </Button>
        }
      >
        <p>{words.discardMore(label)}</p>
        {behind > 0 && <p>{words.discardBehind(behind)}</p>}
      </Dialog>
    </article>
  );
}

/** Later entries that this one alone keeps from being sent. */
const countBehind = (entries: readonly QueuedEntry[], entry: QueuedEntry): number =>
  stoppedByRefusal([
    entry,
    ...entries.filter(({ number, state }) => number > entry.number && state !== 'refused'),
  ]).size;

/** A refusal is heard, once, when it comes. */
function useSoundOfMore(count: number): void {
  const { refused } = useSound();
  const before = useRef(count);
  useEffect(() => {
    if (count > before.current) refused();
    before.current = count;
  }, [count, refused]);
}
