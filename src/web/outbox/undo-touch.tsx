import { useState } from 'react';
import { Button } from '../parts/button.js';
import { useWords } from '../words/language.js';
import { OUTBOX_WORDS } from '../words/outbox.js';
import styles from './outbox-bar.module.css';
import type { TakenBack } from './take-back.js';

interface UndoTouchProps {
  /** What was touched last, of what this button takes back. */
  readonly last: { readonly label: string } | undefined;
  /** `too-late` where it went to the shop in between, and is to be taken back from its list. */
  readonly onUndo: () => Promise<TakenBack | 'too-late'>;
}

/** Takes the last touch back, and says beside itself what came of it: nothing is laid over the other buttons. */
export function UndoTouch({ last, onUndo }: UndoTouchProps) {
  const words = useWords(OUTBOX_WORDS);
  const [said, setSaid] = useState('');
  const undo = async () => {
    if (!last) return;
    const { label } = last;
    setSaid(words.undone[await onUndo()](label));
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
