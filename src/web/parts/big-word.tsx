import styles from './floor.module.css';
import { StateMark, type StateTone } from './state-mark.js';

interface BigWordProps {
  readonly tone: StateTone;
  readonly word: string;
  readonly more: string;
}

/** An answer to a hand: a sign and a word across the page, and a sentence under it. */
export function BigWord({ tone, word, more }: BigWordProps) {
  const isCare = tone === 'stopped' || tone === 'care';
  return (
    <div role={isCare ? 'alert' : 'status'} className={isCare ? styles.bigCare : styles.big}>
      <p className={styles.bigWord}>
        <StateMark tone={tone}>{word}</StateMark>
      </p>
      <p>{more}</p>
    </div>
  );
}
