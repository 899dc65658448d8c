import { useState } from 'react';
import { Button } from '../parts/button.js';
import { useWords } from '../words/language.js';
import { OUTBOX_WORDS } from '../words/outbox.js';
import type { QueuedEntry } from './entry.js';
import styles from './outbox-bar.module.css';

interface UndoTouchProps {
  /** What was touched last, of what this button takes back. */
  readonly last: QueuedEntry | undefined;
  /** Gives whether it was taken back; false where the shop has it already. */
  readonly onUndo: (last: QueuedEntry) => Promise<boolean>;
}

/** Takes the last touch back, as long as it has not gone to the shop, and says beside itself what came of it: nothing is laid over
 * the other buttons. */
export function UndoTouch({ last, onUndo }: UndoTouchProps) {
  const words = useWords(OUTBOX_WORDS);
  const [said, setSaid] = useState('');
  const undo = async () => {
    if (last) setSaid((await onUndo(last)) ? words.takenBack(last.label) : words.goneAlready);
  };
  return (
    <div className={styles.undo}>
      <Button size="floor" disabled={!last} onClick={() => void undo()}>
        {last ? words.undo(last.label) : words.undoNothing}
      </Button>
      <p role="status">{said}</p>
    </div>
  );
}
