import { useMemo } from 'react';
import { Button } from '../../parts/button.js';
import styles from '../../parts/floor.module.css';
import { useFigures } from '../../sight/figures.js';
import { PRACTICE_WORDS } from '../../words/dial-in.js';
import { useWords } from '../../words/language.js';
import { byAdvice, type PracticeRun, type Practised } from './practice-run.js';

interface HowItWentProps {
  readonly run: PracticeRun;
  readonly now: Practised;
  readonly onAgain: () => void;
}

/** Strings wound beside those that the advice would have needed on the same machine, and what the run would be. */
export function HowItWent({ run, now, onAgain }: HowItWentProps) {
  const words = useWords(PRACTICE_WORDS);
  const figures = useFigures();
  const advised = useMemo(() => byAdvice(run), [run]);
  const own = now.strings.length;
  return (
    <section aria-label={words.end} className={styles.entry}>
      <h2>{words.end}</h2>
      <p className={styles.said} role="status">
        {advised.isStopped ? words.advisedStops(own) : words.strings(own, advised.strings)}
      </p>
      {now.advices.map(({ position }) => (
        <p key={position}>
          {words.good(
            figures.share(now.goodShares[position] ?? 0),
            now.advices.length === 1 ? undefined : position + 1,
          )}
        </p>
      ))}
      <div className={styles.doing}>
        <Button kind="main" size="floor" onClick={onAgain}>
          {words.again}
        </Button>
      </div>
    </section>
  );
}
