import { useState } from 'react';
import { useMe } from '../api/session.js';
import { Button } from '../parts/button.js';
import { useSound } from '../parts/sound.js';
import { StateMark } from '../parts/state-mark.js';
import { useWords } from '../words/language.js';
import { OUTBOX_WORDS } from '../words/outbox.js';
import { EntryList } from './entry-list.js';
import styles from './outbox-bar.module.css';
import { RefusedEntries } from './refused-entries.js';
import { useOutbox } from './use-outbox.js';

/** Tells on the floor how the line to the shop stands, what waits, and what needs a person's word. */
export function OutboxBar() {
  const words = useWords(OUTBOX_WORDS);
  const sound = useSound();
  const { count } = useOutbox();
  const [isOpen, setOpen] = useState(false);
  return (
    <section aria-label={words.region} className={styles.bar}>
      <div className={styles.line}>
        <Standing />
        <div className={styles.doing}>
          {count > 0 && (
            <Button aria-expanded={isOpen} onClick={() => setOpen(!isOpen)}>
              {isOpen ? words.hide : words.show}
            </Button>
          )}
          <Button kind="bare" onClick={() => sound.turn(!sound.isOn)}>
            {sound.isOn ? words.soundOn : words.soundOff}
          </Button>
        </div>
      </div>
      <RefusedEntries />
      {isOpen && count > 0 && <EntryList />}
    </section>
  );
}

/** The line, in a word with a sign, and in a sentence what becomes of the entries. */
function Standing() {
  const words = useWords(OUTBOX_WORDS);
  const me = useMe().person.id;
  const { entries, isOnline } = useOutbox();
  const left = entries.filter(({ state }) => state !== 'done');
  const others = left.filter(({ by }) => by.id !== me);
  const mine = left.filter(({ by, state }) => by.id === me && state !== 'refused').length;
  const refused = left.filter(({ by, state }) => by.id === me && state === 'refused').length;
  const names = [...new Set(others.map(({ by }) => by.name))].join(', ');
  return (
    <div role="status" className={styles.standing}>
      <StateMark tone={isOnline ? (mine > 0 ? 'goes' : 'done') : 'care'}>
        {isOnline ? words.online : words.offline}
      </StateMark>
      {refused > 0 && <strong className="care">{words.refusedCount(refused)}</strong>}
      {!isOnline && <span>{words.keptHere(mine)}</span>}
      {isOnline && mine > 0 && <span>{words.onTheWay(mine)}</span>}
      {isOnline && left.length === 0 && <span className="quiet">{words.allSent}</span>}
      {others.length > 0 && <span>{words.ofOthers(others.length, names)}</span>}
    </div>
  );
}
