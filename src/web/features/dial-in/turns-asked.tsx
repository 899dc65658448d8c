import type { TurnsSeen } from '../../../core/winding/index.js';
import { Button } from '../../parts/button.js';
import styles from '../../parts/floor.module.css';
import { DIAL_IN_WORDS } from '../../words/dial-in.js';
import { useWords } from '../../words/language.js';

interface TurnsAskedProps {
  readonly seen: TurnsSeen | undefined;
  readonly onSeen: (seen: TurnsSeen | undefined) => void;
}

/** One touch for what the eye sees of the wrap; a second takes it back. */
export function TurnsAsked({ seen, onSeen }: TurnsAskedProps) {
  const words = useWords(DIAL_IN_WORDS);
  return (
    <fieldset className={styles.judging}>
      <legend>{words.turns}</legend>
      {(['even', 'gaps', 'overlaps'] as const).map((each) => (
        <Button
          key={each}
          size="floor"
          aria-pressed={seen === each}
          onClick={() => onSeen(seen === each ? undefined : each)}
        >
          {words.seen[each]}
        </Button>
      ))}
    </fieldset>
  );
}
