import { useState } from 'react';
import { useWords } from '../words/language.js';
import { PARTS_WORDS } from '../words/parts.js';
import { Button } from './button.js';
import styles from './entries-so-far.module.css';

interface EntriesSoFarProps {
  readonly title: string;
  /** On the button that opens the list. */
  readonly show: string;
  /** The newest first. */
  readonly entries: readonly {
    readonly id: string;
    readonly what: string;
    /** When and by whom. */
    readonly more: string;
    readonly takeBack: () => Promise<unknown>;
  }[];
}

/** So many are shown at once: what a hand may have got wrong is among the last. */
const SHOWN = 20;

/** What was entered so far, a touch away; each with the touch that takes it back. */
export function EntriesSoFar({ title, show, entries }: EntriesSoFarProps) {
  const words = useWords(PARTS_WORDS);
  const [isOpen, setOpen] = useState(false);
  const [shown, setShown] = useState(SHOWN);
  const [said, setSaid] = useState('');
  if (!isOpen)
    return (
      <div>
        <Button size="floor" aria-expanded={false} onClick={() => setOpen(true)}>
          {show}
        </Button>
      </div>
    );
  return (
    <section aria-label={title}>
      <h3>{title}</h3>
      <p role="status">{said}</p>
      <ol className={styles.entries}>
        {entries.slice(0, shown).map(({ id, what, more, takeBack }) => (
          <li key={id} className={styles.entry}>
            <span>
              {what} <span className="quiet">{more}</span>
            </span>
            <Button
              size="floor"
              aria-label={words.takeBackOf(what)}
              onClick={() => void takeBack().then(() => setSaid(words.tookBack(what)))}
            >
              {words.takeBack}
            </Button>
          </li>
        ))}
      </ol>
      {shown < entries.length && (
        <Button size="floor" onClick={() => setShown(shown + SHOWN)}>
          {words.olderEntries}
        </Button>
      )}
      <Button size="floor" aria-expanded onClick={() => setOpen(false)}>
        {words.closeEntries}
      </Button>
    </section>
  );
}
